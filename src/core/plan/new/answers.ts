import type { GearRole } from "../model/gear.js";
import type { Craft, Plan } from "../model/plan.js";
import type { Chemistry } from "../model/supply.js";

/** One kind of gear in a new plan; quantities as people write them. */
export interface NewGear {
  readonly name: string;
  readonly role: GearRole;
  /** `0.9 W`, `2.8 A at 12 V`. */
  readonly draws: string;
  /** Of all alike; one if left out. */
  readonly count?: number;
  /** Length of cable from the panel to it, `9 ft 4 in`. */
  readonly cable: string;
}

/** What one must know to begin a plan. Quantities as people write them. */
export interface NewPlanAnswers {
  readonly name: string;
  /** Kind of boat in the owner's words. */
  readonly kind: string;
  readonly length: string;
  readonly hull?: Craft["hullMaterial"];
  readonly petrolOnBoard?: boolean;
  readonly rules: Plan["rules"];
  readonly battery: {
    readonly chemistry: Chemistry;
    /** `50 Ah`. */
    readonly capacity: string;
    /** `12 V` if left out. */
    readonly voltage?: string;
    /** Length of cable from battery to panel. */
    readonly cable: string;
  };
  readonly gear: readonly NewGear[];
}
