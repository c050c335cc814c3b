import type { FormLine } from "../../plan/model/form.js";
import { type Form, formFrom, type LinePoints } from "./form.js";
import { lineAt, reaches } from "./line.js";

/** A form as stations and lines: one figure a station, undefined where a line has none there [m]. */
export interface SurveyTable {
  readonly stationsM: readonly number[];
  readonly lines: readonly FormLine[];
}

/** Lines with points of their own as a survey: the stations of all of them together. A line whose points all lie on the centreline has no half-breadths. */
export function asSurvey(lines: readonly LinePoints[]): SurveyTable {
  const stationsM = [...new Set(lines.flatMap(({ points }) => points.map(([x]) => x)))].sort((a, b) => a - b);
  return {
    stationsM,
    lines: lines.map(({ name, points, knuckle, above }): FormLine => {
      const at = (x: number) => points.find((point) => point[0] === x);
      const centre = points.every((point) => point[1] === 0);
      return {
        name,
        ...(centre ? {} : { halfBreadthsM: stationsM.map((x) => at(x)?.[1]) }),
        heightsM: stationsM.map((x) => at(x)?.[2]),
        above,
        corner: knuckle,
      };
    }),
  };
}

/**
 * What a tape would find of a form at these stations, as a survey to be corrected.
 * @throws RangeError if fewer than two of the stations lie within it.
 */
export function surveyOfForm({ lines, spans }: Form, stationsM: readonly number[]): SurveyTable {
  const read = lines.map(
    (line, index): LinePoints => ({
      name: line.name,
      knuckle: line.knuckle,
      above: spans[index] ?? "flat",
      points: stationsM
        .filter((x) => reaches(line, x))
        .map((x) => [x, lineAt(line, x)[1], lineAt(line, x)[2]]),
    }),
  );
  if (formFrom(read).form === undefined) throw new RangeError("two stations within the form required");
  return asSurvey(read);
}
