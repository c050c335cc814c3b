import type { Part } from "../circuit/results.js";
import { loadLaw } from "../circuit/solve/types.js";
import { copper } from "../reference/copper.js";
import { tolerances } from "../reference/tolerances.js";
import type { Bench } from "./bench-network.js";

/** How far a sound boat may lie from its plan: standard deviations, by row of the bench's tables. */
export interface Spread {
  /** Of each branch, all that is its own [Ω]. */
  readonly branchOhm: Float64Array;
  /** What one kelvin more in the copper adds to each branch [Ω/K], and how many there may be [K]. */
  readonly branchOhmPerK: Float64Array;
  readonly copperK: number;
  readonly emfV: Float64Array;
  readonly sourceOhm: Float64Array;
  /** As a share of each load's value. */
  readonly loadShare: Float64Array;
  readonly outputShare: number;
}

/** What is known better than the tolerances say. */
export interface Known {
  /** Batteries whose resting voltage was measured. */
  readonly resting?: ReadonlySet<string>;
  /** Runs whose length was measured when they were pulled. */
  readonly lengths?: ReadonlySet<string>;
}

/** Spread of a bench. Its shares are practice: `reference/tolerances.ts`. */
export function spreadOf(bench: Bench, known: Known = {}): Spread {
  const { topology, parts, numbers, plan } = bench;
  const behaviour = new Map(plan.gear.map((piece) => [piece.name, piece.behaviour]));
  const nominalV = new Map(plan.batteries.map((battery) => [battery.name, battery.nominalV]));
  return {
    branchOhm: Float64Array.from(parts, (list, at) => {
      const measured = known.lengths?.has(topology.branches[at]?.of ?? "") ?? false;
      return Math.sqrt(list.reduce((sum, part) => sum + partOhm(part, measured) ** 2, 0));
    }),
    branchOhmPerK: Float64Array.from(parts, (list) =>
      list.reduce((sum, part) => sum + (part.kind === "conductor" ? part.ohm * copper.perK : 0), 0),
    ),
    copperK: tolerances.copperK,
    emfV: Float64Array.from(topology.sources, ({ battery }) =>
      known.resting?.has(battery)
        ? tolerances.restingMeasuredV
        : (tolerances.restingV * (nominalV.get(battery) ?? 12)) / 12,
    ),
    sourceOhm: numbers.sources.ohm.map((ohm) => ohm * tolerances.internalOhmFactor),
    loadShare: Float64Array.from(topology.gear, ({ id }, at) => {
      const kind = behaviour.get(id);
      if (kind !== undefined) return tolerances.gearShare[kind];
      return numbers.loads.law[at] === loadLaw.current
        ? tolerances.gearShare.current
        : tolerances.gearShare.power;
    }),
    outputShare: tolerances.converterShare,
  };
}

/** Standard deviation of one part [Ω]. */
function partOhm(part: Part, measured: boolean): number {
  switch (part.kind) {
    case "conductor":
      return part.ohm * Math.hypot(tolerances.conductorShare, measured ? 0 : tolerances.lengthShare);
    case "joint":
      return part.ohm * tolerances.jointFactor;
    case "protection":
    case "switch":
      return part.ohm * tolerances.contactFactor;
    default:
      return part satisfies never;
  }
}
