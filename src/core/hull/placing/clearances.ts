import type { Material } from "../../reference/drilling.js";
import { edgesOf, nearestShare, spotOnEdge } from "../faces/edge.js";
import { type Face, isOn, placeOn, wayOn } from "../faces/face.js";
import type { Spot } from "../faces/patch.js";
import { leastDistances } from "../holes/distances.js";
import type { HullProblem } from "../problem.js";
import { dot, minus, type Point, straightM } from "../vector.js";

/** One fitting on a face. */
export interface Fitting {
  readonly name: string;
  readonly spot: Spot;
  readonly holeM: number;
  /** Diameter of what lies on the outside [m]. */
  readonly flangeM?: number;
  /** Depth it takes behind the face, thread and nut and bend of the cable included [m]. */
  readonly behindM?: number;
  /** Room there is behind it [m]. */
  readonly roomM?: number;
}

/** A part of the face not to drill: its outline in spots of the face. */
export interface Zone {
  readonly name: string;
  readonly outline: readonly Spot[];
}

/** Distances of one fitting, from its centre over the face [m]. */
export interface Clearance {
  readonly name: string;
  readonly edge?: { readonly name: string; readonly distanceM: number };
  readonly nearestHole?: { readonly name: string; readonly distanceM: number };
  /** To the outline; 0 inside it. */
  readonly nearestZone?: { readonly name: string; readonly distanceM: number };
  readonly problems: readonly HullProblem[];
}

/**
 * How near everything is to everything on one face, and what is too near: holes by the material's rule, flanges by their size.
 */
export function clearances(
  face: Face,
  material: Material,
  fittings: readonly Fitting[],
  zones: readonly Zone[],
): Clearance[] {
  const places = new Map(fittings.map((one) => [one.name, placeOn(face, one.spot)]));
  const outlines = zones.map((zone) => ({ zone, points: outlineOf(face, zone) }));
  return fittings.map((one) => clearanceOf(face, material, one, fittings, places, outlines));
}

type Outline = { readonly zone: Zone; readonly points: readonly Point[] };

function clearanceOf(
  face: Face,
  material: Material,
  one: Fitting,
  all: readonly Fitting[],
  places: ReadonlyMap<string, Point>,
  outlines: readonly Outline[],
): Clearance {
  const { name, spot } = one;
  if (!isOn(face, spot)) return { name, problems: [{ problem: "off the face", at: name }] };
  const here = placeOn(face, spot);
  const rule = leastDistances(material, one.holeM);
  const problems: HullProblem[] = [];
  if (rule === undefined) problems.push({ problem: "edge rule not known", at: name, terms: { material } });
  const tooNear = (problem: HullProblem["problem"], other: string, figure: number, limit: number) => {
    if (!(figure >= limit - 1e-9))
      problems.push({ problem, at: name, with: [other], figure, limit, unit: "m" });
  };
  const edge = nearestEdge(face, spot, here);
  if (rule) tooNear("too near the edge", edge.name, edge.distanceM, rule.edgeM);
  const flange = (one.flangeM ?? one.holeM) / 2;
  if (one.flangeM !== undefined) tooNear("flange over the edge", edge.name, edge.distanceM, flange);
  let nearestHole: Clearance["nearestHole"];
  for (const other of all) {
    const place = places.get(other.name);
    if (other === one || place === undefined) continue;
    const chordM = straightM(here, place);
    const limit = rule?.spacingM(other.holeM) ?? 0;
    const flanges = flange + (other.flangeM ?? other.holeM) / 2;
    // the chord is never longer than the tape: far apart by chord is far apart
    if (nearestHole !== undefined && chordM > nearestHole.distanceM && chordM > limit && chordM > flanges)
      continue;
    const distanceM = wayOn(face, spot, other.spot).lengthM;
    if (nearestHole === undefined || distanceM < nearestHole.distanceM)
      nearestHole = { name: other.name, distanceM };
    tooNear("holes too close", other.name, distanceM, limit);
    tooNear("flanges overlap", other.name, distanceM, flanges);
  }
  let nearestZone: Clearance["nearestZone"];
  for (const { zone, points } of outlines) {
    const distanceM = insideZone(zone, spot) ? 0 : toOutlineM(points, here);
    if (nearestZone === undefined || distanceM < nearestZone.distanceM)
      nearestZone = { name: zone.name, distanceM };
    tooNear("in a zone not to drill", zone.name, distanceM, one.holeM / 2);
    if (distanceM >= one.holeM / 2) tooNear("flange over a zone", zone.name, distanceM, flange);
  }
  if (one.behindM !== undefined && one.roomM !== undefined && !(one.roomM >= one.behindM))
    problems.push({ problem: "no room behind", at: name, figure: one.roomM, limit: one.behindM, unit: "m" });
  return {
    name,
    edge,
    ...(nearestHole ? { nearestHole } : {}),
    ...(nearestZone ? { nearestZone } : {}),
    problems,
  };
}

/** Nearest edge over the surface. Its chord is never longer than the tape, so edges farther by chord than the best tape are passed over. */
function nearestEdge(face: Face, spot: Spot, here: Point): { name: string; distanceM: number } {
  const edges = edgesOf(face)
    .map((edge) => ({ edge, ...nearestShare(face, edge, here) }))
    .sort((a, b) => a.straightM - b.straightM);
  let best = { name: "", distanceM: Number.POSITIVE_INFINITY };
  for (const { edge, share, straightM: chordM } of edges) {
    if (chordM >= best.distanceM) break;
    const distanceM = wayOn(face, spot, spotOnEdge(edge, share)).lengthM;
    if (distanceM < best.distanceM) best = { name: edge.name, distanceM };
  }
  return best;
}

/** The outline as a fine chain of points; near it, chord and tape differ by less than a tenth of a millimetre. */
function outlineOf(face: Face, zone: Zone): Point[] {
  return zone.outline.flatMap((a, i) => {
    const b = zone.outline[(i + 1) % zone.outline.length] ?? a;
    return Array.from({ length: 16 }, (_, k) =>
      placeOn(face, [a[0] + ((b[0] - a[0]) * k) / 16, a[1] + ((b[1] - a[1]) * k) / 16]),
    );
  });
}

function toOutlineM(points: readonly Point[], here: Point): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [i, a] of points.entries()) {
    const side = minus(points[(i + 1) % points.length] ?? a, a);
    const size = dot(side, side);
    const share = size > 0 ? Math.min(1, Math.max(0, dot(minus(here, a), side) / size)) : 0;
    least = Math.min(
      least,
      straightM(here, [a[0] + share * side[0], a[1] + share * side[1], a[2] + share * side[2]]),
    );
  }
  return least;
}

function insideZone(zone: Zone, [u, v]: Spot): boolean {
  let inside = false;
  for (const [i, a] of zone.outline.entries()) {
    const b = zone.outline[(i + 1) % zone.outline.length] ?? a;
    if (a[1] > v !== b[1] > v && u < a[0] + ((b[0] - a[0]) * (v - a[1])) / (b[1] - a[1])) inside = !inside;
  }
  return inside;
}
