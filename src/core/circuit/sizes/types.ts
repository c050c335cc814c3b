import type { ConductorSize } from "../../plan/model/common.js";

/** Why a size is what it is: the first rule that the next smaller one breaks. */
export type SizeReason =
  | { readonly rule: "owner" }
  | { readonly rule: "drop"; readonly gear: string; readonly dropShare: number; readonly limitShare: number }
  | { readonly rule: "ampacity"; readonly currentA: number; readonly ampacityA: number }
  | { readonly rule: "protection"; readonly ratingA: number; readonly allowedA: number }
  | LeastReason
  /** The next smaller would do but costs (or weighs) no less. */
  | { readonly rule: "price" }
  | { readonly rule: "smallest made" };

/** Why no size under a certain one may lie there: a clause of the rule-set, or a fuse that no rating would suit otherwise. */
export type LeastReason =
  | { readonly rule: "least size"; readonly clause: string }
  | { readonly rule: "suits a fuse"; readonly device: string };

/** The size of one set of conductors of a run that must be alike (all cores of a cable, or its returns where they differ). */
export interface SizeChoice {
  /** `fore trunk` or `fore trunk / return`. */
  readonly id: string;
  readonly run: string;
  readonly size: ConductorSize;
  readonly fixedByOwner: boolean;
  /** Derated ampacity of one conductor here [A] (NaN where no table has it), and the most it carries in the worst corner [A]. */
  readonly ampacityA: number;
  readonly currentA: number;
  readonly lengthM: number;
  readonly cores: number;
  readonly reason: SizeReason;
  /** What the next smaller size would give, where there is one. */
  readonly nextSmaller?: { readonly size: ConductorSize; readonly reason: SizeReason };
}

export interface SizeResult {
  readonly choices: readonly SizeChoice[];
  readonly aim: "cheapest" | "lightest";
  /** Value of the aim: relative cost, or mass [kg]. */
  readonly total: number;
  /** `proven`: no cheaper set exists. `bounded`: best found, with the least any set can cost. `none`: no set of allowed sizes satisfies everything. */
  readonly proof: "proven" | "bounded" | "none";
  readonly lowerBound: number;
  /** Where `none`: gear whose limit cannot be met even by the largest sizes. */
  readonly unmet: readonly string[];
}
