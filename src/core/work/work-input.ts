import type { ProtectionFigures } from "../circuit/protection/types.js";
import type { SizeResult } from "../circuit/sizes/types.js";
import type { HoleTool } from "../hull/holes/tool.js";
import type { CompletePlan } from "../plan/completed.js";
import type { FaceName } from "../plan/model/layout.js";
import type { Place, Side } from "../plan/model/placing.js";
import type { BuiltHole } from "../plan/model/work.js";
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

/** A hole of a face, as the hull's figures have it. */
export interface MarkedHole {
  readonly there: boolean;
  readonly face: string;
  readonly side: Side;
  /** Where the plan wants it, of one in a row too. */
  readonly at?: Place;
  readonly cutMm?: number;
  readonly tool?: HoleTool["tool"];
  readonly pilotMm?: number;
  readonly mind?: HoleTool["mind"];
  /** Until its sealant bears water [h]. */
  readonly cureHours?: number;
  readonly behind?: string;
  readonly mark?: Extract<StepSize, { readonly what: "mark" }>;
}

/** From where a hole is to where the plan wants it [m]: along the edge of its face, square off it, and straight. */
export interface OffBy {
  readonly alongM: number;
  readonly offM: number;
  readonly byM: number;
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
  /** By mark: a piece of gear, or a hole of a face. */
  readonly holes?: ReadonlyMap<string, MarkedHole>;
  /** Marks in the order to set them out. */
  readonly markOrder?: readonly string[];
  /** Runs led through openings, in the order to draw them. */
  readonly pulls?: readonly { readonly run: string; readonly through: readonly string[] }[];
  /** How far a hole as drilled is from where the plan wants it; undefined where it can't be told. */
  readonly offBy?: (built: BuiltHole) => OffBy | undefined;
  /** Air in the garage [°C]; undefined: the plan's usual air. */
  readonly garageC?: number;
}

export const endKey = (run: string, end: "start" | "end"): string => JSON.stringify([run, end]);
