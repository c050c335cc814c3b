import type { ProtectionFigures } from "../circuit/protection/types.js";
import type { SizeResult } from "../circuit/sizes/types.js";
import type { CompletePlan } from "../plan/completed.js";
import type { FaceName } from "../plan/model/layout.js";

/** What the order of work is made from; all figures of a plan have it. */
export interface WorkInput {
  readonly plan: CompletePlan;
  readonly sizes: SizeResult;
  readonly protection: readonly ProtectionFigures[];
}

/** Holes of a box or panel, where its layout was worked out. Without them one is counted for each cable. */
export interface EntryHole {
  readonly run: string;
  readonly holeMm: number;
  /** Side of the box, and where on it [m]: along it, and from the base. */
  readonly on?: FaceName;
  readonly atM?: readonly [alongM: number, fromBaseM: number];
}

export interface WorkFacts {
  readonly entries?: ReadonlyMap<string, readonly EntryHole[]>;
  /** Air in the garage [°C]; undefined: the plan's usual air. */
  readonly garageC?: number;
}
