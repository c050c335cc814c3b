/**
 * A plan after reading: plain values in SI units, exactly what the owner wrote and nothing more.
 * A field that is `undefined` was left out (or written as `work out`); `../complete.ts` decides what it becomes
 * and lists each such decision as an assumption. Lengths in m, areas in mm² (the trade's unit), angles in degrees.
 */

export type { ConductorSize } from "../../quantity/conductor-size.js";

/** Where something sits, as far as water and vapour go. */
export type Surroundings = "dry" | "splash" | "wet" | "bilge" | "engine space";

/**
 * One end of a run: a place, and where a place has several outlets, the port on it.
 * Written `helm / lamps` (way `lamps` of panel `helm`), `mast converter / out`, `fore box / lamps`, or just `house`.
 */
export interface Endpoint {
  readonly place: string;
  readonly port?: string;
}

/** A fuse or breaker. */
export interface Protection {
  readonly device: "blade fuse" | "bolted fuse" | "cartridge fuse" | "breaker";
  /** Undefined: to be worked out. */
  readonly ratingA?: number;
  /** Largest fault current it can break [A]. */
  readonly interruptingA?: number;
  /** Length of conductor between the source of current and the device [m]. */
  readonly fromSourceM?: number;
  /** Is that length in a sheath, conduit or box all the way? */
  readonly enclosed?: boolean;
  readonly surroundings?: Surroundings;
  /** Marked as ignition protected by its maker. */
  readonly ignitionProtected?: boolean;
}

/** A switch in the positive leg. */
export interface Switch {
  readonly ratingA?: number;
  readonly surroundings?: Surroundings;
  readonly ignitionProtected?: boolean;
}

/** Kinds of joint and termination of the trade; resistance and limits stand in `core/reference/joints.ts`. */
export const jointKinds = [
  "crimped butt",
  "sealed butt",
  "solder sleeve",
  "soldered and sleeved",
  "crimped ring",
  "crimped fork",
  "push-on tab",
  "screw terminal",
  "lever clamp",
  "pin plug",
  "tap",
  "twist-on cap",
  "twisted and taped",
] as const;
export type JointKind = (typeof jointKinds)[number];
