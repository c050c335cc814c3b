import type { CompletePlan, PiecePlace } from "../plan/completed.js";
import type { FacePlan } from "../plan/model/hull.js";
import type { HolePlan, Side } from "../plan/model/placing.js";
import type { Material } from "../reference/drilling.js";
import type { Face } from "./faces/face.js";
import type { Spot } from "./faces/patch.js";
import type { Weight } from "./float/equilibrium.js";
import type { DrowningTable, HoleAfloat } from "./float/holes-afloat.js";
import type { Rest, RightingPoint } from "./float/stability.js";
import type { CutHull } from "./float/stations.js";
import type { Form } from "./form/form.js";
import type { NextMeasurement } from "./form/next-measurement.js";
import type { FixtureHole } from "./holes/fixture.js";
import type { HoleTool } from "./holes/tool.js";
import type { Mark } from "./marks/mark.js";
import type { ReferencePoint } from "./marks/tape.js";
import type { TwinMark } from "./marks/twins.js";
import type { Checked } from "./marks/verdict.js";
import type { Clearance, Zone } from "./placing/clearances.js";
import type { HullProblem } from "./problem.js";
import type { LinePath, Passage } from "./pulling/drawn-line.js";
import type { Passing, Pull } from "./pulling/order.js";
import type { Opening, Reach } from "./pulling/reach.js";
import type { Point } from "./vector.js";

/** Where everything is in the boat of one plan. Ids are the plan's own names; of a pair every piece has its own. */
export interface LaidHull {
  /** Undefined: the plan gives no form. */
  readonly form?: LaidForm;
  readonly references: readonly ReferenceFigures[];
  readonly faces: readonly LaidFace[];
  /** Of the reference points. */
  readonly lost: readonly HullProblem[];
}

/** Everything worked out about the hull from one plan. */
export interface HullFigures {
  readonly plan: CompletePlan;
  /** Undefined: the plan gives no form. */
  readonly form?: FormFigures;
  readonly references: readonly ReferenceFigures[];
  readonly faces: readonly FaceFigures[];
  /** Every placed piece and every hole without gear. */
  readonly holes: readonly HoleFigures[];
  /** Undefined: the plan does not ask how she floats, or there is no form to float. */
  readonly float?: FloatFigures;
  readonly pulling: PullingFigures;
  /** Of everything, in that order. */
  readonly problems: readonly HullProblem[];
}

/** The form as it was made, before anything is said of how sure it is. */
export interface LaidForm {
  readonly source: "survey" | "starting form" | "offsets";
  /** Undefined: what was measured makes no form. */
  readonly form?: Form;
  readonly open: boolean;
  readonly problems: readonly HullProblem[];
}

export interface FormFigures extends LaidForm {
  /** What to measure next, most useful first; empty for a table of offsets, which is taken as it is. */
  readonly next: readonly NextMeasurement[];
}

/** A reference point as it is; of a pair both. */
export interface ReferenceFigures {
  readonly name: string;
  readonly sides: Readonly<Partial<Record<Side, Point>>>;
  readonly sigmaM: number;
  /** How far the one to starboard stands off the mirror image of the one to port, as measured [m]. */
  readonly asymmetryM?: number;
}

/** Something that stands on a face, and where. */
export interface Placed {
  readonly piece: PiecePlace;
  readonly group: string;
  readonly hole: HolePlan;
  /** False for a hole that is there already. */
  readonly toMark: boolean;
  /** The same spot on the twin face. */
  readonly spot: Spot;
  readonly at: Point;
  /** In the owner's way: along the edge from its aft or left end, and off it [m]. */
  readonly edge: string;
  readonly alongM: number;
  readonly offM: number;
}

/** A face on the boat with what stands on it: all that a drawing shows of it. */
export interface LaidFace {
  readonly name: string;
  readonly plan: FacePlan;
  readonly material?: Material;
  /** One, or port and starboard of a pair; none where the face cannot be laid on the form. */
  readonly sides: readonly LaidSide[];
  readonly problems: readonly HullProblem[];
}

export interface LaidSide {
  readonly side: Side;
  readonly face: Face;
  readonly references: readonly ReferencePoint[];
  readonly zones: readonly Zone[];
  readonly openings: readonly Opening[];
  readonly placed: readonly Placed[];
  readonly problems: readonly HullProblem[];
}

export interface FaceFigures extends LaidFace {
  readonly sides: readonly SideFigures[];
}

export interface SideFigures extends LaidSide {
  /** In the order in which to set them out. */
  readonly marks: readonly SideMark[];
  readonly clearances: readonly Clearance[];
  /** Undefined: nothing was measured there. */
  readonly checked?: Checked;
}

/** A mark with how it goes with its twin. */
export interface SideMark {
  readonly mark: Mark;
  /** On the second side of a pair: against the mark of the first. */
  readonly twin?: TwinMark & { readonly of: string };
}

export interface HoleFigures {
  readonly name: string;
  readonly group: string;
  readonly face: string;
  readonly side: Side;
  readonly at: Point;
  readonly plan: HolePlan;
  readonly there: boolean;
  readonly material?: Material;
  readonly thicknessM?: number;
  /** What to cut, after the caliper [mm]; undefined where the catalogue's size is not given. */
  readonly cut?: FixtureHole;
  readonly tool?: HoleTool;
  readonly sealing?: SealingFigures;
  readonly behind: {
    readonly roomM?: number;
    readonly words?: string;
    /** Nearest zone, and how far the hole's middle is from it [m]. */
    readonly zone?: { readonly name: string; readonly distanceM: number };
  };
  readonly clearance?: Clearance;
  readonly reach?: Reach;
  readonly afloat?: HoleAfloat;
  readonly problems: readonly HullProblem[];
}

/** Sealant under its flange. */
export interface SealingFigures {
  readonly ml: number;
  readonly cureHours: number;
}

export interface FloatFigures {
  readonly hull: CutHull;
  readonly weights: readonly Weight[];
  /** Things that weigh something and have no place: left out. */
  readonly without: readonly string[];
  readonly densityKgPerM3: number;
  /** Undefined: she finds no rest; the problem says why. */
  readonly rest?: Rest;
  readonly curve: readonly RightingPoint[];
  readonly table?: DrowningTable;
  /** Trim and draft with one weight moved forward [per metre]. */
  readonly moves: readonly WeightMove[];
  readonly problems: readonly HullProblem[];
}

export interface WeightMove {
  readonly name: string;
  readonly massKg: number;
  /** Bow down positive [°/m]. */
  readonly trimDegPerM: number;
  /** Change of draft at the bow and at the stern for a metre forward [m/m]. */
  readonly draftForePerM: number;
  readonly draftAftPerM: number;
}

export interface PullingFigures {
  readonly passages: readonly Passage[];
  /** Cable ends in the order in which to pull them; what has no size is left out. */
  readonly order: readonly (Pull & { readonly path: LinePath })[];
  readonly passings: readonly Passing[];
  /** Holes whose cable or whose largest thing is not known. */
  readonly unknown: readonly string[];
}
