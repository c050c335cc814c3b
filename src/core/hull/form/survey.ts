import type { HullProblem } from "../problem.js";
import type { Point } from "../vector.js";
import { type Form, formFrom, type LinePoints, type Span } from "./form.js";
import { cubicSpline, splineAt } from "./spline.js";

/** One line of a tape survey: what was measured at each station; undefined where nothing was. A keel has no half-breadths. */
export interface SurveyLine {
  readonly name: string;
  readonly knuckle: boolean;
  readonly above: Span;
  readonly halfBreadthsM?: readonly (number | undefined)[];
  readonly heightsM: readonly (number | undefined)[];
}

/** What a person alone can measure: a few stations from the transom, a few figures at each [m]. */
export interface TapeSurvey {
  readonly stationsM: readonly number[];
  /** Keel first, sheer last. */
  readonly lines: readonly SurveyLine[];
  /** Spread of one reading (one standard deviation) [m]. */
  readonly sigmaM: number;
}

export type MeasuredLines = Omit<TapeSurvey, "sigmaM">;

/**
 * The form through what was measured, before anything is said of how fair that is. Nothing is smoothed.
 * @throws RangeError if a line has not one entry per station.
 */
export function formOfTape(survey: MeasuredLines): { form?: Form; problems: HullProblem[] } {
  return formFrom(survey.lines.map((line) => linePoints(survey, line)));
}

function linePoints(survey: MeasuredLines, line: SurveyLine): LinePoints {
  const n = survey.stationsM.length;
  for (const [what, list] of [
    ["half-breadths", line.halfBreadthsM],
    ["heights", line.heightsM],
  ] as const)
    if (list !== undefined && list.length !== n)
      throw new RangeError(`${what} of ${line.name} must be ${n}, one a station, got ${list.length}`);
  const heights = filled(survey.stationsM, line.heightsM);
  const halves = line.halfBreadthsM
    ? filled(survey.stationsM, line.halfBreadthsM)
    : survey.stationsM.map(() => 0);
  const points = survey.stationsM.flatMap((x, i): Point[] => {
    const [y, z] = [halves[i], heights[i]];
    // a station where the line has neither figure is one it does not reach, or that was skipped
    const measured = line.heightsM[i] !== undefined || line.halfBreadthsM?.[i] !== undefined;
    return measured && y !== undefined && z !== undefined ? [[x, y, z]] : [];
  });
  return { name: line.name, points, knuckle: line.knuckle, above: line.above };
}

/** Gaps filled from the fair line through the rest; nothing is made up beyond the first and last measurement. */
function filled(stationsM: readonly number[], list: readonly (number | undefined)[]): (number | undefined)[] {
  const known = stationsM.flatMap((x, i) => (list[i] === undefined ? [] : [[x, list[i]] as const]));
  const rising = known.every(([x], i) => i === 0 || x > (known[i - 1]?.[0] ?? 0));
  const [first, last] = [known[0]?.[0], known.at(-1)?.[0]];
  if (known.length < 2 || !rising || first === undefined || last === undefined) return [...list];
  const fair = cubicSpline(
    known.map(([x]) => x),
    known.map(([, value]) => value),
  );
  return stationsM.map((x, i) => list[i] ?? (x > first && x < last ? splineAt(fair, x).value : undefined));
}
