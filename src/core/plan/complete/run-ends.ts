import type { RunEnd } from "../../way/slack.js";
import type { CompletePlan } from "../completed.js";
import type { SingleRun } from "./expand.js";

/** What stands at the ends of a run, and how far it is drawn out to be worked on; the owner's own slack wins. */
export function runEnds(
  places: Pick<CompletePlan, "boxes" | "panels" | "gear" | "batteries">,
): (single: SingleRun) => { readonly start: RunEnd; readonly end: RunEnd } {
  const kinds = new Map<string, RunEnd>();
  const cased = (kind: "box" | "panel", drawnOutM: number | undefined): RunEnd =>
    drawnOutM === undefined ? { kind } : { kind, drawnOutM };
  for (const { name, drawnOutM } of places.boxes) kinds.set(name, cased("box", drawnOutM));
  for (const { name, drawnOutM } of places.panels) kinds.set(name, cased("panel", drawnOutM));
  for (const { name } of places.gear) kinds.set(name, { kind: "gear" });
  for (const { name } of places.batteries) kinds.set(name, { kind: "battery" });
  const at = (place: string, slackM: number | undefined): RunEnd => {
    const there = kinds.get(place) ?? { kind: "fixed" };
    return slackM === undefined ? there : { ...there, slackM };
  };
  return ({ run, from, to }) => ({
    start: at(from.place, run.slackM?.start),
    end: at(to.place, run.slackM?.end),
  });
}
