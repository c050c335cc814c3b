import { type StartingKind, startingForms } from "../../reference/starting-forms.js";
import { judged, measuredSeries, unlikely } from "./fair-survey.js";
import { correctionsOf, type FormMeasurement, halfBreadthM, heightM, type Scale } from "./starting-form.js";
import type { TapeSurvey } from "./survey.js";

/** How one figure of the tape goes with the others [m]. */
export interface Agreement extends FormMeasurement {
  readonly verdict: "agrees" | "differs" | "not checked";
  /** What the others would have it be, measured minus that, and the spread to expect of the difference; left out where nothing judges it. */
  readonly against?: { readonly fairM: number; readonly differsM: number; readonly sigmaM: number };
}

/** Every figure of a survey against the fair line through the others of its line. */
export function surveyAgreement(survey: TapeSurvey): Agreement[] {
  return measuredSeries(survey).flatMap((series) => {
    const { line, coordinate, placesM, valuesM } = series;
    return judged(series, survey.sigmaM).map(({ index, left, setAside }): Agreement => {
      const figure = { line, coordinate, atM: placesM[index] ?? 0, valueM: valuesM[index] ?? 0 };
      if (left === undefined) return { ...figure, verdict: "not checked" };
      const { fairM, residualM: differsM, sigmaM } = left;
      return { ...figure, verdict: setAside ? "differs" : "agrees", against: { fairM, differsM, sigmaM } };
    });
  });
}

/**
 * Every figure measured of a starting form against the shape bent through the others. The shape alone is known to a good part of a
 * hand only: the spread says so.
 * @param sigmaM Spread of one reading [m].
 * @throws RangeError as `startingLines`.
 */
export function startingAgreement(
  kind: StartingKind,
  scale: Scale,
  measured: readonly FormMeasurement[],
  sigmaM: number,
): Agreement[] {
  let rest = [...measured];
  const aside: Agreement[] = [];
  for (;;) {
    const others = leaveEachOut(kind, scale, rest);
    const found = rest.map((figure, index): Agreement => {
      const { valueM: fairM, sigmaM: unsureM } = others[index] ?? { valueM: Number.NaN, sigmaM: 0 };
      const against = { fairM, differsM: figure.valueM - fairM, sigmaM: Math.hypot(unsureM, sigmaM) };
      return { ...figure, verdict: standard(against) > unlikely ? "differs" : "agrees", against };
    });
    // one slip would make all others differ: the worst goes first, and the rest are judged without it
    const worst = found.toSorted((a, b) => standard(b.against) - standard(a.against))[0];
    if (worst?.verdict !== "differs" || aside.length >= measured.length / 3) return [...aside, ...found];
    aside.push(worst);
    rest = rest.filter((_, index) => found[index] !== worst);
  }
}

const standard = (against: Agreement["against"]): number =>
  against === undefined ? 0 : Math.abs(against.differsM) / against.sigmaM;

/** For each measurement: what the shape, bent through all the others, would have it be, and how sure that is [m]. */
function leaveEachOut(
  kind: StartingKind,
  scale: Scale,
  measured: readonly FormMeasurement[],
): { readonly valueM: number; readonly sigmaM: number }[] {
  const { lines } = startingForms.kinds[kind];
  return measured.map(({ line: name, coordinate, atM }, index) => {
    const others = measured.filter((_, i) => i !== index);
    const at = lines.findIndex((line) => line.name === name);
    const line = lines[at] ?? lines[0];
    const drawnM = coordinate === "height" ? heightM(line, scale, atM) : halfBreadthM(line, scale, atM);
    const { valueM, sigmaM } = correctionsOf(kind, scale, others)[coordinate](at, atM);
    return { valueM: drawnM + valueM, sigmaM };
  });
}
