import type { Material } from "../../reference/drilling.js";
import type { ConductorSize } from "./common.js";
import type { CraftForm } from "./form.js";
import type { Gear } from "./gear.js";
import type { HullPlan } from "./hull.js";
import type { LayoutSections } from "./layout.js";
import type { Corner, Outing } from "./outing.js";
import type { Run } from "./runs.js";
import type { Battery, Charger, Converter, JunctionBox, Panel } from "./supply.js";
import type { WorkRecord } from "./work.js";

export interface Shows {
  readonly lengths: "inches" | "millimetres";
  readonly conductors: "awg" | "metric";
  readonly paper: "letter" | "a4";
}

export interface Craft {
  readonly kind?: string;
  readonly lengthM?: number;
  readonly beamM?: number;
  readonly hullMaterial?: Material | "fabric";
  readonly petrolOnBoard?: boolean;
  readonly form?: CraftForm;
}

export interface Ambient {
  /** Air while the electrics are in use [°C]: coldest, usual, hottest. */
  readonly coldC?: number;
  readonly airC?: number;
  readonly hotC?: number;
  readonly engineSpaceC?: number;
}

/** How conductors are chosen. */
export interface Conductors {
  readonly aim: "cheapest" | "lightest";
  /** Sizes the owner is willing to buy. Empty: the rule-set's whole series. */
  readonly sizes: readonly ConductorSize[];
  readonly insulationC?: number;
  readonly tinned?: boolean;
}

/** What a metre of a cable costs [currency of the prices]; it ranks sizes. */
export interface WirePrice {
  readonly size: ConductorSize;
  readonly cores: number;
  readonly perM: number;
}

/** The whole plan, as written. Names are the owner's own and unique among places (batteries, panels, boxes, gear …). */
export interface Plan extends LayoutSections {
  readonly name: string;
  readonly rules: "us" | "iso";
  readonly shows: Shows;
  readonly craft: Craft;
  readonly ambient: Ambient;
  readonly conductors: Conductors;
  readonly batteries: readonly Battery[];
  readonly chargers: readonly Charger[];
  readonly converters: readonly Converter[];
  readonly panels: readonly Panel[];
  readonly boxes: readonly JunctionBox[];
  readonly gear: readonly Gear[];
  readonly runs: readonly Run[];
  readonly hull: HullPlan;
  /** Groups of gear of which only one is on at a time. */
  readonly oneAtATime: readonly (readonly string[])[];
  readonly corners: readonly Corner[];
  readonly outings: readonly Outing[];
  readonly wirePrices: readonly WirePrice[];
  /** What was done and measured. */
  readonly work: WorkRecord;
}
