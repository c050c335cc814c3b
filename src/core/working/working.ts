import type { AmpacityFactor } from "../circuit/conductor/ampacity-working.js";
import type { ConditionResult, ProtectionCondition } from "../circuit/protection/types.js";
import type { SizeReason, SizeResult } from "../circuit/sizes/types.js";
import type { ChargingFigures } from "../energy/types.js";
import type { Assumption } from "../plan/completed.js";
import type { JointKind } from "../plan/model/common.js";
import type { Behaviour } from "../plan/model/gear.js";
import type { Source } from "../reference/source.js";
import type { FigureRef } from "./figure-ref.js";

/** Things that are put into a formula; their names stand in the faces' words. */
const terms = [
  "supply voltage",
  "drop",
  "drop share",
  "drop limit",
  "nominal voltage",
  "current",
  "resistance",
  "length",
  "slack",
  "size",
  "area",
  "copper temperature",
  "resistance at 20 °C",
  "part",
  "draw",
  "gear voltage",
  "behaviour",
  "allowed current",
  "table value",
  "table row",
  "insulation",
  "factor",
  "load",
  "starting current",
  "rating",
  "weakest conductor",
  "possible ratings",
  "next smaller",
  "condition",
  "state",
  "limit",
  "short at the device",
  "short at the far end",
  "clears within",
  "resting voltage",
  "internal resistance",
  "charge",
  "capacity printed",
  "rated time",
  "capacity here",
  "reserve",
  "peukert",
  "used",
  "use of gear",
  "outing lasts",
  "charge before",
  "charge after",
  "lacking",
  "charger output",
  "absorption voltage",
  "sun hours",
  "days",
  "reason",
  "aim",
  "proof",
  "total",
  "lower bound",
  "cores",
] as const;
export type Term = (typeof terms)[number];

/** What a figure is, in a sentence of the faces' words. */
export type Saying = FigureRef["of"] | "in its own turn" | "converter voltage";

/** Words that stand in a working and are not the owner's: each language has its own for them. */
export type GivenText =
  | Behaviour
  | ProtectionCondition
  | ConditionResult["state"]
  | ChargingFigures["state"]
  | SizeReason["rule"]
  | SizeResult["aim" | "proof"]
  | AmpacityFactor["kind"]
  | JointKind
  | "switch";

/** A number or a word of the plan put into the formula. Lengths in m, areas in mm², shares as a percentage with unit `%`. */
export interface Given {
  readonly term: Term;
  readonly value: number | string;
  readonly unit?: string;
  /** Thing it belongs to, where that is not the figure's own. */
  readonly at?: string;
  /** Where it is worked out itself: its own working. */
  readonly figure?: FigureRef;
}

/** Rows that are added up, or held beside one another. */
export interface WorkingTable {
  readonly columns: readonly { readonly term: Term; readonly unit?: string }[];
  readonly rows: readonly {
    readonly name: string;
    readonly figure?: FigureRef;
    readonly cells: readonly (number | string | undefined)[];
  }[];
}

/** How one figure came about: formula, numbers put in, table rows, sources, assumptions. */
export interface Working {
  /** Thing it is a figure of. */
  readonly at: string;
  readonly value: number | string;
  readonly unit?: string;
  readonly says: Saying;
  /** In signs that are the same in every language; subscripts that are words are told by the faces. */
  readonly formula?: string;
  readonly given: readonly Given[];
  readonly table?: WorkingTable;
  readonly sources: readonly Source[];
  /** What the owner left out and was taken instead, as far as this figure hangs on it. */
  readonly assumptions: readonly Assumption[];
}
