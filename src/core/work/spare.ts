import type { CompletePlan } from "../plan/completed.js";
import { emptyWays } from "../plan/empty-ways.js";
import { isSpareEntry } from "./differences.js";

/** What is in the boat and on the shelf for the next project to take. */
export interface Spare {
  /** Ways that feed nothing, `helm / spare`. */
  readonly ways: readonly string[];
  /** Boxes and panels with holes that are drilled and taken by nothing. */
  readonly entries: readonly { readonly at: string; readonly count: number }[];
  /** Lines of the stock, wire and parts together. */
  readonly stockLines: number;
}

export function spareOf(plan: CompletePlan): Spare {
  const { panels, boxes, runs, source } = plan;
  return {
    ways: emptyWays(plan),
    entries: [...panels, ...boxes].flatMap(({ name, holes = [] }) => {
      const spares = holes.filter((hole) => isSpareEntry(hole.name)).length;
      const come = runs.filter(({ from, to }) => from.place === name || to.place === name);
      // a cable that came after the drilling takes a spare one; a single conductor's hole begins with its run's name
      const later = come.filter((run) => !holes.some((hole) => `${hole.name}, `.startsWith(`${run.name}, `)));
      const count = spares - later.length;
      return count > 0 ? [{ at: name, count }] : [];
    }),
    stockLines: source.stockWire.length + source.stockParts.length,
  };
}
