import type { Protection } from "../../plan/model/common.js";
import type { Chemistry } from "../../plan/model/supply.js";
import type { RuleSet } from "../../reference/rule-set-type.js";

/** One device in a positive leg with all it must be judged by: plain numbers, no plan. Made by the adapter, read by `judgeGuards`. */
export interface Guard {
  /** `helm / lamps / fuse`, `house / main`, `pump feed / fuse`. */
  readonly id: string;
  /** Way, run, panel or battery that has it. */
  readonly of: string;
  readonly device: Protection["device"];
  /** The owner's rating [A]; undefined: to be chosen. */
  readonly ratingA?: number;
  /** Largest fault it can break, as its maker says [A]; undefined: what the reference tables say of its kind. */
  readonly interruptingA?: number;
  readonly place: GuardPlace;
  /** Largest current that flows for long with everything on that may be on together [A]. */
  readonly loadA: number;
  readonly start: MotorStart;
  /** Every conductor between this device and the next one outwards, thin leads of the gear included. */
  readonly conductors: readonly GuardedConductor[];
  /** Gear that has no device nearer to it than this one. */
  readonly gear: readonly GuardedGear[];
  readonly faults: Faults;
  /** A way on which nothing hangs yet, and no rating given: there is nothing to choose one by. */
  readonly spare?: boolean;
  /** The next device nearer the source; undefined where there is none. `ratingA` undefined: not yet known. */
  readonly nearer?: NearerDevice;
}

export interface GuardPlace {
  /** Along the conductor from the source of current to the device [m]; undefined: nobody measured it. */
  readonly fromSourceM?: number;
  /** In a sheath, conduit or box the whole of that length. */
  readonly enclosed: boolean;
  /** What that conductor starts at; the rule-set may allow more at a battery post or a charger. */
  readonly startsAt: "bus" | "battery post" | "charger";
}

/** `none`: nothing surges. `unknown`: there is a motor, and nobody said what it takes to start. */
export type MotorStart =
  | "none"
  | "unknown"
  | {
      /** All current through the device while the largest motor starts and the rest runs [A]. */
      readonly currentA: number;
      readonly lastsS: number;
    };

export interface GuardedConductor {
  /** `fore trunk / lamps / out`, `floor lamp 1 / leads`. */
  readonly id: string;
  readonly sizeKey: string;
  readonly areaMm2: number;
  /** Allowed current where it lies, after all factors [A]; undefined where no table has it. */
  readonly ampacityA?: number;
  /** Temperature rating of the insulation [°C]. */
  readonly insulationC?: number;
  /** Resistance out to a short at its far end and back to the battery's posts, copper hot [Ω]; undefined where a length is missing. */
  readonly farLoopOhm?: number;
}

export interface GuardedGear {
  readonly id: string;
  /** Greatest fuse its maker allows in front of it [A]. */
  readonly maxFuseA?: number;
}

export interface NearerDevice {
  readonly id: string;
  readonly device: Protection["device"];
  readonly ratingA?: number;
}

/** What feeds a short, and how much of the circuit lies before the device. */
export interface Faults {
  readonly source: FaultSource;
  /** Resistance out to the device and back to the battery's posts, copper cold [Ω]; undefined where a length is missing. */
  readonly nearLoopOhm?: number;
}

export type FaultSource =
  | {
      readonly kind: "battery";
      readonly chemistry: Chemistry;
      /** Fully charged, and at its reserve [V]. */
      readonly maxEmfV: number;
      readonly minEmfV: number;
      /** New and warm, and old, cold and low [Ω]. */
      readonly minInternalOhm: number;
      readonly maxInternalOhm: number;
      /** What its maker says it drives into a dead short [A]. */
      readonly shortCircuitA?: number;
      /** The internal resistance is the tool's assumption, not the owner's or the maker's. */
      readonly assumed: boolean;
    }
  /** A converter or self-limiting charger: no more than this, whatever the short. */
  | { readonly kind: "limited"; readonly maxA: number }
  | { readonly kind: "unknown" };

/** What a rule-set asks of devices. */
export type GuardRules = Pick<
  RuleSet,
  | "maxProtectionShare"
  | "maxProtectionDistanceM"
  | "maxProtectionDistanceEnclosedM"
  | "maxProtectionDistanceBatteryM"
  | "maxProtectionDistanceChargerM"
>;
