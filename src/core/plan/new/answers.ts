import type { StartingKind } from "../../reference/starting-forms.js";
import type { GearRole } from "../model/gear.js";
import type { Craft, Plan, Shows } from "../model/plan.js";
import type { Chemistry } from "../model/supply.js";

/** What is printed on a battery. */
export interface NewBattery {
  readonly chemistry: Chemistry;
  /** `50 Ah`. */
  readonly capacity: string;
  /** `12 V` if left out. */
  readonly voltage?: string;
}

/** One kind of gear in a new plan; quantities as people write them. */
export interface NewGear {
  readonly name: string;
  readonly role: GearRole;
  /** `0.9 W`, `2.8 A at 12 V`. */
  readonly draws: string;
  /** Of all alike; one if left out. */
  readonly count?: number;
  /** Length of cable from the panel to it, or from the battery, `9 ft 4 in`. */
  readonly cable: string;
  /** Past the panel, on a fuse of its own: from the battery, or from one of its own. A motor that drives the boat is fed so. */
  readonly straightFrom?: "the battery" | NewBattery;
}

/** What one must know to begin a plan. Quantities as people write them. */
export interface NewPlanAnswers {
  readonly name: string;
  /** Kind of boat in the owner's words. */
  readonly kind: string;
  readonly length: string;
  /** Greatest beam. */
  readonly beam?: string;
  /** A shape to start from, with the depth from keel to sheer amidships. */
  readonly form?: { readonly shape: StartingKind; readonly depth: string };
  /** How lengths are shown; as the rules have it if left out. */
  readonly lengths?: Shows["lengths"];
  readonly hull?: Craft["hullMaterial"];
  readonly petrolOnBoard?: boolean;
  readonly rules: Plan["rules"];
  /** The one that feeds the panel, with the length of cable between them. */
  readonly battery: NewBattery & { readonly cable: string };
  readonly gear: readonly NewGear[];
}
