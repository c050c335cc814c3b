import type { HullProblem } from "../problem.js";
import { type LeftOut, leaveEachOut } from "./fairness.js";
import type { TapeSurvey } from "./survey.js";

/** One measured series: a coordinate of a line at the stations where it was measured. */
export interface Series {
  readonly line: string;
  readonly coordinate: "half-breadth" | "height";
  readonly placesM: readonly number[];
  readonly valuesM: readonly number[];
}

/** A misfit is told when it is both unlikely and larger than the tape could cause. */
export const unlikely = 3.5;

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

/** Fewer figures than this do not show how a line bends. */
const fewestJudged = 6;

/** A figure of a series, by its number, and what a fair line through the others says of it; without where nothing judges it. */
interface Judged {
  readonly index: number;
  readonly left?: LeftOut;
  /** It does not lie on a fair line with the others, and they are judged without it. */
  readonly setAside: boolean;
}

/** Every figure of a series against the others: first those off the fair line, worst first, each set aside before the next is looked for. */
export function judged(series: Series, sigmaM: number): Judged[] {
  let rest = series.placesM.map((_, index) => index);
  const aside: Judged[] = [];
  while (rest.length >= fewestJudged && aside.length < series.placesM.length / 3) {
    const of = (list: readonly number[]) => rest.map((index) => list[index] ?? Number.NaN);
    const left = leaveEachOut(of(series.placesM), of(series.valuesM), sigmaM);
    let worst = 0;
    for (const [i, one] of left.entries())
      if (Math.abs(one.standard) > Math.abs(left[worst]?.standard ?? 0)) worst = i;
    const one = left[worst];
    if (!one || Math.abs(one.standard) < unlikely || Math.abs(one.residualM) < unlikely * sigmaM)
      return [
        ...aside,
        ...rest.map((index, i) => ({ index, setAside: false, ...(left[i] && { left: left[i] }) })),
      ];
    aside.push({ index: rest[worst] ?? 0, left: one, setAside: true });
    rest = rest.filter((_, i) => i !== worst);
  }
  return [...aside, ...rest.map((index) => ({ index, setAside: false }))];
}

/** Measurements off the fair line, worst first. */
function unfair(series: Series, sigmaM: number): HullProblem[] {
  const terms = { line: series.line, coordinate: series.coordinate };
  const count = series.placesM.length;
  if (count < fewestJudged)
    return [
      {
        problem: "fairness not judged",
        at: series.line,
        figure: count,
        limit: fewestJudged,
        unit: "",
        terms,
      },
    ];
  return judged(series, sigmaM).flatMap(({ index, left, setAside }): HullProblem[] =>
    left === undefined || !setAside
      ? []
      : [
          {
            problem: "unfair measurement",
            at: `${series.line} at ${series.placesM[index]?.toFixed(3)} m`,
            figure: left.residualM,
            limit: unlikely * left.sigmaM,
            unit: "m",
            right: left.fairM,
            terms,
          },
        ],
  );
}
