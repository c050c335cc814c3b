import { type Point, straightM } from "../vector.js";
import { cubicSpline, monotoneSpline, pieceOf, type Spline, splineAt } from "./spline.js";

/**
 * A named line of the hull (keel, chine, sheer …), port side, fair through its points: each coordinate a natural cubic
 * spline of the chord length run along the points, as a batten bent round nails.
 */
export interface FairLine {
  readonly name: string;
  /** The section turns a corner here (a chine, a vee keel); otherwise round surfaces run through it smoothly. */
  readonly knuckle: boolean;
  /** As measured, from aft forward [m]. */
  readonly points: readonly Point[];
  readonly x: Spline;
  readonly y: Spline;
  readonly z: Spline;
  readonly fromM: number;
  readonly toM: number;
}

/**
 * Fairs a line through points in order of x.
 * @param points At least two, x strictly rising [m].
 * @throws RangeError if there are fewer than two, x does not rise, or a coordinate is not finite.
 */
export function fairLine(name: string, points: readonly Point[], knuckle: boolean): FairLine {
  const first = points[0];
  const last = points.at(-1);
  if (!(points.length >= 2 && first && last))
    throw new RangeError(`line ${name} needs at least 2 points, got ${points.length}`);
  const run: number[] = [];
  let before: Point | undefined;
  for (const point of points) {
    if (before && !(point[0] > before[0]))
      throw new RangeError(`line ${name}: x must rise, got ${before[0]} m then ${point[0]} m`);
    run.push(before ? (run.at(-1) ?? 0) + straightM(before, point) : 0);
    before = point;
  }
  const axis = (i: 0 | 1 | 2) => points.map((point) => point[i]);
  const free = cubicSpline(run, axis(0));
  return {
    name,
    knuckle,
    points,
    // where the points are so uneven that the batten would loop back, x is kept rising at the price of a break in bending
    x: rises(free) ? free : monotoneSpline(run, axis(0)),
    y: cubicSpline(run, axis(1)),
    z: cubicSpline(run, axis(2)),
    fromM: first[0],
    toM: last[0],
  };
}

/** Does the line reach this station? Half a millimetre of grace for rounding. */
export function reaches(line: FairLine, xM: number): boolean {
  return xM >= line.fromM - 5e-4 && xM <= line.toM + 5e-4;
}

/** Point of the line at station x [m]; beyond its ends, the end itself. */
export function lineAt(line: FairLine, xM: number): Point {
  const s = runAt(line, xM);
  return [Math.min(Math.max(xM, line.fromM), line.toM), splineAt(line.y, s).value, splineAt(line.z, s).value];
}

/** Direction of the line at station x, as change per metre of x: dy/dx and dz/dx. */
export function lineSlopeAt(line: FairLine, xM: number): { dyDx: number; dzDx: number } {
  const s = runAt(line, xM);
  const along = splineAt(line.x, s).slope;
  return { dyDx: splineAt(line.y, s).slope / along, dzDx: splineAt(line.z, s).slope / along };
}

/** Length along the line between two stations [m], by Gauss's three points on short pieces. */
export function lengthAlongM(line: FairLine, fromXM: number, toXM: number): number {
  const [a, b] = [runAt(line, fromXM), runAt(line, toXM)];
  const pieces = 8 * Math.max(1, line.points.length - 1);
  const h = (b - a) / pieces;
  const speed = (s: number) =>
    Math.hypot(splineAt(line.x, s).slope, splineAt(line.y, s).slope, splineAt(line.z, s).slope);
  const off = Math.sqrt(0.6) / 2;
  let sum = 0;
  for (let i = 0; i < pieces; i++) {
    const middle = a + (i + 0.5) * h;
    sum += (5 * speed(middle - off * h) + 8 * speed(middle) + 5 * speed(middle + off * h)) / 18;
  }
  return sum * h;
}

/** Run along the chords at which the line has this x: Newton held inside its piece by halving. */
function runAt(line: FairLine, xM: number): number {
  const { knots, values } = line.x;
  if (xM <= line.fromM) return knots[0] ?? 0;
  if (xM >= line.toM) return knots.at(-1) ?? 0;
  const piece = pieceOf(values, xM);
  let low = knots[piece] ?? 0;
  let high = knots[piece + 1] ?? 0;
  let s =
    low + ((xM - (values[piece] ?? 0)) / ((values[piece + 1] ?? 1) - (values[piece] ?? 0))) * (high - low);
  for (let turn = 0; turn < 60; turn++) {
    const { value, slope } = splineAt(line.x, s);
    const miss = value - xM;
    if (Math.abs(miss) < 1e-13) break;
    if (miss > 0) high = s;
    else low = s;
    const newton = s - miss / slope;
    s = newton > low && newton < high ? newton : (low + high) / 2;
  }
  return s;
}

function rises(x: Spline): boolean {
  const end = x.knots.at(-1) ?? 0;
  for (let i = 0; i <= 4 * x.knots.length; i++)
    if (!(splineAt(x, (end * i) / (4 * x.knots.length)).slope > 0)) return false;
  return true;
}
