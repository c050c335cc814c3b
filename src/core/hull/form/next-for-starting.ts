import { type StartingKind, startingForms } from "../../reference/starting-forms.js";
import type { NextMeasurement } from "./next-measurement.js";
import { correctionsOf, type FormMeasurement, halfBreadthM, type Scale } from "./starting-form.js";

/**
 * What to measure next on a boat described by a starting form: the figures the form is least sure of, most useful first.
 * @throws RangeError as `startingLines`.
 */
export function nextForStarting(
  kind: StartingKind,
  scale: Scale,
  measured: readonly FormMeasurement[],
  count = 3,
): NextMeasurement[] {
  const shape = startingForms.kinds[kind];
  const field = correctionsOf(kind, scale, measured);
  const candidates = shape.lines.flatMap((line, index) =>
    line.heights.flatMap((_, i): NextMeasurement[] => {
      const atM = (scale.lengthM * i) / (line.heights.length - 1);
      const about = { line: line.name, atM, reason: "gap" } as const;
      const height = {
        ...about,
        coordinate: "height",
        uncertaintyM: field.height(index, atM).sigmaM,
      } as const;
      if (halfBreadthM(line, scale, atM) < 1e-9) return [height];
      return [
        { ...about, coordinate: "half-breadth", uncertaintyM: field["half-breadth"](index, atM).sigmaM },
        height,
      ];
    }),
  );
  return candidates.sort((a, b) => b.uncertaintyM - a.uncertaintyM).slice(0, count);
}
