/**
 * The part of a plan about the hull and what is drilled into it, as read: SI values, exactly what the owner wrote. Frame: x forward from
 * station 0, y to port, z up from the base line [m] (`docs/methods/form.md`). Not yet a part of `Plan`.
 */
import type { Material } from "../../reference/drilling.js";
import type { StartingKind } from "../../reference/starting-forms.js";

/** `craft: {form: …}`: one of three ways to give the form. */
export type CraftForm =
  /** `stations:` and lines with half-breadths and heights. A table of offsets and a tape survey are the same thing, one larger. */
  | {
      readonly kind: "survey";
      readonly stationsM: readonly number[];
      readonly lines: readonly FormLine[];
      /** `tape: 2 mm`: spread of one reading. */
      readonly sigmaM?: number;
      /** Readings taken to catch a slip. */
      readonly checks: readonly FormCheck[];
    }
  /** `start from: vee-bottomed utility`, scaled to length, beam and depth, and bent through the measurements. */
  | {
      readonly kind: "starting form";
      readonly shape: StartingKind;
      readonly depthM?: number;
      readonly measured: readonly FormFigure[];
    }
  /** `offsets: boat.csv`: the text itself is handed in by whoever reads files. */
  | {
      readonly kind: "offsets file";
      readonly file: string;
      readonly numbers: "mm" | "m" | "in" | "feet-inches-eighths";
    };

export interface FormLine {
  readonly name: string;
  /** `half-breadth: […]`, one a station, `-` where it was not measured; left out for the keel. */
  readonly halfBreadthsM?: readonly (number | undefined)[];
  readonly heightsM: readonly (number | undefined)[];
  /** `above: round`; flat where left out. */
  readonly above?: "flat" | "round";
  /** `corner: false`: the section runs through smoothly. */
  readonly corner?: boolean;
}

export interface FormFigure {
  readonly line: string;
  readonly coordinate: "half-breadth" | "height";
  readonly atM: number;
  readonly valueM: number;
}

/** `- {girth: 21 in, at: 72 in, from: chine, to: sheer}`, `{breadth: …}`, `{along: …}`. */
export interface FormCheck {
  readonly kind: "girth" | "breadth" | "along";
  readonly line: string;
  readonly toLine?: string;
  readonly atM: number;
  readonly toM?: number;
  readonly readM: number;
}

/** `references:` a point one can put a finger on; `pair: true` means one on each side. */
export interface Reference {
  readonly name: string;
  /** `{along: 98 in, on: sheer}`, or `{at: [x, y, z]}` for one that is on no line. */
  readonly place:
    | { readonly on: string; readonly alongM: number }
    | { readonly atM: readonly [number, number, number] };
  readonly pair: boolean;
  readonly sigmaM?: number;
  /** `measured: {stem to port: 121 1/8 in, stem to starboard: 121 in}`: how the two of a pair differ from one another, from a common point. */
  readonly measured: readonly {
    readonly from: string;
    readonly portM: number;
    readonly starboardM: number;
  }[];
}

/** `faces:` what one drills. */
export interface FacePlan {
  readonly name: string;
  readonly shape: /** `{between: [chine, sheer], from: 40 in, to: 150 in}` */
    | {
        readonly kind: "strip";
        readonly lower: string;
        readonly upper: string;
        readonly fromM: number;
        readonly toM: number;
      }
    /** `{flat: [[0, 0], [12 in, 0], …], at: [x, y, z], faces: aft}` */
    | {
        readonly kind: "flat";
        readonly outlineM: readonly (readonly [number, number])[];
        readonly atM: readonly [number, number, number];
        readonly looks: "aft" | "forward" | "port" | "starboard" | "up" | "down";
      }
    /** `{side of: fore box, side: lid}`: a face of a box, laid out where boxes are. */
    | { readonly kind: "box side"; readonly box: string; readonly side: string };
  readonly pair: boolean;
  readonly material?: Material;
  readonly thicknessM?: number;
  /** Room behind it for thread, nut and the bend of a cable. */
  readonly roomM?: number;
  readonly zones: readonly ZonePlan[];
  readonly openings: readonly OpeningPlan[];
}

/** `zones: [{frame at: 84 in, width: 2 in}, {tank from: 20 in, to: 60 in}]`: the whole height of the face where none is given. */
export interface ZonePlan {
  readonly name: string;
  readonly kind: "seam" | "frame" | "tank" | "foam" | "bolted behind" | "other";
  readonly fromM: number;
  readonly toM: number;
  /** From and to, off the edge that places count from. */
  readonly offM?: readonly [number, number];
}

/** `openings: [{hatch, at: 132 in, off: 6 in, clear: 8 in, reach: 22 in}]`. */
export interface OpeningPlan {
  readonly name: string;
  readonly alongM: number;
  readonly offM: number;
  readonly clearM: number;
  readonly reachM?: number;
  /** Space behind it; a face that names none has one space of its own. */
  readonly space?: string;
}

/** `on: coaming` of a piece of gear, or the row it stands in. */
export interface GearPlace {
  readonly face: string;
  readonly place: /** `{along: 31 in, from: rowlock, below: sheer, off: 3 1/2 in}` */
    | {
        readonly kind: "one";
        readonly from?: string;
        readonly edge: string;
        readonly alongM: number;
        readonly offM: number;
      }
    /** `row: {count: 3, from: 55 in, to: 140 in, end margin: 2 in, below: sheer, off: 3 1/2 in}` */
    | {
        readonly kind: "row";
        readonly count: number;
        readonly fromM: number;
        readonly toM: number;
        readonly endMarginM?: number;
        readonly edge: string;
        readonly offM: number;
        readonly leastApartM?: number;
      };
  /** `pair: true`: the same on the twin. */
  readonly pair: boolean;
  readonly holeM?: number;
  /** `body: 15.6 mm` by the catalogue, `measured: [15.5 mm, 15.7 mm]` by the caliper. */
  readonly bodyM?: number;
  readonly measuredM: readonly number[];
  readonly flangeM?: number;
  readonly behindM?: number;
  /** What water finds there. */
  readonly opening?: "open" | "sealed" | "drain";
}

/** `marks: {tape: on the surface, graduation: 1/16 in, longest: 16 ft, from: inside}`. */
export interface MarksWanted {
  readonly lies?: "on the surface" | "straight";
  readonly graduationM?: number;
  readonly longestM?: number;
  readonly side?: "inside" | "outside";
  readonly method?: "best" | "two tapes" | "along then square";
  readonly sigmaM?: number;
  /** A mark nearer its place than this may stay. */
  readonly toleranceM?: number;
}

/** `checked: [{mark: coaming lamp 2 port, from: rowlock, read: 30 1/16 in}]`: a reading taken after marking. */
export interface MarkReading {
  readonly mark: string;
  readonly from: string;
  readonly side: "port" | "starboard";
  readonly readM: number;
}

/** `float: {hull: {weight: 98 kg, at: [81 in, 0, 11 in]}, water: sea, weights: {people: {…}}}`. Batteries and gear weigh where they are placed. */
export interface FloatPlan {
  readonly water?: "sea" | "fresh";
  readonly weights: readonly {
    readonly name: string;
    readonly massKg: number;
    readonly atM: readonly [number, number, number];
  }[];
}
