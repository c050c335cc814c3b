import { workingSlack } from "../reference/supports.js";

/** What stands at an end of a run, and how it is worked on. */
export interface RunEnd {
  readonly kind: "box" | "panel" | "gear" | "battery" | "fixed";
  /** From its seat to where it is out of the hull: a box is drawn out so far before one can work on it [m]. */
  readonly drawnOutM?: number;
  /** The owner's own slack at this end; counts as it is [m]. */
  readonly slackM?: number;
}

/** Why so much slack: the parts of it, in order. */
export interface SlackPart {
  readonly why:
    | "owner"
    | "draw out"
    | "work beside"
    | "off its hole"
    | "at panel"
    | "at battery"
    | "make again";
  readonly lengthM: number;
}

/** Slack at one end: out of its place, room to work, and a bit to make the terminal again. */
export function slackParts(end: RunEnd): SlackPart[] {
  const { kind, drawnOutM, slackM } = end;
  if (slackM !== undefined) {
    if (!(slackM >= 0)) throw new RangeError(`slack must be ≥ 0 m, got ${slackM}`);
    return [{ why: "owner", lengthM: slackM }];
  }
  if (drawnOutM !== undefined && !(drawnOutM >= 0)) {
    throw new RangeError(`drawing out must be ≥ 0 m, got ${drawnOutM}`);
  }
  const again: SlackPart = { why: "make again", lengthM: workingSlack.remakeM };
  const drawn: SlackPart[] = drawnOutM === undefined ? [] : [{ why: "draw out", lengthM: drawnOutM }];
  switch (kind) {
    case "box":
      return [...drawn, { why: "work beside", lengthM: workingSlack.boxBeyondOpeningM }, again];
    case "gear":
      return [...drawn, { why: "off its hole", lengthM: workingSlack.gearM }, again];
    case "panel":
      return [...drawn, { why: "at panel", lengthM: workingSlack.panelM }, again];
    case "battery":
      return [...drawn, { why: "at battery", lengthM: workingSlack.batteryM }, again];
    case "fixed":
      return [again];
    default:
      return kind satisfies never;
  }
}

/** All slack of a run, both its ends together [m]. */
export const slackOf = (start: RunEnd, end: RunEnd): number =>
  [...slackParts(start), ...slackParts(end)].reduce((sum, { lengthM }) => sum + lengthM, 0);
