import { holePlaces } from "../plan/complete/placing.js";
import type { CompletePlan, PiecePlace } from "../plan/completed.js";
import type { FacePlan } from "../plan/model/hull.js";
import type { HolePlan, RowPlace } from "../plan/model/placing.js";
import type { Material } from "../reference/drilling.js";
import { edgeLengthM, edgeOf, nearestOn } from "./faces/edge.js";
import { type Face, placeOn } from "./faces/face.js";
import type { Spot } from "./faces/patch.js";
import type { Placed } from "./figures.js";
import { leastDistances } from "./holes/distances.js";
import { placingOf } from "./placing/place.js";
import { rowPlaces } from "./placing/row.js";
import { edgeFor, spotOfPlace, stretchesOf } from "./plan-faces.js";
import type { HullProblem } from "./problem.js";

/** A thing to place, before its spot is known. */
export interface ToPlace {
  readonly piece: PiecePlace;
  readonly group: string;
  readonly hole: HolePlan;
  readonly toMark: boolean;
}

const noHole: HolePlan = { measuredM: [] };

/** Everything that stands on a face, gear first. */
export function thingsOn(plan: CompletePlan, face: FacePlan): ToPlace[] {
  const gear = plan.gear.flatMap(({ placed, group, hole }): ToPlace[] =>
    placed?.on === face.name ? [{ piece: placed, group, hole: hole ?? noHole, toMark: true }] : [],
  );
  const holes = face.holes.flatMap((one) =>
    holePlaces(face.name, one).map(
      (piece): ToPlace => ({ piece, group: one.name, hole: one.hole, toMark: !one.there }),
    ),
  );
  return [...gear, ...holes];
}

/**
 * Spots of the things on one side of a face. What counts from a reference point that is not on the face has no spot, and is told.
 * @param from Spot of a reference point of this side.
 */
export function placeAll(
  face: Face,
  plan: FacePlan,
  material: Material | undefined,
  things: readonly ToPlace[],
  from: (name: string) => Spot | undefined,
): { placed: Placed[]; problems: HullProblem[] } {
  const problems: HullProblem[] = [];
  const rows = new Map<RowPlace, readonly number[]>();
  const placed = things.flatMap((thing): Placed[] => {
    const { where } = thing.piece;
    if (where.kind === "one") {
      const { place } = where;
      const spot = spotOfPlace(face, place, from);
      if (spot === undefined) {
        problems.push(lost(thing, place.from));
        return [];
      }
      return [placedAt(face, thing, edgeFor(face, place), spot)];
    }
    const { row, index } = where;
    let along = rows.get(row);
    if (along === undefined) {
      const start = startOf(face, row, from);
      if (start === undefined) {
        problems.push(lost(thing, row.countedFrom));
        return [];
      }
      const laid = layRow(face, plan, material, thing, row, where.count, start);
      problems.push(...laid.problems);
      along = laid.alongM;
      rows.set(row, along);
    }
    const alongM = along[index];
    if (alongM === undefined) return [];
    const { offM, edge } = row;
    const spot = spotOfPlace(face, { alongM, offM, ...(edge && { edge }) }, from);
    return spot === undefined ? [] : [placedAt(face, thing, edgeFor(face, row), spot)];
  });
  return { placed, problems };
}

function lost(thing: ToPlace, from = ""): HullProblem {
  return { problem: "off the face", at: thing.piece.name, with: [from], terms: { what: "counted from" } };
}

/** Length along the edge at which a row's counting starts. */
function startOf(face: Face, row: RowPlace, from: (name: string) => Spot | undefined): number | undefined {
  if (row.countedFrom === undefined) return 0;
  const spot = from(row.countedFrom);
  if (spot === undefined) return undefined;
  if (face.kind === "flat") return spot[0];
  const edge = edgeOf(face, edgeFor(face, row));
  return edgeLengthM(face, edge, 0, nearestOn(face, edge, spot).share);
}

function layRow(
  face: Face,
  plan: FacePlan,
  material: Material | undefined,
  { group, hole }: ToPlace,
  row: RowPlace,
  count: number,
  startM: number,
): { alongM: number[]; problems: readonly HullProblem[] } {
  const [low, high] = [Math.min(row.fromM, row.toM), Math.max(row.fromM, row.toM)];
  const widthM = hole.flangeM ?? hole.sizeM ?? 0;
  const rule =
    material !== undefined && hole.sizeM !== undefined ? leastDistances(material, hole.sizeM) : undefined;
  const leastApartM = Math.max(
    row.leastApartM ?? 0,
    widthM,
    hole.sizeM ? (rule?.spacingM(hole.sizeM) ?? 0) : 0,
  );
  const off = { offM: row.offM, halfWidthM: widthM / 2, above: row.edge?.off === "above" };
  const laid = rowPlaces(
    {
      name: group,
      count,
      fromM: startM + low,
      toM: startM + high,
      endMarginM: row.endMarginM,
      // a little more than half: along the edge is a little farther than square to the zone
      halfWidthM: widthM / 2 + 0.0005,
      leastApartM,
    },
    stretchesOf(face, edgeFor(face, row), off, plan.zones),
  );
  return {
    alongM: row.fromM <= row.toM ? [...laid.alongM] : laid.alongM.toReversed(),
    problems: laid.problems,
  };
}

/** A thing at a spot, said in the owner's way. */
export function placedAt(face: Face, thing: ToPlace, edge: string, spot: Spot): Placed {
  const about = { ...thing, spot, at: placeOn(face, spot), edge };
  if (face.kind === "flat") return { ...about, alongM: spot[0], offM: spot[1] };
  const { alongM, offM } = placingOf(face, edge, undefined, spot);
  return { ...about, alongM, offM };
}
