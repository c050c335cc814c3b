import type { Protection, Surroundings, Switch } from "./common.js";
import type { PlanPoint } from "./form.js";
import type { Enclosure, SizeM } from "./layout.js";

export const chemistries = ["flooded", "agm", "gel", "lifepo4"] as const;
export type Chemistry = (typeof chemistries)[number];

export interface Battery {
  readonly name: string;
  readonly chemistry: Chemistry;
  /** Nominal terminal voltage of the whole battery [V], 12 or 24 as a rule. */
  readonly nominalV?: number;
  readonly capacityAh: number;
  /** Hours of the discharge the capacity is rated at [h]. */
  readonly ratedHours?: number;
  readonly ageYears?: number;
  /** Internal resistance, new, at 25 °C [Ω]. */
  readonly internalOhm?: number;
  /** What it can drive into a dead short [A]. */
  readonly shortCircuitA?: number;
  /** Share of capacity the owner will not use, 0…1. */
  readonly reserveShare?: number;
  readonly peukertExponent?: number;
  /** Greatest continuous current its own electronics or maker allow [A]. */
  readonly maxDischargeA?: number;
  /** Terminal voltage at which it (or its electronics) stops [V]. */
  readonly cutOffV?: number;
  readonly weightKg?: number;
  /** Outside measures, and the opening it must pass by the name of a waypoint. */
  readonly sizeM?: SizeM;
  readonly through?: string;
  /** Studs of its posts. */
  readonly studM?: number;
  /** Where its middle stands in the boat. */
  readonly standsAtM?: PlanPoint;
  readonly fixed?: "strap" | "bracket" | "tray" | "loose";
  readonly vented?: boolean;
  /** Posts covered by boots or a box lid. */
  readonly covered?: boolean;
  readonly studsPerPost?: number;
  readonly surroundings?: Surroundings;
  /** Distance to the nearest metal fuel part above it [m]. */
  readonly fuelPartWithinM?: number;
  /** Wired in parallel with these batteries. */
  readonly parallelWith: readonly string[];
  /** Main protection at the positive post: everything that leaves the battery passes it, unless a run says `before main`. */
  readonly main?: Protection | "none";
  /** Master switch next to the battery. Runs marked `before master` bypass it and stay live. */
  readonly master?: Switch;
}

export interface Charger {
  readonly name: string;
  readonly kind: "mains" | "solar" | "engine" | "converter";
  readonly charges: string;
  readonly outputA?: number;
  /** Peak power of a solar panel [W]; with `sunHours` gives charge per day. */
  readonly outputW?: number;
  readonly sunHoursPerDay?: number;
  readonly absorptionV?: number;
  /** Has its own current limit on the output. */
  readonly selfLimiting?: boolean;
  /** Stops charging below this cell temperature [°C]. */
  readonly stopsBelowC?: number;
  /** Studs of its terminals. */
  readonly studM?: number;
  /** Where its middle stands in the boat. */
  readonly standsAtM?: PlanPoint;
}

/** A load on one side, a source on the other. Its ports are `in` and `out`. */
export interface Converter {
  readonly name: string;
  readonly outputV: number;
  readonly maxOutputA: number;
  /** 0…1. */
  readonly efficiency?: number;
  readonly standbyW?: number;
  readonly minInputV?: number;
  readonly maxInputV?: number;
  /** True: no connection between the two negatives inside. False: they are one point. */
  readonly isolated?: boolean;
  /** Studs of its terminals. */
  readonly studM?: number;
  readonly surroundings?: Surroundings;
  /** Where its middle stands in the boat. */
  readonly standsAtM?: PlanPoint;
}

/** One protected, switched outlet of a panel. */
export interface Way {
  readonly name: string;
  readonly switch?: Switch | "none";
  readonly protection?: Protection | "none";
  /** Taken before the panel's master switch. */
  readonly alwaysLive: boolean;
  /** Drop limit asked for by the owner for everything on the way, 0…1 of nominal. */
  readonly maxDropShare?: number;
}

export interface Panel extends Enclosure {
  readonly name: string;
  readonly main?: Protection | "none";
  readonly master?: Switch;
  readonly ways: readonly Way[];
  readonly studsPerBus?: number;
  readonly covered?: boolean;
  readonly surroundings?: Surroundings;
}

/** Where conductors meet between panel and gear. */
export interface JunctionBox extends Enclosure {
  readonly name: string;
  readonly joins?: "tee" | "bus" | "terminal strip";
  /** `joined`: one negative point for all that comes in. `apart`: each way keeps its own. */
  readonly returns?: "joined" | "apart";
  /** Terminals on one stud, where the owner says so. */
  readonly terminalsPerStud?: number;
  readonly covered?: boolean;
  readonly surroundings?: Surroundings;
}
