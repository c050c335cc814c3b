import { placeOn } from "../../../../core/hull/faces/face.js";
import type { Spot } from "../../../../core/hull/faces/patch.js";
import type { LaidHull, LaidSide } from "../../../../core/hull/figures.js";
import type { Point } from "../../../../core/hull/vector.js";
import type { CompletePlan } from "../../../../core/plan/completed.js";
import { placedIn } from "./on-face.js";

/** What is there already, or only marks the boat: reference points, openings, holes, faces, zones not to drill. */
export type Feature =
  | {
      readonly kind: "reference" | "opening" | "hole";
      readonly name: string;
      readonly at: Point;
      readonly acrossM: number;
    }
  | { readonly kind: "face" | "zone"; readonly name: string; readonly outline: readonly Point[] };

/** Straight pieces one side of an outline is drawn with. */
const pieces = 10;

export function featuresOf(plan: CompletePlan, hull: LaidHull): Feature[] {
  const gear = new Set(plan.gear.map(({ name }) => name));
  return [
    ...hull.faces.flatMap((face) => face.sides.flatMap((side) => onSide(face.name, side))),
    ...hull.references.flatMap(({ name, sides }): Feature[] => {
      const points = Object.values(sides);
      const both = points.length === 2 && Math.abs((points[0]?.[1] ?? 0) - (points[1]?.[1] ?? 0)) < 1e-6;
      return (both ? points.slice(0, 1) : points).map((at) => ({ kind: "reference", name, at, acrossM: 0 }));
    }),
    ...placedIn(hull)
      .filter(({ piece }) => !gear.has(piece.name))
      .map(
        ({ piece, at, hole }): Feature => ({ kind: "hole", name: piece.name, at, acrossM: hole.sizeM ?? 0 }),
      ),
  ];
}

function onSide(name: string, side: LaidSide): Feature[] {
  return [
    { kind: "face", name, outline: outlineOn(side, faceOutline(side)) },
    ...side.zones.map(
      (zone): Feature => ({
        kind: "zone",
        name: zone.name,
        outline: outlineOn(side, zone.outline),
      }),
    ),
    ...side.openings.map(
      (opening): Feature => ({
        kind: "opening",
        name: opening.name,
        at: opening.at,
        acrossM: opening.clearM,
      }),
    ),
  ];
}

function faceOutline({ face }: LaidSide): readonly Spot[] {
  if (face.kind === "flat") return face.outline;
  const { uKnots, vKnots } = face.patch;
  const [u0 = 0, u1 = 0, v0 = 0, v1 = 0] = [uKnots[0], uKnots.at(-1), vKnots[0], vKnots.at(-1)];
  return [
    [u0, v0],
    [u1, v0],
    [u1, v1],
    [u0, v1],
  ];
}

function outlineOn({ face }: LaidSide, corners: readonly Spot[]): Point[] {
  return corners.flatMap((a, i) => {
    const b = corners[(i + 1) % corners.length] ?? a;
    return Array.from({ length: pieces }, (_, k) =>
      placeOn(face, [a[0] + ((b[0] - a[0]) * k) / pieces, a[1] + ((b[1] - a[1]) * k) / pieces]),
    );
  });
}
