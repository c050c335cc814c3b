import { measuredSeries, type Series } from "./fair-survey.js";
import { bendingRate, predict, type Wander } from "./fairness.js";
import type { TapeSurvey } from "./survey.js";

/** What to measure next, and why. */
export interface NextMeasurement {
  readonly line: string;
  readonly coordinate: Series["coordinate"] | "breadth";
  readonly atM: number;
  /** How unsure the form is there now (one standard deviation) [m]. */
  readonly uncertaintyM: number;
  /** `missing`: the station has no figure. `gap`: the middle of the widest unsure stretch. `end`: beyond the last figure. `check`: all is sure enough; guard against a slip. */
  readonly reason: "missing" | "gap" | "end" | "check";
}

/** Before four figures show how a line's bending drifts, it is taken to drift by half a metre⁻¹ over a metre. */
const beforeKnown: Wander = { ratePerM3: 0.25 };

/**
 * The measurements worth taking next, most useful first: where the form is least sure of any line.
 * When nowhere is less sure than twice the tape itself, one overall breadth that checks what is there.
 * @throws RangeError if the survey has no line that was measured twice.
 */
export function nextMeasurements(survey: TapeSurvey, count = 3): NextMeasurement[] {
  const series = measuredSeries(survey);
  const usable = series.filter((one) => one.placesM.length >= 2);
  if (usable.length === 0) throw new RangeError("a survey needs at least one line measured at two stations");
  const ends: [number, number] = [Math.min(...survey.stationsM), Math.max(...survey.stationsM)];
  const candidates = usable.flatMap((one) => candidatesOf(one, survey, ends));
  const least = 2 * survey.sigmaM;
  const worth = candidates
    .filter((one) => one.uncertaintyM > least)
    .sort((a, b) => b.uncertaintyM - a.uncertaintyM);
  if (worth.length > 0) return worth.slice(0, count);
  const sheer = survey.lines.at(-1)?.name ?? "sheer";
  const atM = (ends[0] + ends[1]) / 2;
  return [{ line: sheer, coordinate: "breadth", atM, uncertaintyM: survey.sigmaM, reason: "check" }];
}

function candidatesOf(
  series: Series,
  survey: TapeSurvey,
  ends: readonly [number, number],
): NextMeasurement[] {
  const places = series.placesM;
  const wander = places.length >= 4 ? bendingRate(places, series.valuesM, survey.sigmaM) : beforeKnown;
  const candidate = (atM: number, reason: NextMeasurement["reason"]): NextMeasurement => ({
    line: series.line,
    coordinate: series.coordinate,
    atM,
    uncertaintyM: predict(wander, places, series.valuesM, survey.sigmaM, atM).sigmaM,
    reason,
  });
  const [first, last] = [places[0] ?? ends[0], places.at(-1) ?? ends[1]];
  const missing = survey.stationsM
    .filter((x) => !places.includes(x) && x > first && x < last)
    .map((x) => candidate(x, "missing"));
  const gaps = places.slice(1).flatMap((to, i) => {
    const from = places[i] ?? to;
    const holds = survey.stationsM.some((x) => x > from && x < to && !places.includes(x));
    return holds ? [] : [candidate((from + to) / 2, "gap")];
  });
  const beyond = [
    ...(first > ends[0] + 1e-3 ? [candidate(ends[0], "end")] : []),
    ...(last < ends[1] - 1e-3 ? [candidate(ends[1], "end")] : []),
  ];
  return [...missing, ...gaps, ...beyond];
}
