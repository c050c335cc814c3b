import type { RunEnd } from "../way/slack.js";
import type { RouteAnswer } from "../way/types.js";
import type { AssumedField } from "./complete/assumed-fields.js";
import type { AssumptionReason } from "./complete/reasons.js";
import type { Protection, Switch } from "./model/common.js";
import type { PlanPoint } from "./model/form.js";
import type { Gear } from "./model/gear.js";
import type { MarksWanted } from "./model/hull.js";
import type { Corner, Outing } from "./model/outing.js";
import type { Place, RowPlace, Side } from "./model/placing.js";
import type { Ambient, Plan } from "./model/plan.js";
import type { Run } from "./model/runs.js";
import type { Battery, Charger, Converter, JunctionBox, Panel, Way } from "./model/supply.js";

/** `T` with the fields `K` filled in. */
export type Filled<T, K extends keyof T> = Omit<T, K> & Required<Pick<T, K>>;

/** One value the owner left out, what was taken instead, and why. */
export interface Assumption {
  /** Thing it is about: a name from the plan, or `plan`. */
  readonly at: string;
  /** Field in the plan's own words, `internal resistance`. */
  readonly field: AssumedField;
  /** What was taken, as the owner would write it. */
  readonly value: string;
  /** Key of the sentence that says why, in `words/`; the source stands there too. */
  readonly reason: AssumptionReason;
}

export type CompleteBattery = Filled<
  Battery,
  | "nominalV"
  | "ratedHours"
  | "ageYears"
  | "internalOhm"
  | "shortCircuitA"
  | "reserveShare"
  | "peukertExponent"
  | "cutOffV"
  | "studsPerPost"
  | "surroundings"
  | "main"
>;
export type CompleteCharger = Filled<Charger, "absorptionV" | "selfLimiting">;
export type CompleteConverter = Filled<
  Converter,
  "efficiency" | "standbyW" | "minInputV" | "maxInputV" | "isolated" | "surroundings"
>;
/** `protection` is present: either a device (its rating still open where it is to be worked out) or `none`. */
export type CompleteWay = Omit<Way, "switch" | "protection"> & {
  readonly switch: Switch | "none";
  readonly protection: Protection | "none";
};
export type CompletePanel = Omit<Panel, "ways" | "surroundings" | "studsPerBus"> &
  Required<Pick<Panel, "surroundings" | "studsPerBus">> & { readonly ways: readonly CompleteWay[] };
export type CompleteBox = Filled<JunctionBox, "joins" | "returns" | "surroundings">;
/** One piece of gear. `group` is the name it was written under; `name` is unique (`floor lamp 2`). */
export type CompleteGear = Omit<
  Filled<Gear, "role" | "behaviour" | "minV" | "maxV" | "maxDropShare" | "surroundings" | "joint">,
  "count" | "standsAtM"
> & {
  readonly group: string;
  /** Where its middle stands when it is on no face. */
  readonly standsAtM?: PlanPoint;
  /** Where this piece stands, when it is on a face. */
  readonly placed?: PiecePlace;
};
/** One cable. `group` is the name it was written under; `name` is unique (`lamp leads 2`). */
export type CompleteRun = Omit<
  Filled<
    Run,
    "return" | "sheathed" | "insulationC" | "tinned" | "jointAtStart" | "jointAtEnd" | "surroundings"
  >,
  "reaches" | "lengthsM" | "carries"
> & {
  readonly group: string;
  /** Along the way, without slack. */
  readonly lengthM: number;
  readonly returnLengthM: number;
  /** What stands at its ends, and the owner's own slack there. */
  readonly ends: { readonly start: RunEnd; readonly end: RunEnd };
  /** Along the way and the slack at both ends: what is pulled, and what the current goes through. */
  readonly pulledM: number;
  readonly returnPulledM: number;
  /** Circuits carried: `panel / way`, or `house / feed` where only the supply stands before it. */
  readonly carries: readonly string[];
};

/** How marks are set out, decided. Lengths in m. */
export type CompleteMarks = Required<MarksWanted> & {
  /** Spread of one reading of the form. */
  readonly formSpreadM: number;
};

/** Where one piece stands: on which face and side, at a place of its own or as one of a row. */
export interface PiecePlace {
  readonly name: string;
  readonly on: string;
  readonly side: Side;
  /** The same thing on the other side. */
  readonly twin?: string;
  readonly where:
    | { readonly kind: "one"; readonly place: Place }
    | { readonly kind: "row"; readonly row: RowPlace; readonly index: number; readonly count: number };
}

/** Something that hangs in the air: the plan reads well but no current can follow it. */
export interface LooseEnd {
  readonly kind:
    | "gear not fed"
    | "panel not fed"
    | "converter not fed"
    | "box not fed"
    | "converter loop"
    | "run carries nothing"
    | "way unclear"
    | "two circuits at one gear";
  readonly at: string;
  readonly with: readonly string[];
}

/** A circuit: what one way (or one supply directly) feeds. */
export interface Circuit {
  /** `helm / lamps` or `house / feed`. */
  readonly id: string;
  /** Battery or converter it comes from. */
  readonly supply: string;
  readonly nominalV: number;
  /** Battery at the far end of any converters in between. */
  readonly battery: string;
}

/** The plan with every default decided; ratings and sizes that are to be worked out are still open. */
export interface CompletePlan {
  readonly source: Plan;
  readonly ambient: Required<Ambient>;
  readonly batteries: readonly CompleteBattery[];
  readonly chargers: readonly CompleteCharger[];
  readonly converters: readonly CompleteConverter[];
  readonly panels: readonly CompletePanel[];
  readonly boxes: readonly CompleteBox[];
  readonly gear: readonly CompleteGear[];
  readonly runs: readonly CompleteRun[];
  readonly corners: readonly Corner[];
  readonly outings: readonly Outing[];
  /** One-at-a-time groups: each a list of entries, each entry its single pieces, which are on together. */
  readonly oneAtATime: readonly (readonly (readonly string[])[])[];
  /** Ways along the legs, by single run, of those that are led so. */
  readonly ways: ReadonlyMap<string, RouteAnswer>;
  /** By id. */
  readonly circuits: ReadonlyMap<string, Circuit>;
  /** Circuit that feeds each piece of gear, panel (its feed) and converter (its input), by name. */
  readonly circuitOf: ReadonlyMap<string, string>;
  readonly looseEnds: readonly LooseEnd[];
  readonly marks: CompleteMarks;
  readonly assumptions: readonly Assumption[];
}
