import type { HullProblem } from "../problem.js";
import { leaveEachOut } from "./fairness.js";
import type { TapeSurvey } from "./survey.js";

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
 * Every measurement of a survey that does not lie on a fair line with its neighbours.
 * @throws RangeError if the spread is not above zero.
 */
export function unfairIn(survey: TapeSurvey): HullProblem[] {
  if (!(survey.sigmaM > 0)) throw new RangeError(`spread of a reading must be > 0 m, got ${survey.sigmaM}`);
  return measuredSeries(survey).flatMap((series) => unfair(series, survey.sigmaM));
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
function unfair(series: Series, sigmaM: number): HullProblem[] {
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
