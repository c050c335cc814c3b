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

export interface CutLengthAnswer {
  readonly routeM: number;
  readonly start: readonly SlackPart[];
  readonly end: readonly SlackPart[];
  readonly slackM: number;
  /** Rounded up to what one marks and cuts [m]. */
  readonly cutM: number;
  readonly cutMm: number;
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

/**
 * Length to cut: the way, the slack at both ends, rounded up to a step of the owner's tape.
 * @param step What lengths are rounded up to: whole millimetres, or whole inches (kept as the nearest whole millimetre).
 */
export function cutLength(
  routeM: number,
  start: RunEnd,
  end: RunEnd,
  step: number | "inch" = 10,
): CutLengthAnswer {
  if (!(routeM >= 0)) throw new RangeError(`way must be ≥ 0 m, got ${routeM}`);
  if (step !== "inch" && !(Number.isInteger(step) && step >= 1))
    throw new RangeError(`step must be a whole number ≥ 1 mm, got ${step}`);
  const parts = { start: slackParts(start), end: slackParts(end) };
  const slackM = [...parts.start, ...parts.end].reduce((sum, part) => sum + part.lengthM, 0);
  // A millionth of a millimetre off, so that 3.48 m does not become 3.49 m by rounding of binary fractions.
  const stepMm = step === "inch" ? 25.4 : step;
  const steps = Math.ceil(((routeM + slackM) * 1000) / stepMm - 1e-6);
  const cutMm = Math.round(steps * stepMm);
  return { routeM, ...parts, slackM, cutM: cutMm / 1000, cutMm };
}
