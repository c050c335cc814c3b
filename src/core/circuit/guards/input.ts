import type { CompleteGear, CompletePlan } from "../../plan/completed.js";
import type { RuleSet } from "../../reference/rule-sets.js";
import type { Chosen } from "../parts.js";
import type { SupplyTree } from "../topology/tree.js";
import type { Topology } from "../topology/types.js";
import type { RunAmpacities } from "./run-ampacities.js";

/** What the guards are read from, whatever the sizes. */
export interface GuardInput {
  readonly plan: CompletePlan;
  readonly rules: RuleSet;
  readonly ampacities: RunAmpacities;
  readonly topology: Topology;
  readonly tree: SupplyTree;
  /** Gear in the topology's order. */
  readonly pieces: readonly (CompleteGear | undefined)[];
}

/** A state of sizes and loads to judge the guards at. */
export interface GuardState {
  readonly chosen: Chosen;
  /** Resistance of each branch: copper hot, and the least there can be [Ω]. */
  readonly hotOhm: Float64Array;
  readonly coldOhm: Float64Array;
  /** Current through each branch in the corner that loads it most [A]. */
  readonly branchA: Float64Array;
  /** Steady current of each piece of gear in that corner, in the topology's order [A]. */
  readonly gearA: Float64Array;
}
