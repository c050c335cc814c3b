import type { AmpacityTable, BundlingTable, EngineSpaceTable } from "./ampacity-table.js";
import type { Cited } from "./source.js";

/** The numbers of one set of rules for small-craft d.c. electrics, each with its source. Lengths in m, areas in mm². */
export interface RuleFigures {
  readonly name: "us" | "iso";
  readonly title: string;
  /** Sizes one chooses from, rising. */
  readonly sizeKeys: readonly string[];

  /** Greatest drop, source to gear and back, as a share of nominal: where safety or electronics hang on it, and elsewhere. */
  readonly maxDropSafety: Cited<number>;
  readonly maxDropOther: Cited<number>;
  /** Roles of `plan/model/gear.ts` under `maxDropSafety`. */
  readonly safetyRoles: Cited<readonly string[]>;

  readonly ampacity: AmpacityTable;
  readonly engineSpace: EngineSpaceTable;
  readonly bundling: BundlingTable;

  readonly leastSheathed: Cited<string>;
  readonly leastSingle: Cited<string>;
  /** A conductor too thin to run singly may leave its sheath this far. */
  readonly maxOutOfSheathM: Cited<number>;
  /** Conductors shorter than this outside their housing (pigtails) are exempt from the least sizes. */
  readonly leastSizeExemptM: Cited<number>;
  /** Circuits of electronics under this current are exempt; 0: none are. */
  readonly leastSizeExemptA: Cited<number>;

  /** How far along the conductor a device may sit from the source of current: bare, in a sheath or enclosure, at a battery post. */
  readonly maxProtectionDistanceM: Cited<number>;
  readonly maxProtectionDistanceEnclosedM: Cited<number>;
  readonly maxProtectionDistanceBatteryM: Cited<number>;
  readonly maxProtectionDistanceChargerM: Cited<number>;
  /** Greatest rating of a device as a multiple of the conductor's ampacity, below 50 V. */
  readonly maxProtectionShare: Cited<number>;

  readonly maxTerminalsPerStud: Cited<number>;
  readonly returnColours: Cited<readonly string[]>;
  readonly maxBatteryMovementM: Cited<number>;
  /** Metal fuel parts closer than this above the battery need an insulating shield. */
  readonly minFuelPartM: Cited<number>;
}

/** The same with the one question everybody asks of it. */
export interface RuleSet extends RuleFigures {
  /** Greatest drop for gear of a role of `plan/model/gear.ts`, as a share of nominal. */
  readonly dropShare: (role: string) => number;
}
