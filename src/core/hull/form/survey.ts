import type { HullProblem } from "../problem.js";
import type { Point } from "../vector.js";
import { leaveEachOut } from "./fairness.js";
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

/** One measured series: a coordinate of a line at the stations where it was measured. */
export interface Series {
  readonly line: string;
  readonly coordinate: "half-breadth" | "height";
  readonly placesM: readonly number[];
  readonly valuesM: readonly number[];
}

/** A misfit is told when it is both unlikely and larger than the tape could cause. */
const unlikely = 3.5;

/**
 * The form from a tape survey, and every measurement that does not lie on a fair line with its neighbours.
 * Nothing is smoothed: the form runs through what was measured.
 * @throws RangeError if a line has not one entry per station, or the spread is not above zero.
 */
export function surveyForm(survey: TapeSurvey): { form?: Form; problems: HullProblem[] } {
  if (!(survey.sigmaM > 0)) throw new RangeError(`spread of a reading must be > 0 m, got ${survey.sigmaM}`);
  const built = formFrom(survey.lines.map((line) => linePoints(survey, line)));
  // stations out of order would make nonsense of fairness
  if (built.form === undefined) return built;
  return {
    form: built.form,
    problems: [...built.problems, ...measuredSeries(survey).flatMap((s) => unfair(s, survey.sigmaM))],
  };
}

/** The series of a survey that were really measured, keel half-breadths left out. */
export function measuredSeries(survey: TapeSurvey): Series[] {
  return survey.lines.flatMap((line) => {
    const of = (coordinate: Series["coordinate"], list: readonly (number | undefined)[]): Series => {
      const known = survey.stationsM.flatMap((x, i) =>
        list[i] === undefined ? [] : [[x, list[i]] as const],
      );
      return {
        line: line.name,
        coordinate,
        placesM: known.map(([x]) => x),
        valuesM: known.map(([, value]) => value),
      };
    };
    const heights = of("height", line.heightsM);
    return line.halfBreadthsM ? [of("half-breadth", line.halfBreadthsM), heights] : [heights];
  });
}

/** Measurements off the fair line, worst first; each is set aside before the next is looked for. */
export function unfair(series: Series, sigmaM: number): HullProblem[] {
  const terms = { line: series.line, coordinate: series.coordinate };
  let [places, values] = [[...series.placesM], [...series.valuesM]];
  if (places.length < 6)
    return [
      { problem: "fairness not judged", at: series.line, figure: places.length, limit: 6, unit: "", terms },
    ];
  const found: HullProblem[] = [];
  while (places.length >= 6 && found.length < series.placesM.length / 3) {
    const left = leaveEachOut(places, values, sigmaM);
    let worst = 0;
    for (const [i, one] of left.entries())
      if (Math.abs(one.standard) > Math.abs(left[worst]?.standard ?? 0)) worst = i;
    const one = left[worst];
    if (!one || Math.abs(one.standard) < unlikely || Math.abs(one.residualM) < unlikely * sigmaM) break;
    found.push({
      problem: "unfair measurement",
      at: `${series.line} at ${places[worst]?.toFixed(3)} m`,
      figure: one.residualM,
      limit: unlikely * one.sigmaM,
      unit: "m",
      right: one.fairM,
      terms,
    });
    const drop = worst;
    places = places.filter((_, i) => i !== drop);
    values = values.filter((_, i) => i !== drop);
  }
  return found;
}

function linePoints(survey: TapeSurvey, line: SurveyLine): LinePoints {
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
