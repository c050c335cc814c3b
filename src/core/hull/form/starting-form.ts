import { type StartingKind, startingForms } from "../../reference/starting-forms.js";
import type { Point } from "../vector.js";
import { correctionField, type Field } from "./correction.js";
import type { LinePoints } from "./form.js";
import { cubicSpline, splineAt } from "./spline.js";

/** One figure measured on the boat, to bend a starting form by [m]. */
export interface FormMeasurement {
  readonly line: string;
  readonly coordinate: "half-breadth" | "height";
  readonly atM: number;
  readonly valueM: number;
}

export interface Scale {
  readonly lengthM: number;
  readonly beamM: number;
  /** Keel to sheer, amidships [m]. */
  readonly depthM: number;
}

/**
 * A starting form scaled to length, beam and depth, then bent through the measurements: they win exactly, and between them the
 * correction runs smoothly along the boat and fades from line to line.
 * @throws RangeError if a dimension is not above zero, or a measurement names a line that the form has not, or a place off the boat.
 */
export function startingLines(
  kind: StartingKind,
  scale: Scale,
  measured: readonly FormMeasurement[] = [],
): LinePoints[] {
  for (const [what, value] of Object.entries(scale))
    if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`${what} must be > 0 m, got ${value}`);
  const shape = startingForms.kinds[kind];
  const names: readonly string[] = shape.lines.map((line) => line.name);
  for (const one of measured) {
    if (!names.includes(one.line))
      throw new RangeError(`line must be one of ${names.join(", ")}, got ${one.line}`);
    if (!(one.atM >= 0 && one.atM <= scale.lengthM))
      throw new RangeError(`station must lie within 0…${scale.lengthM} m, got ${one.atM}`);
    if (!Number.isFinite(one.valueM))
      throw new RangeError(`measurement must be a number in m, got ${one.valueM}`);
  }
  const even = shape.lines[0].heights.map((_, i, all) => (scale.lengthM * i) / (all.length - 1));
  const halfOf = (line: ShapeLine, x: number) => halfBreadthM(line, scale, x);
  const heightOf = (line: ShapeLine, x: number) => heightM(line, scale, x);
  const field = correctionsOf(kind, scale, measured);
  const wider = (line: number, x: number) => field["half-breadth"](line, x).valueM;
  const higher = (line: number, x: number) => field.height(line, x).valueM;
  return shape.lines.map((line, index) => {
    const own = measured.filter((one) => one.line === line.name).map((one) => one.atM);
    const stations = [...new Set([...even, ...own])].sort((a, b) => a - b);
    const points = stations.map((x): Point => {
      const half = halfOf(line, x);
      const said = own.includes(x);
      // a stem on the centreline stays there unless it was itself measured
      const y = half < 1e-9 && !said ? 0 : Math.max(0, half + wider(index, x));
      return [x, "halfBreadths" in line ? y : 0, heightOf(line, x) + higher(index, x)];
    });
    return { name: line.name, points: spaced(points, own), knuckle: line.knuckle, above: line.above };
  });
}

/** Is the hull of this kind open to the sky between its sheers? */
export function isOpen(kind: StartingKind): boolean {
  return startingForms.kinds[kind].open;
}

/** A measured station right beside one of the table's would make the batten kink: the table's gives way. */
function spaced(points: readonly Point[], measuredM: readonly number[]): Point[] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return [];
  const least = (last[0] - first[0]) / 60;
  return points.filter(
    (point) =>
      point === first ||
      point === last ||
      measuredM.includes(point[0]) ||
      !measuredM.some((x) => Math.abs(x - point[0]) < least),
  );
}

type ShapeLine = (typeof startingForms.kinds)[StartingKind]["lines"][number];

/** Half-breadth of a line of the scaled form at a station, before it is bent [m]. */
export function halfBreadthM(line: ShapeLine, scale: Scale, xM: number): number {
  return "halfBreadths" in line ? (scaled(scale.lengthM, line.halfBreadths, xM) * scale.beamM) / 2 : 0;
}

/** Height of a line of the scaled form at a station, before it is bent [m]. */
export function heightM(line: ShapeLine, scale: Scale, xM: number): number {
  return scaled(scale.lengthM, line.heights, xM) * scale.depthM;
}

/** The corrections that the measurements ask for, one field a coordinate. */
export function correctionsOf(
  kind: StartingKind,
  scale: Scale,
  measured: readonly FormMeasurement[],
): Record<FormMeasurement["coordinate"], Field> {
  const lines = startingForms.kinds[kind].lines;
  const bend = (coordinate: FormMeasurement["coordinate"], sizeM: number): Field => {
    const wanted = measured.filter((one) => one.coordinate === coordinate);
    const places = wanted.map((one) => ({
      line: lines.findIndex(({ name }) => name === one.line),
      xM: one.atM,
    }));
    const misses = wanted.map((one, i) => {
      const line = lines[places[i]?.line ?? 0] ?? lines[0];
      return (
        one.valueM -
        (coordinate === "height" ? heightM(line, scale, one.atM) : halfBreadthM(line, scale, one.atM))
      );
    });
    return correctionField(places, misses, sizeM * startingForms.uncertainShare, scale.lengthM);
  };
  return { "half-breadth": bend("half-breadth", scale.beamM / 2), height: bend("height", scale.depthM) };
}

/** Share at a station, from the eleven of the table. */
function scaled(lengthM: number, shares: readonly number[], xM: number): number {
  const place = (xM / lengthM) * (shares.length - 1);
  const whole = Math.round(place);
  if (Math.abs(place - whole) < 1e-9) return shares[whole] ?? 0;
  return splineAt(
    cubicSpline(
      shares.map((_, i) => i),
      shares,
    ),
    place,
  ).value;
}
