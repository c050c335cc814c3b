import type { JointKind } from "./common.js";

/**
 * What the owner did and measured: the sections `work done`, `readings`, `as built` and `projects`. Names are those of the plan on the
 * day; nothing here is worked out, and nothing is dropped when the plan changes. Dates are text as written, `2024-05-18`.
 */

/** A file kept beside the plan or in the face's own store; never its bytes. */
export interface PhotoReference {
  readonly file: string;
  readonly shows?: string;
}

/** A step of the order of work that was ticked. */
export interface DoneStep {
  /** Id of the step, `draw / lamp trunk`. */
  readonly step: string;
  readonly on?: string;
  readonly minutes?: number;
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
  readonly name: string;
  readonly kind: "voltage" | "current" | "ohm";
  /** Point of the circuit, `helm / lamps +`; for a current the branch, `helm / lamps / fuse`. */
  readonly at: string;
  readonly against?: string;
  /** Gear that was on. */
  readonly withOn: readonly string[];
  /** V, A or Ω. */
  readonly value: number;
  readonly meter?: MeterError;
  readonly on?: string;
  readonly note?: string;
}

export interface BuiltLength {
  readonly run: string;
  readonly lengthM: number;
  readonly size?: string;
  readonly on?: string;
  readonly note?: string;
}

/** A hole in boat or box. Position on its face from the face's own reference [m]. */
export interface BuiltHole {
  readonly name: string;
  /** Gear, box or run it is for. */
  readonly for: string;
  readonly face: string;
  readonly alongM: number;
  readonly upM: number;
  readonly diameterMm: number;
  /** What lies behind it. */
  readonly behind?: string;
  readonly on?: string;
  readonly note?: string;
  readonly photos: readonly PhotoReference[];
}

export interface BuiltJoint {
  /** Run, or gear for the joint to its own leads. */
  readonly at: string;
  readonly end: "start" | "end";
  readonly kind: JointKind;
  readonly on?: string;
  readonly note?: string;
}

export interface BuiltRating {
  /** Device, `helm / lamps / fuse`. */
  readonly device: string;
  readonly ratingA: number;
  readonly on?: string;
  readonly note?: string;
}

export interface AsBuilt {
  readonly lengths: readonly BuiltLength[];
  readonly holes: readonly BuiltHole[];
  readonly joints: readonly BuiltJoint[];
  readonly ratings: readonly BuiltRating[];
}

/** A finished project, kept so that the next one starts from it. */
export interface FinishedProject {
  readonly name: string;
  readonly finishedOn?: string;
  readonly note?: string;
  readonly workDone: readonly DoneStep[];
  readonly readings: readonly TakenReading[];
}

/** The four sections together. */
export interface WorkRecord {
  readonly workDone: readonly DoneStep[];
  readonly readings: readonly TakenReading[];
  readonly asBuilt: AsBuilt;
  readonly projects: readonly FinishedProject[];
}

export const noWork: WorkRecord = {
  workDone: [],
  readings: [],
  asBuilt: { lengths: [], holes: [], joints: [], ratings: [] },
  projects: [],
};
