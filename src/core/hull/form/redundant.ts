import type { HullProblem } from "../problem.js";
import type { Form } from "./form.js";
import { lengthAlongM, lineAt, reaches } from "./line.js";
import { sectionAt } from "./section.js";

/** A measurement that the form already implies: taken to catch a slip of the tape. */
export type RedundantMeasurement =
  /** Over the whole boat from one side of a line to the other. */
  | { readonly kind: "breadth"; readonly line: string; readonly atM: number; readonly readM: number }
  /** Along the skin at a station, from one line up to another. */
  | {
      readonly kind: "girth";
      readonly line: string;
      readonly to: string;
      readonly atM: number;
      readonly readM: number;
    }
  /** Along a line from one station to another. */
  | {
      readonly kind: "along";
      readonly line: string;
      readonly atM: number;
      readonly toM: number;
      readonly readM: number;
    };

/** How far a reading may be from what the form implies, both of readings of that spread [m]. */
export const contradictionLimitM = (sigmaM: number): number => 3 * Math.SQRT2 * sigmaM;

/**
 * Which redundant measurements disagree with the form, and by how much.
 * @param sigmaM Spread of one reading [m]; a difference above 3·√2 of it is told.
 * @throws RangeError if the spread is not above zero or a line is not in the form.
 */
export function contradictions(
  form: Form,
  measured: readonly RedundantMeasurement[],
  sigmaM: number,
): HullProblem[] {
  if (!(sigmaM > 0)) throw new RangeError(`spread of a reading must be > 0 m, got ${sigmaM}`);
  const limit = contradictionLimitM(sigmaM);
  return measured.flatMap((one): HullProblem[] => {
    const right = impliedM(form, one);
    const figure = one.readM - right;
    if (Math.abs(figure) <= limit) return [];
    const at = `${one.line} at ${one.atM.toFixed(3)} m`;
    return [
      {
        problem: "contradictory measurement",
        at,
        figure,
        limit,
        unit: "m",
        right,
        terms: { kind: one.kind },
      },
    ];
  });
}

/** What the form says a redundant measurement should read [m]. */
export function impliedM(form: Form, one: RedundantMeasurement): number {
  const line = form.lines.find(({ name }) => name === one.line);
  if (line === undefined)
    throw new RangeError(`line must be one of ${form.lines.map((l) => l.name).join(", ")}, got ${one.line}`);
  switch (one.kind) {
    case "breadth":
      return 2 * lineAt(line, one.atM)[1];
    case "along":
      return lengthAlongM(line, one.atM, one.toM);
    case "girth":
      return girthM(form, one.line, one.to, one.atM);
  }
}

function girthM(form: Form, line: string, toLine: string, atM: number): number {
  const pieces = 24;
  const present = form.lines.map((each, i) => ({ each, i })).filter(({ each }) => reaches(each, atM));
  const section = sectionAt(form, atM, pieces);
  // walk the section span by span: a flat span is one piece, a round one has `pieces`
  let index = 0;
  const places = new Map<string, number>();
  for (const [k, { each, i }] of present.entries()) {
    places.set(each.name, index);
    if (k < present.length - 1) index += form.spans[i] === "round" ? pieces : 1;
  }
  const [one, other] = [places.get(line), places.get(toLine)];
  if (one === undefined || other === undefined || one === other)
    throw new RangeError(
      `girth must run from one line to another, both reaching ${atM} m, got ${line} to ${toLine}`,
    );
  const [from, to] = [Math.min(one, other), Math.max(one, other)];
  let sum = 0;
  for (let k = from; k < to; k++) {
    const [a, b] = [section[k], section[k + 1]];
    if (a && b) sum += Math.hypot(b[0] - a[0], b[1] - a[1]);
  }
  return sum;
}
