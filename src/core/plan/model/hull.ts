/** Faces, reference points, marks and weights, as read. Lengths in m. */
import type { Material } from "../../reference/drilling.js";
import type { PlanPoint } from "./form.js";
import type { HolePlan, Place, Side } from "./placing.js";

/** A point one can put a finger on. */
export interface Reference {
  readonly name: string;
  readonly place:
    | { readonly kind: "along"; readonly line: string; readonly alongM: number }
    | { readonly kind: "station"; readonly line: string; readonly stationM: number }
    | { readonly kind: "at"; readonly atM: PlanPoint }
    /** On a face, as things are placed there. */
    | { readonly kind: "face"; readonly face: string; readonly place: Place };
  /** One on each side. */
  readonly pair: boolean;
  readonly spreadM?: number;
  /** Faces a tape can be pulled to straight from it, though it does not lie on them. */
  readonly straightTo: readonly string[];
  /** How far each of the two is from a common point: what the boat's two sides differ by. */
  readonly measured: readonly {
    readonly from: string;
    readonly portM: number;
    readonly starboardM: number;
  }[];
}

export const looks = ["aft", "forward", "port", "starboard", "up", "down"] as const;

/** What one drills. */
export interface FacePlan {
  readonly name: string;
  readonly shape:
    | {
        readonly kind: "strip";
        readonly lower: string;
        readonly upper: string;
        readonly fromM: number;
        readonly toM: number;
        /** A lining or coaming lies so far inside the skin. */
        readonly insetM: number;
      }
    /** Corners across and up from the lower left one, as one looks at it. */
    | {
        readonly kind: "flat";
        readonly outlineM: readonly (readonly [acrossM: number, upM: number])[];
        readonly atM: PlanPoint;
        readonly looks: (typeof looks)[number];
      };
  readonly pair: boolean;
  readonly material?: Material;
  readonly thicknessM?: number;
  /** Room behind it for thread, nut and the bend of a cable. */
  readonly roomM?: number;
  /** What is behind, in the owner's words. */
  readonly behind?: string;
  readonly zones: readonly ZonePlan[];
  readonly openings: readonly OpeningPlan[];
  readonly holes: readonly FaceHole[];
}

export const zoneKinds = ["seam", "frame", "tank", "foam", "bolted behind", "other"] as const;

/** A part of a face not to drill. */
export interface ZonePlan {
  readonly name: string;
  readonly kind: (typeof zoneKinds)[number];
  /** Stations on a strip, lengths across on a flat face. */
  readonly fromM: number;
  readonly toM: number;
  /** Off the upper edge of a strip, up from the corner of a flat face; undefined: all the way. */
  readonly offM?: readonly [fromM: number, toM: number];
}

/** An opening one can put an arm through. */
export interface OpeningPlan {
  readonly name: string;
  readonly at: Place;
  readonly clearM: number;
  readonly reachM?: number;
  /** Space behind it; a face that names none has one space of its own. */
  readonly space?: string;
}

/** A hole that is there already, or one that takes no gear. */
export interface FaceHole {
  readonly name: string;
  readonly at: Place;
  readonly side: Side;
  readonly pair: boolean;
  readonly hole: HolePlan;
  /** It is there already: no mark is needed. */
  readonly there: boolean;
}

export interface MarksWanted {
  readonly lies?: "on the surface" | "straight";
  readonly graduationM?: number;
  readonly longestM?: number;
  readonly side?: "inside" | "outside";
  readonly method?: "best" | "two tapes" | "along then square";
  readonly spreadM?: number;
  /** A mark nearer its place than this may stay. */
  readonly toleranceM?: number;
}

/** A reading taken after marking. */
export interface MarkReading {
  readonly mark: string;
  readonly from: string;
  readonly readM: number;
}

export interface PlacedWeight {
  readonly name: string;
  readonly massKg: number;
  readonly atM: PlanPoint;
}

export interface FloatPlan {
  readonly water: "sea" | "fresh";
  readonly hull?: Omit<PlacedWeight, "name">;
  readonly people: readonly PlacedWeight[];
  readonly other: readonly PlacedWeight[];
}

/** Everything of a plan about the hull besides its form. */
export interface HullPlan {
  readonly references: readonly Reference[];
  readonly faces: readonly FacePlan[];
  readonly marks: MarksWanted;
  readonly checked: readonly MarkReading[];
  /** Undefined: how she floats is not asked. */
  readonly float?: FloatPlan;
}
