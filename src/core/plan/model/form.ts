/**
 * The form of the craft, as read: SI values, exactly what the owner wrote. Frame: x forward from station 0, y to port, z up from
 * the base line [m] (`docs/methods/form.md`).
 */
import type { StartingKind } from "../../reference/starting-forms.js";

export type PlanPoint = readonly [x: number, y: number, z: number];

/** `craft: {form: …}`: one of three ways to give the form. */
export type CraftForm = SurveyForm | StartingForm | OffsetsForm;

/** `stations:` and `lines:` with half-breadths and heights. A large table of offsets and a small tape survey are the same thing. */
export interface SurveyForm {
  readonly kind: "survey";
  readonly stationsM: readonly number[];
  /** Keel first, sheer last. */
  readonly lines: readonly FormLine[];
  /** `spread: 2 mm`: one standard deviation of one reading. */
  readonly spreadM?: number;
  /** Readings taken to catch a slip. */
  readonly checks: readonly FormCheck[];
  /** No deck between the sheers. */
  readonly open: boolean;
}

/** `start from: vee-bottomed utility`, scaled to length, beam and depth, and bent through the measurements. */
export interface StartingForm {
  readonly kind: "starting form";
  readonly shape: StartingKind;
  /** Keel to sheer, amidships. */
  readonly depthM: number;
  readonly measured: readonly FormFigure[];
  readonly open?: boolean;
}

export const offsetNumbers = ["mm", "m", "in", "feet-inches-eighths"] as const;

/** `offsets: |` the text of a table itself. */
export interface OffsetsForm {
  readonly kind: "offsets";
  readonly text: string;
  readonly numbers: (typeof offsetNumbers)[number];
  readonly open: boolean;
}

export interface FormLine {
  readonly name: string;
  /** One a station, undefined where it was not measured; left out for a line on the centreline. */
  readonly halfBreadthsM?: readonly (number | undefined)[];
  readonly heightsM: readonly (number | undefined)[];
  readonly above: "flat" | "round";
  /** False: the section runs through smoothly. */
  readonly corner: boolean;
}

export interface FormFigure {
  readonly line: string;
  readonly atM: number;
  readonly halfBreadthM?: number;
  readonly heightM?: number;
}

/** A reading that the form already implies. */
export type FormCheck =
  | { readonly kind: "breadth"; readonly line: string; readonly atM: number; readonly readM: number }
  | {
      readonly kind: "girth";
      readonly line: string;
      readonly to: string;
      readonly atM: number;
      readonly readM: number;
    }
  | {
      readonly kind: "along";
      readonly line: string;
      readonly atM: number;
      readonly toM: number;
      readonly readM: number;
    };
