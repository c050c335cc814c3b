import type { HullProblem } from "../problem.js";
import type { Point } from "../vector.js";
import { type FairLine, fairLine, lineAt, reaches } from "./line.js";

/** How the hull runs from one line up to the next: in straight section lines, or in round ones. */
export type Span = "flat" | "round";

/** A line as measured, before it is faired. Points from aft forward, port side [m]. */
export interface LinePoints {
  readonly name: string;
  readonly points: readonly Point[];
  readonly knuckle: boolean;
  /** How the hull runs from this line up to the next one; without meaning on the last. */
  readonly above: Span;
}

/** The form of the craft: its port side from the centreline up to the sheer. The starboard side mirrors it. */
export interface Form {
  /** From the keel up to the sheer. */
  readonly lines: readonly FairLine[];
  /** One fewer than the lines. */
  readonly spans: readonly Span[];
  readonly fromM: number;
  readonly toM: number;
}

/** A gap between neighbours smaller than this is a touch, not a crossing [m]. */
const touchM = 1e-3;

/**
 * Builds the form from its lines, keel first, sheer last, and says what is wrong with them.
 * A line whose stations are out of order cannot be used: then there is no form.
 * @throws RangeError if there are fewer than two lines.
 */
export function formFrom(lines: readonly LinePoints[]): { form?: Form; problems: HullProblem[] } {
  if (!(lines.length >= 2)) throw new RangeError(`a form needs at least 2 lines, got ${lines.length}`);
  const broken = lines.flatMap(orderProblems);
  if (broken.length > 0) return { problems: broken };
  const fair = lines.map((line) => fairLine(line.name, line.points, line.knuckle));
  const form: Form = {
    lines: fair,
    spans: lines.slice(0, -1).map((line) => line.above),
    fromM: Math.min(...fair.map((line) => line.fromM)),
    toM: Math.max(...fair.map((line) => line.toM)),
  };
  return { form, problems: [...crossingProblems(form), ...openProblems(form)] };
}

function orderProblems(line: LinePoints): HullProblem[] {
  if (line.points.length < 2)
    return [{ problem: "too few stations", at: line.name, figure: line.points.length, limit: 2, unit: "" }];
  return line.points.flatMap((point, i): HullProblem[] => {
    const before = line.points[i - 1];
    if (before === undefined || point[0] > before[0]) return [];
    return [
      { problem: "stations out of order", at: line.name, figure: point[0], limit: before[0], unit: "m" },
    ];
  });
}

/** Where a line passes under or through the one below it, at the worst place between the ends. */
function crossingProblems(form: Form): HullProblem[] {
  return form.lines.slice(1).flatMap((upper, i): HullProblem[] => {
    const lower = form.lines[i];
    if (lower === undefined) return [];
    const from = Math.max(upper.fromM, lower.fromM);
    const to = Math.min(upper.toM, lower.toM);
    let worst = touchM;
    let place = Number.NaN;
    for (let k = 0; k <= 40; k++) {
      const x = from + ((to - from) * k) / 40;
      const [a, b] = [lineAt(lower, x), lineAt(upper, x)];
      const under = a[2] - b[2];
      // a chine may hang below the keel as long as it lies outside it
      const inside = i > 0 || b[1] < a[1] + touchM;
      const beyond = Math.max(inside ? under : 0, -b[1]);
      if (beyond > worst) [worst, place] = [beyond, x];
    }
    if (Number.isNaN(place)) return [];
    return [
      {
        problem: "lines cross",
        at: upper.name,
        with: [lower.name],
        figure: worst,
        limit: 0,
        unit: "m",
        right: place,
      },
    ];
  });
}

/** A hull is closed when its lowest line lies on the centreline and runs as far as all others do. */
function openProblems(form: Form): HullProblem[] {
  const keel = form.lines[0];
  if (keel === undefined) return [];
  const problems: HullProblem[] = [];
  const wide = Math.max(...keel.points.map((point) => Math.abs(point[1])));
  if (wide > touchM)
    problems.push({
      problem: "open surface",
      at: keel.name,
      figure: wide,
      limit: 0,
      unit: "m",
      terms: { where: "centreline" },
    });
  for (const [end, figure, limit] of [
    ["aft", keel.fromM, form.fromM],
    ["fore", keel.toM, form.toM],
  ] as const)
    if (Math.abs(figure - limit) > touchM)
      problems.push({
        problem: "open surface",
        at: keel.name,
        figure,
        limit,
        unit: "m",
        right: limit,
        terms: { where: end },
      });
  for (const line of form.lines.slice(1)) {
    // a line that ends before the boat does must end on the centreline, or a hole gapes there
    const end = lineAt(line, line.toM);
    if (form.toM - line.toM > touchM && !(Math.abs(end[1]) < 0.02) && reaches(keel, line.toM))
      problems.push({
        problem: "open surface",
        at: line.name,
        figure: end[1],
        limit: 0,
        unit: "m",
        right: form.toM,
        terms: { where: "fore" },
      });
  }
  return problems;
}
