import type { NextMeasurement } from "../../../../core/hull/form/next-measurement.js";
import type { Edit } from "../../../../core/plan/edits/edit.js";
import type { FormFigure } from "../../../../core/plan/model/form.js";
import { type Lengths, lengthText, roundedM } from "./length-text.js";

export type Coordinate = "half-breadth" | "height";

/** Where a figure of a starting form is measured: on a line of it, at a station [m]. */
export interface MeasuredAt {
  readonly line: string;
  readonly atM: number;
}

/** What to measure next on a starting form, at stations one can find on a tape; each place once. */
export function placesToMeasure(next: readonly NextMeasurement[], shows: Lengths): NextMeasurement[] {
  const found = new Map<string, NextMeasurement>();
  for (const one of next) {
    const atM = roundedM(one.atM, shows);
    const key = `${one.line} ${one.coordinate} ${atM}`;
    if (!found.has(key)) found.set(key, { ...one, atM });
  }
  return [...found.values()];
}

/** The edit that writes one figure of a starting form: into what was measured at that place before, or as one more. */
export function figureEdit(
  measured: readonly FormFigure[],
  { line, atM }: MeasuredAt,
  coordinate: Coordinate,
  to: string,
  shows: Lengths,
): Edit {
  const at = measured.findIndex((one) => one.line === line && Math.abs(one.atM - atM) < 5e-4);
  if (at >= 0)
    return { edit: "set field", at: "craft", field: `form / measured / ${at + 1} / ${coordinate}`, to };
  const figure = `{line: ${line}, at: ${lengthText(atM, shows)}, ${coordinate}: ${to}}`;
  return measured.length === 0
    ? { edit: "set field", at: "craft", field: "form / measured", to: `[${figure}]` }
    : { edit: "set field", at: "craft", field: `form / measured / ${measured.length + 1}`, to: figure };
}
