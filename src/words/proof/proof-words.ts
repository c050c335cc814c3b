import type { Protection } from "../../core/plan/model/common.js";
import type { SheetSection, SheetTestKind, StopReason } from "../../core/proving/sheet/types.js";
import type { FaultKind } from "../../core/proving/suspect.js";
import type { Unplaced } from "../../core/proving/taken/adapt.js";
import type { JudgedReading, Verdict } from "../../core/proving/taken/judge.js";
import type { IdleMend } from "../../core/proving/taken/mended.js";
import type { SpareThing } from "../../core/proving/water/card.js";

/** Which side of a fuse or a switch a point is on: stands after its name and pole, ` (behind its fuse)`. */
/** What is said of a point behind its sign; `out` is the whole end of its name, `$1` its sign. */
export type PointWords = Readonly<Record<"joint" | "fused" | "main" | "master" | "bus" | "out", string>>;

/** Parts of a branch that are no joint. */
export type PartName = "conductor" | "lead" | "lead fuse" | "protection" | "switch" | "hull";

/** All that is said of readings and of what they tell. Names are the plan's; figures come with their unit. */
export interface ProvingWords {
  readonly points: PointWords;
  readonly branches: {
    /** Gear's own lead. */
    readonly lead: Readonly<Record<"out" | "return", (gear: string) => string>>;
    readonly device: Readonly<Record<"fuse" | "switch" | "main" | "master", (of: string) => string>>;
    readonly out: (run: string, way: string) => string;
    readonly return: (run: string) => string;
    /** Both of gear's own leads together. */
    readonly ownLeads: (gear: string) => string;
  };
  readonly allOff: string;
  readonly on: (gear: string) => string;
  /** What is read; `on` comes as one of the two above, `apart` as what follows below. */
  readonly probes: {
    readonly voltage: (at: string, against: string, on: string) => string;
    readonly current: (at: string, on: string) => string;
    readonly ohm: (at: string, against: string, apart: string) => string;
    readonly marking: (at: string) => string;
    readonly switches: (gear: string) => string;
    readonly lifted: (wires: string) => string;
  };
  /** Follows a reading for which a joint must be cut. */
  readonly cut: (joint: string) => string;
  /** An ohmmeter that shows no end. */
  readonly open: string;
  readonly atLeast: (reading: string) => string;
  readonly atMost: (reading: string) => string;
  /** From one limit, or one point, to the other. */
  readonly range: (from: string, to: string) => string;
  readonly joined: (names: readonly string[]) => string;
  readonly verdicts: Readonly<Record<Verdict, string>>;
  readonly faults: Readonly<Record<FaultKind, string>>;
  /** A suspect's sentence: the fault, where, and what follows it, each with its own comma. */
  readonly suspects: {
    readonly well: string;
    readonly farEnd: (cable: string) => string;
    readonly more: (ohms: string) => string;
    readonly under: (voltage: string) => string;
    readonly looksLike: (rating: string) => string;
    readonly first: (part: string) => string;
  };
  readonly parts: Readonly<Record<PartName, string>>;
  /** A joint, at one end of its stretch where it has two. */
  readonly joint: (kind: string, end: "start" | "end" | undefined) => string;
  readonly wouldFit: Readonly<Record<"more" | "less", string>>;
  readonly flipped: Readonly<Record<NonNullable<JudgedReading["flipped"]>, string>>;
  readonly differs: (rows: string) => string;
  /** Of several readings of one thing. */
  readonly laterCounts: string;
  /** All full voltages off alike, by a share with its unit. */
  readonly meterOff: Readonly<Record<"high" | "low", (share: string) => string>>;
  /** Follows the verdict on a reading that a mend has taken back: what was mended, and that it was read again. */
  readonly mended: (place: string) => string;
  readonly readAgain: string;
  readonly idleMends: Readonly<Record<IdleMend["why"], (place: string) => string>>;
  readonly soundBoat: (band: string) => string;
  readonly changed: (reading: string, was: string, project: string, is: string) => string;
  readonly unplaced: Readonly<Record<Unplaced["why"], (name: string) => string>>;
}

/** All that stands on the sheet of tests. */
export interface SheetWords {
  readonly tests: Readonly<Record<SheetTestKind, string>>;
  /** What to stop for, and what then. */
  readonly stops: Readonly<Record<StopReason, string>>;
  readonly sections: Readonly<Record<SheetSection["kind"] | "feed", (at: string) => string>>;
  readonly how: {
    readonly marking: (branch: string) => string;
    readonly clamp: (branch: string) => string;
    readonly ownSwitchOff: string;
    readonly gearOff: string;
    readonly hull: (at: string) => string;
    readonly colours: (at: string) => string;
    readonly float: (at: string) => string;
    /** `arc` is how far each is seen abaft the beam. */
    readonly sidelights: (at: string, arc: string) => string;
    readonly allRound: (at: string) => string;
    readonly arc: (at: string, arc: string) => string;
    readonly leak: (at: string) => string;
  };
  readonly expected: Readonly<Record<"allRound" | "dry" | "ownArc" | "right", string>>;
  readonly instruments: {
    readonly clamp: (range: string) => string;
    readonly meter: (range: string) => string;
    readonly plainMeter: string;
    readonly eyes: string;
    readonly hose: string;
  };
}

/** All that stands on the card for the water. */
export interface WaterWords {
  readonly atRest: string;
  readonly switches: Readonly<Record<"live" | "own" | "none", string>>;
  readonly noFuse: string;
  readonly devices: Readonly<Record<Protection["device"], string>>;
  readonly device: (kind: string, rating: string) => string;
  readonly outing: (name: string, use: string) => string;
  readonly lights: (use: string) => string;
  readonly inUse: (count: number) => string;
  readonly gains: (time: string) => string;
  readonly things: Readonly<Record<SpareThing, string>>;
}

/** Everything said about proving, in one language. A language that leaves something out does not compile. */
export interface ProofWords {
  readonly proving: ProvingWords;
  readonly sheet: SheetWords;
  readonly water: WaterWords;
}
