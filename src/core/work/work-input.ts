import type { ProtectionFigures } from "../circuit/protection/types.js";
import type { SizeResult } from "../circuit/sizes/types.js";
import type { CompletePlan } from "../plan/completed.js";
import type { FaceName } from "../plan/model/layout.js";
import type { StepSize } from "./step.js";

/** What the order of work is made from; all figures of a plan have it. */
export interface WorkInput {
  readonly plan: CompletePlan;
  readonly sizes: SizeResult;
  readonly protection: readonly ProtectionFigures[];
}

/** A hole of a box or panel, as its layout has it. */
export interface EntryHole {
  /** Cable or single conductor: `lamp trunk`, `battery feed / out`; or `spare 1`. */
  readonly run: string;
  readonly holeMm: number;
  /** Side of the box, and where on it [m]: along it, and from the base. */
  readonly on?: FaceName;
  readonly atM?: readonly [alongM: number, fromBaseM: number];
  readonly gland?: string;
}

/** A stretch along which cables lie together and are held. */
export interface HeldStretch {
  readonly leg: string;
  /** It is a run without legs, called as the run is. */
  readonly ofRun: boolean;
  readonly at: readonly string[];
  readonly runs: readonly string[];
  readonly supports: number;
  readonly apartM?: number;
}

/** One conductor end, as the terminations have it. */
export interface EndFacts {
  readonly size: Extract<StepSize, { readonly what: "end" }>;
  /** Joint it shares with others, by id. */
  readonly joint?: string;
}

/** What boxes, routes, cut list and terminations tell. What is missing is counted by rule of thumb. */
export interface WorkFacts {
  /** By box or panel. */
  readonly entries?: ReadonlyMap<string, readonly EntryHole[]>;
  readonly contents?: ReadonlyMap<string, readonly string[]>;
  /** Lengths to cut, by run. */
  readonly cuts?: ReadonlyMap<string, readonly Extract<StepSize, { readonly what: "cut length" }>[]>;
  /** By `endKey`. */
  readonly ends?: ReadonlyMap<string, readonly EndFacts[]>;
  readonly stretches?: readonly HeldStretch[];
  /** Air in the garage [°C]; undefined: the plan's usual air. */
  readonly garageC?: number;
}

export const endKey = (run: string, end: "start" | "end"): string => JSON.stringify([run, end]);
