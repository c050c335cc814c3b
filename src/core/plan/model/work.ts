import type { ConductorSize, JointKind } from "./common.js";
import type { FaceName } from "./layout.js";
import type { Place, Side } from "./placing.js";

/**
 * What the owner did and measured: the sections `free hours`, `work done`, `work notes`, `readings`, `as built` and `projects`. Names are
 * those of the plan on the day; nothing here is worked out, and nothing is dropped when the plan changes. Days are text as written,
 * `2026-04-11` or `2026-04-11 19:20`, on the owner's own clock.
 */

/** A stretch of free time that comes every week. Day 0 is Monday; hours of the day, `toH` up to 24. */
export interface FreeWindow {
  readonly day: number;
  readonly fromH: number;
  readonly toH: number;
}

/** A file kept beside the plan or in the face's own store; never its bytes. */
export interface PhotoReference {
  readonly file: string;
  readonly shows?: string;
}

/** A step of the order of work that was ticked. */
export interface DoneStep {
  /** Id of the step, `draw / lamp trunk`. */
  readonly step: string;
  /** Pieces it covered on the day. Undefined: all there were. */
  readonly covers?: readonly string[];
  readonly when?: string;
  readonly minutes?: number;
  readonly note?: string;
  readonly photos: readonly PhotoReference[];
}

/** A note or a photo that belongs to a step, done or not. */
export interface StepNote {
  readonly step: string;
  readonly when?: string;
  readonly note?: string;
  readonly photos: readonly PhotoReference[];
}

/** How a meter errs: a share of what it shows, and a fixed part in the reading's unit. Limits, not standard deviations. */
export interface MeterError {
  readonly share: number;
  readonly fixed: number;
}

/** A reading taken. Where there are two probes, `at` is the plus probe and `against` the other. */
export interface TakenReading {
  /** `marking`: what is printed on a fuse or breaker, read by eye. */
  readonly kind: "voltage" | "current" | "ohm" | "marking";
  /** Point of the circuit, `helm / lamps +`; for a current the branch, for a marking the device, `helm / lamps / fuse`. */
  readonly at: string;
  readonly against?: string;
  /** Gear that was on. */
  readonly withOn: readonly string[];
  /** Wires, by their stretches of the circuit, that were taken off at their end towards the supply. */
  readonly lifted?: readonly string[];
  /** V, A or Ω; of a marking A. An ohmmeter that shows no end: Infinity. */
  readonly value: number;
  readonly meter?: MeterError;
  /** Step or test it was taken for, `prove / helm / lamps`. */
  readonly step?: string;
  readonly when?: string;
  readonly note?: string;
}

/** Something that was put right: what was read through it before tells of the boat as it was. */
export interface Mend {
  /** Stretch of the circuit, `lamp trunk / return`; a cable, device, battery or piece of gear. */
  readonly at: string;
  readonly when?: string;
  readonly note?: string;
}

/** What every record of something built may say. */
interface Built {
  /** Measured on the boat; false: made as the step said. */
  readonly measured: boolean;
  readonly when?: string;
  readonly note?: string;
  readonly photos: readonly PhotoReference[];
}

export interface BuiltLength extends Built {
  readonly run: string;
  readonly lengthM: number;
  readonly size?: ConductorSize;
}

/** A hole in a face of the boat, in the words a plan places things with. */
export interface BuiltHole extends Built {
  /** Mark it was drilled at: a piece of gear, `coaming lamp 2`, or a hole of a face. */
  readonly hole: string;
  /** Face. */
  readonly on: string;
  readonly side: Side;
  readonly at: Place;
  readonly sizeM: number;
  /** What lies behind it. */
  readonly behind?: string;
}

/** A hole in a box or the casing of a panel. */
export interface BuiltEntry extends Built {
  readonly box: string;
  /** Run it is for. */
  readonly run: string;
  readonly on: FaceName;
  readonly atM: readonly [alongM: number, fromBaseM: number];
  readonly holeM: number;
}

export interface BuiltJoint extends Built {
  /** Run, or gear for the joint to its own leads. */
  readonly at: string;
  readonly end: "start" | "end";
  readonly kind: JointKind;
}

export interface BuiltRating extends Built {
  /** Device, `helm / lamps / fuse`. */
  readonly device: string;
  readonly ratingA: number;
}

export interface AsBuilt {
  readonly lengths: readonly BuiltLength[];
  readonly holes: readonly BuiltHole[];
  readonly entries: readonly BuiltEntry[];
  readonly joints: readonly BuiltJoint[];
  readonly ratings: readonly BuiltRating[];
}

/** A finished project, kept so that the next one starts from it. What is dated up to its last day, wherever it stands in the plan, is its own too. */
export interface FinishedProject {
  readonly name: string;
  readonly finished?: string;
  readonly note?: string;
  readonly workDone: readonly DoneStep[];
  readonly notes: readonly StepNote[];
  readonly readings: readonly TakenReading[];
}

/** All of it together. */
export interface WorkRecord {
  readonly freeHours: readonly FreeWindow[];
  readonly workDone: readonly DoneStep[];
  readonly notes: readonly StepNote[];
  readonly readings: readonly TakenReading[];
  readonly mends: readonly Mend[];
  readonly asBuilt: AsBuilt;
  readonly projects: readonly FinishedProject[];
}

export const nothingBuilt: AsBuilt = { lengths: [], holes: [], entries: [], joints: [], ratings: [] };
