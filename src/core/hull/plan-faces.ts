import type { CompletePlan } from "../plan/completed.js";
import type { FacePlan, ZonePlan } from "../plan/model/hull.js";
import type { Place, Side } from "../plan/model/placing.js";
import type { Material } from "../reference/drilling.js";
import { settingOut } from "../reference/setting-out.js";
import { edgeLengthM, edgeOf, squareOff } from "./faces/edge.js";
import { type Face, flatFace, isOn, placeOn, twinOf } from "./faces/face.js";
import { insetFace } from "./faces/inset.js";
import { spotNear } from "./faces/near.js";
import type { Spot } from "./faces/patch.js";
import { stripFace } from "./faces/strip.js";
import type { ReferenceFigures } from "./figures.js";
import type { Form } from "./form/form.js";
import { reaches } from "./form/line.js";
import type { ReferencePoint } from "./marks/tape.js";
import type { Zone } from "./placing/clearances.js";
import { spotOf } from "./placing/place.js";
import type { Stretch } from "./placing/row.js";
import type { HullProblem } from "./problem.js";
import type { Opening } from "./pulling/reach.js";
import { type Point, straightM } from "./vector.js";

/** Right and up as one looks at a flat face. */
const looking: Readonly<Record<string, readonly [along: Point, up: Point]>> = {
  aft: [
    [0, -1, 0],
    [0, 0, 1],
  ],
  forward: [
    [0, 1, 0],
    [0, 0, 1],
  ],
  port: [
    [-1, 0, 0],
    [0, 0, 1],
  ],
  starboard: [
    [1, 0, 0],
    [0, 0, 1],
  ],
  up: [
    [1, 0, 0],
    [0, 1, 0],
  ],
  down: [
    [1, 0, 0],
    [0, -1, 0],
  ],
};

/** The first side of a face on the boat, or why it cannot be laid there; nothing where there is no form to lay it on. */
export function layFace(plan: FacePlan, form: Form | undefined): Face | HullProblem | undefined {
  const { shape, name } = plan;
  if (shape.kind === "flat") {
    const [along, up] = looking[shape.looks] ?? [
      [1, 0, 0],
      [0, 0, 1],
    ];
    const area = shape.outlineM.reduce((sum, [x, y], i, all) => {
      const [nextX, nextY] = all[(i + 1) % all.length] ?? [x, y];
      return sum + (x * nextY - nextX * y) / 2;
    }, 0);
    if (!(Math.abs(area) > 1e-6))
      return {
        problem: "off the line",
        at: name,
        figure: 0,
        limit: 0,
        unit: "m",
        terms: { what: "outline" },
      };
    return flatFace(shape.atM, along, up, shape.outlineM);
  }
  if (form === undefined) return undefined;
  const names = form.lines.map((line) => line.name);
  const [low, high] = [names.indexOf(shape.lower), names.indexOf(shape.upper)];
  const within = form.lines.slice(low, high + 1);
  if (low < 0 || high <= low)
    return { problem: "off the line", at: name, with: [shape.lower, shape.upper], terms: { what: "strip" } };
  for (const line of within)
    for (const x of [shape.fromM, shape.toM])
      if (!reaches(line, x))
        return {
          problem: "off the line",
          at: name,
          with: [line.name],
          figure: x,
          limit: x < line.fromM ? line.fromM : line.toM,
          unit: "m",
          terms: { what: "strip" },
        };
  const corner = within.slice(1, -1).find((line, i) => line.knuckle || form.spans[low + i] === "flat");
  if (corner) return { problem: "corner inside the strip", at: name, with: [corner.name] };
  const skin = stripFace(form, shape);
  return shape.insetM > 0 ? insetFace(skin, shape.insetM) : skin;
}

/** The same face on a side: of a pair the one to starboard is the mirror image. */
export function faceOn(face: Face, side: Side): Face {
  return side === "port" ? face : twinOf(face);
}

/** What a face is made of: a strip, where nothing is said, of what the hull is. */
export function materialOf(plan: FacePlan, { source }: CompletePlan): Material | undefined {
  if (plan.material !== undefined) return plan.material;
  const hull = source.craft.hullMaterial;
  return plan.shape.kind === "strip" && hull !== "fabric" ? hull : undefined;
}

/**
 * Reference points of one side of a face: those that lie on it, and those whose straight tape reaches it. A face without a pair may have
 * both of a pair of points.
 */
export function pointsOn(
  face: Face,
  plan: FacePlan,
  side: Side,
  references: readonly ReferenceFigures[],
  straight: ReadonlySet<string>,
): ReferencePoint[] {
  return references.flatMap((reference): ReferencePoint[] => {
    const { port, starboard } = reference.sides;
    const own = reference.sides[side];
    const candidates: (readonly [string, Point | undefined])[] = plan.pair
      ? [[reference.name, own]]
      : port !== undefined && starboard !== undefined && straightM(port, starboard) > 1e-6
        ? [
            [`${reference.name} port`, port],
            [`${reference.name} starboard`, starboard],
          ]
        : [[reference.name, port ?? starboard]];
    return candidates.flatMap(([name, at]): ReferencePoint[] => {
      if (at === undefined) return [];
      const near = spotNear(face, at);
      const about = { name, at, sigmaM: reference.sigmaM };
      if (near.straightM <= settingOut.tolerance.onFaceM && isOn(face, near.spot))
        return [{ ...about, spot: near.spot }];
      return straight.has(`${reference.name}\n${plan.name}`) ? [about] : [];
    });
  });
}

/** The edge a place is off, and the spot it counts along from. */
export function edgeFor(face: Face, place: Pick<Place, "edge">): string {
  if (face.kind === "flat") return "edge 1";
  return place.edge?.off === "above" ? "lower" : "upper";
}

/** Spot of a place in the owner's way; `from` gives the spot of a reference point. */
export function spotOfPlace(
  face: Face,
  place: Place,
  from: (name: string) => Spot | undefined,
): Spot | undefined {
  const start = place.from === undefined ? undefined : from(place.from);
  if (place.from !== undefined && start === undefined) return undefined;
  if (face.kind === "flat") return [(start?.[0] ?? 0) + place.alongM, place.offM];
  return spotOf(face, {
    edge: edgeFor(face, place),
    alongM: place.alongM,
    offM: place.offM,
    ...(start === undefined ? {} : { from: start }),
  });
}

/** Zones in the face's own spots. Off a strip's upper edge counts down the face at the zone's middle station. */
export function zonesOf(face: Face, zones: readonly ZonePlan[]): Zone[] {
  return zones.map((zone) => {
    const { name, fromM, toM } = zone;
    const [low, high] = heights(face, zone);
    return {
      name,
      outline: [
        [fromM, low],
        [toM, low],
        [toM, high],
        [fromM, high],
      ],
    };
  });
}

function heights(face: Face, { fromM, toM, offM }: ZonePlan): [number, number] {
  if (face.kind === "flat") {
    const ups = face.outline.map(([, up]) => up);
    return offM === undefined ? [Math.min(...ups), Math.max(...ups)] : [offM[0], offM[1]];
  }
  const { vKnots, uKnots } = face.patch;
  const [v0, v1] = [vKnots[0] ?? 0, vKnots.at(-1) ?? 1];
  if (offM === undefined) return [v0, v1];
  const u = Math.min(Math.max((fromM + toM) / 2, uKnots[0] ?? 0), uKnots.at(-1) ?? 0);
  const girth = edgeLengthM(face, { name: "up", from: [u, v0], to: [u, v1] }, 0, 1);
  const at = (off: number) => v1 - ((v1 - v0) * off) / girth;
  return [Math.max(v0, at(offM[1])), Math.min(v1, at(offM[0]))];
}

/** What of an edge the zones take from a row that runs so far off it [m along the edge from its aft or left end]. */
export function stretchesOf(
  face: Face,
  edgeName: string,
  row: { readonly offM: number; readonly halfWidthM: number; readonly above: boolean },
  zones: readonly ZonePlan[],
): Stretch[] {
  return zones.flatMap(({ name, fromM, toM, offM }): Stretch[] => {
    const beside =
      offM !== undefined &&
      !row.above &&
      (row.offM + row.halfWidthM < offM[0] || row.offM - row.halfWidthM > offM[1]);
    if (beside) return [];
    if (face.kind === "flat") return [{ name, fromM, toM }];
    const edge = edgeOf(face, edgeName);
    const { uKnots } = face.patch;
    const [u0, u1] = [uKnots[0] ?? 0, uKnots.at(-1) ?? 1];
    if (toM <= u0 || fromM >= u1) return [];
    const [low, high] = [Math.max(fromM, u0), Math.min(toM, u1)];
    // where the row itself, square off the edge, meets the zone's station
    const along = (u: number) => {
      let share = (u - u0) / (u1 - u0);
      for (let turn = 0; turn < 4; turn++)
        share += (u - squareOff(face, edge, share, row.offM)[0]) / (u1 - u0);
      return edgeLengthM(face, edge, 0, share);
    };
    return [{ name, fromM: along(low), toM: along(high) }];
  });
}

/** Openings of one side; a face that names no space has one of its own. */
export function openingsOf(
  face: Face,
  plan: FacePlan,
  side: Side,
  from: (name: string) => Spot | undefined,
): Opening[] {
  return plan.openings.flatMap(({ name, at, clearM, reachM, space }): Opening[] => {
    const spot = spotOfPlace(face, at, from);
    if (spot === undefined) return [];
    return [
      {
        name: plan.pair ? `${name} ${side}` : name,
        at: placeOn(face, spot),
        clearM,
        space: spaceName(plan, side, space),
        ...(reachM === undefined ? {} : { reachM }),
      },
    ];
  });
}

/** Space behind a face, apart for each side. */
export function spaceName(plan: FacePlan, side: Side, space?: string): string {
  return space ?? (plan.pair ? `behind ${plan.name} ${side}` : `behind ${plan.name}`);
}
