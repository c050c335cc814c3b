import type { CompletePlan } from "../plan/completed.js";
import type { Reference } from "../plan/model/hull.js";
import { settingOut } from "../reference/setting-out.js";
import { type Face, frameAt, isOn } from "./faces/face.js";
import type { ReferenceFigures } from "./figures.js";
import type { Form } from "./form/form.js";
import { type FairLine, lengthAlongM, lineAt, lineSlopeAt } from "./form/line.js";
import { inverseSymmetric } from "./linear.js";
import { spotOfPlace } from "./plan-faces.js";
import type { HullProblem } from "./problem.js";
import { dot, lengthOf, minus, mirrored, type Point, plus, straightM, times, unit } from "./vector.js";

/** Nearer the centreline than this a point is on it [m]. */
const centreM = 5e-3;

/** Where the reference points are, with what the two of a pair were measured to differ by. */
export function planReferences(
  { source, marks }: CompletePlan,
  form: Form | undefined,
  faces: ReadonlyMap<string, Face>,
): { references: ReferenceFigures[]; problems: HullProblem[] } {
  const problems: HullProblem[] = [];
  const written = source.hull.references;
  const port = new Map<string, Located>();
  for (const reference of written) {
    const found = placeOf(reference, form, faces);
    if (found === undefined) continue;
    if ("problem" in found) problems.push(found);
    else port.set(reference.name, found);
  }
  const references = written.flatMap((reference): ReferenceFigures[] => {
    const here = port.get(reference.name);
    if (here === undefined) return [];
    const { name, pair, spreadM } = reference;
    const sigmaM = spreadM ?? settingOut.tape.referenceSigmaM;
    const { point } = here;
    if (!pair) {
      const centre = Math.abs(point[1]) < centreM;
      const sides = centre
        ? { port: point, starboard: point }
        : point[1] > 0
          ? { port: point }
          : { starboard: point };
      return [{ name, sides, sigmaM }];
    }
    const image = mirrored(point);
    const shift = shiftOf(reference, image, here.free.map(mirrored), point, port, marks.spreadM);
    return [
      {
        name,
        sides: { port: point, starboard: plus(image, shift) },
        sigmaM,
        ...(reference.measured.length > 0 ? { asymmetryM: lengthOf(shift) } : {}),
      },
    ];
  });
  return { references, problems };
}

/** A point, and the directions in which it may be off: along its line, or anywhere on its face. */
interface Located {
  readonly point: Point;
  readonly free: readonly Point[];
}

function placeOf(
  { name, place }: Reference,
  form: Form | undefined,
  faces: ReadonlyMap<string, Face>,
): Located | HullProblem | undefined {
  if (place.kind === "at")
    return {
      point: place.atM,
      free: [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ],
    };
  if (place.kind === "face") {
    const face = faces.get(place.face);
    const spot = face && spotOfPlace(face, place.place, () => undefined);
    if (face === undefined || spot === undefined) return undefined;
    if (!isOn(face, spot)) return { problem: "off the face", at: name, terms: { what: "reference point" } };
    const { point, along, up } = frameAt(face, spot);
    return { point, free: [along, up] };
  }
  const line = form?.lines.find((one) => one.name === place.line);
  if (line === undefined) return undefined;
  const length = lengthAlongM(line, line.fromM, line.toM);
  const x = place.kind === "station" ? place.stationM : stationAlong(line, place.alongM, length);
  const beyond =
    place.kind === "station"
      ? x < line.fromM - centreM || x > line.toM + centreM
      : place.alongM > length + centreM;
  if (beyond)
    return {
      problem: "off the line",
      at: name,
      with: [line.name],
      figure: place.kind === "station" ? x : place.alongM,
      limit: place.kind === "station" ? (x < line.fromM ? line.fromM : line.toM) : length,
      unit: "m",
      terms: { what: "reference point" },
    };
  const { dyDx, dzDx } = lineSlopeAt(line, x);
  return { point: lineAt(line, x), free: [unit([1, dyDx, dzDx])] };
}

/** Station so far along a line from its aft end, by halving. */
function stationAlong(line: FairLine, alongM: number, wholeM: number): number {
  if (alongM >= wholeM) return line.toM;
  let [low, high] = [line.fromM, line.toM];
  for (let turn = 0; turn < 50 && high - low > 1e-7; turn++) {
    const middle = (low + high) / 2;
    if (lengthAlongM(line, line.fromM, middle) < alongM) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * How far the one to starboard stands off the mirror image: what best accounts for the differing tapes, and for nothing else. It can only lie farther along its line, or elsewhere on its face. Least squares, held to symmetry by the spread of a slip.
 */
function shiftOf(
  reference: Reference,
  image: Point,
  axes: readonly Point[],
  point: Point,
  known: ReadonlyMap<string, { point: Point }>,
  sigmaM: number,
): Point {
  const rows = reference.measured.flatMap(({ from, portM, starboardM }) => {
    const common = known.get(from)?.point;
    if (common === undefined || straightM(common, image) < centreM) return [];
    const pull = unit(minus(image, common));
    // were the common point off the centreline, the two tapes would differ by themselves
    const own = straightM(common, image) - straightM(common, point);
    return [{ by: axes.map((axis) => dot(axis, pull)), missM: starboardM - portM - own }];
  });
  if (rows.length === 0) return [0, 0, 0];
  const weight = 1 / (2 * sigmaM ** 2);
  const held = 1 / settingOut.hand.slipSigmaM ** 2;
  const normal = axes.map((_, i) =>
    axes.map(
      (_other, k) =>
        (i === k ? held : 0) + rows.reduce((sum, { by }) => sum + weight * (by[i] ?? 0) * (by[k] ?? 0), 0),
    ),
  );
  const right = axes.map((_, i) =>
    rows.reduce((sum, { by, missM }) => sum + weight * (by[i] ?? 0) * missM, 0),
  );
  const inverse = inverseSymmetric(normal) ?? [];
  return axes.reduce<Point>(
    (sum, axis, i) =>
      plus(
        sum,
        times(
          axis,
          (inverse[i] ?? []).reduce((s, value, k) => s + value * (right[k] ?? 0), 0),
        ),
      ),
    [0, 0, 0],
  );
}
