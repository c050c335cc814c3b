import type { Band } from "../bands.js";
import type { Probe } from "../probe.js";

/** What one line of the test sheet does. */
export const sheetTests = [
  "insulation",
  "insulation to hull",
  "continuity out",
  "continuity back",
  "colours",
  "resting voltage",
  "rating",
  "live point",
  "switched off",
  "unloaded voltage",
  "current",
  "loaded voltage",
  "drop out",
  "drop back",
  "pump running",
  "float switch",
  "seen from",
  "leak",
] as const;
export type SheetTestKind = (typeof sheetTests)[number];

/** Why one stops and looks before going on. */
export type StopReason =
  | "never below the limit"
  | "no way through"
  | "wrong way round"
  | "battery not as charged"
  | "not that rating"
  | "still live"
  | "outside the band"
  | "runs hot or dry"
  | "does not start"
  | "not seen"
  | "lets water in";

export interface SheetTest {
  /** Unique: the section's id, the test, and what it is taken at. */
  readonly id: string;
  readonly test: SheetTestKind;
  /** Gear, way, battery, device or hole. */
  readonly at: string;
  /** Where the meter goes; absent: done by eye, ear or hand. */
  readonly probe?: Probe;
  /** Expected reading and its band; absent where a limit stands in its place. */
  readonly band?: Band;
  /** Resistance it must not be under [Ω]. */
  readonly leastOhm?: number;
  /** Reading it must not be over [V]. */
  readonly mostV?: number;
  readonly ratingA?: number;
  /** Arc over which a light must be seen [degrees]. */
  readonly arcDeg?: number;
  /** Range of the meter, a key of `pocketMeter`. */
  readonly setting?: string;
  readonly stop: StopReason;
}

/** Lines that belong together, under the id the order of work calls them by: `insulation`, `battery / house`, `way / helm / lamps`. */
export interface SheetSection {
  readonly id: string;
  readonly kind: "insulation" | "continuity" | "polarity" | "battery" | "way" | "seen" | "holes";
  /** Circuit or battery; empty where it is about the whole boat. */
  readonly at: string;
  /** Gear on it. */
  readonly gear: readonly string[];
  readonly tests: readonly SheetTest[];
}
