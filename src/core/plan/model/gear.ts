import type { Draw } from "../../quantity/forms.js";
import type { ConductorSize, JointKind, Surroundings } from "./common.js";
import type { PlanPoint } from "./form.js";
import type { HolePlan, Placing } from "./placing.js";

export type { Draw } from "../../quantity/forms.js";

export const gearRoles = [
  "lighting",
  "navigation light",
  "bilge pump",
  "blower",
  "pump",
  "electronics",
  "socket",
  "gauge",
  "sound signal",
  "propulsion",
  "heating",
  "other",
] as const;
export type GearRole = (typeof gearRoles)[number];

/** How the current answers to voltage. */
export const behaviours = ["power", "current", "resistance", "motor"] as const;
export type Behaviour = (typeof behaviours)[number];

/** The gear's own wires, as it comes from the maker. */
export interface Leads {
  readonly size: ConductorSize;
  readonly lengthM: number;
  readonly insulationC?: number;
  /** A fuse in the lead, as supplied [A]. */
  readonly fuseA?: number;
}

export interface Gear {
  readonly name: string;
  readonly role?: GearRole;
  /** How many alike. They are called `name 1`, `name 2` … once the plan is completed. */
  readonly count: number;
  readonly draw: Draw;
  readonly behaviour?: Behaviour;
  readonly startA?: number;
  readonly minV?: number;
  readonly maxV?: number;
  readonly leads?: Leads;
  /** Drop limit asked for by the owner or the maker, 0…1 of nominal. */
  readonly maxDropShare?: number;
  /** Greatest fuse its maker allows in front of it [A]. */
  readonly maxFuseA?: number;
  /** Started by water, not by a hand: must stay live. */
  readonly floatSwitch: boolean;
  readonly surroundings?: Surroundings;
  /** Joint between its leads and the run. */
  readonly joint?: JointKind;
  readonly weightKg?: number;
  /** Stud or tab its terminals have. */
  readonly studM?: number;
  readonly tabM?: number;
  /** Least and greatest cable its strain relief holds. */
  readonly strainReliefM?: readonly [leastM: number, greatestM: number];
  /** On a face, with the hole it needs there. */
  readonly placing?: Placing;
  readonly hole?: HolePlan;
  /** Where its middle stands when it is on no face: one place for all, or one for each piece. */
  readonly standsAtM?: readonly PlanPoint[];
}
