/**
 * What can be wrong with a form, a face, a mark or a hole. Values only; the sentences stand in `words/`.
 * `findings/` turns them into findings with a level.
 */
const hullProblems = [
  "stations out of order",
  "too few stations",
  "number expected",
  "unknown column",
  "lines cross",
  "open surface",
  "unfair measurement",
  "contradictory measurement",
  "off the line",
  "corner inside the strip",
  "fairness not judged",
  "no reference point",
  "no check reading",
  "poor crossing",
  "unreachable by tape",
  "tape leaves the face",
  "straight tape blocked",
  "references in a line",
  "reading off the face",
  "off the face",
  "row does not fit",
  "holes too close",
  "too near the edge",
  "in a zone not to drill",
  "flange over the edge",
  "flange over a zone",
  "flanges overlap",
  "no room behind",
  "edge rule not known",
  "fixture differs from catalogue",
  "sealant does not bond",
  "sheet too thick for a step drill",
  "needs backing",
  "cannot be reached",
  "does not pass",
  "sinks",
  "unstable upright",
] as const;
export type HullProblemKind = (typeof hullProblems)[number];

export interface HullProblem {
  readonly problem: HullProblemKind;
  /** Name of the thing it is about: a hole, a line, a station. */
  readonly at: string;
  /** Other things it concerns. */
  readonly with?: readonly string[];
  /** What was found, and what it should have stayed within, both in `unit`. */
  readonly figure?: number;
  readonly limit?: number;
  readonly unit?: "m" | "mm" | "°" | "kg" | "σ" | "mN/m" | "";
  /** What would be right, as a number in `unit`, where one is known. */
  readonly right?: number;
  /** Words that fill the sentence: name of a line, of a coordinate. */
  readonly terms?: Readonly<Record<string, string>>;
}
