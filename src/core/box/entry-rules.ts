import { entryRoom, type WallMaterial, wallRules } from "../reference/boxes.js";
import { glandFits } from "../reference/glands.js";
import type { Face } from "./face.js";

/** A hole with what is fitted in it, whatever kind: gland, grommet, bulkhead plug, vent, switch, drain. */
export interface Entry {
  readonly id: string;
  readonly holeMm: number;
  /** Across what turns or sits flat on the wall: nut corners, flange. */
  readonly acrossMm: number;
  /** A spanner must get round it. */
  readonly spanner: boolean;
  /** Only this face will do: the owner's wish. */
  readonly face?: Face["name"];
}

export interface Placed extends Entry {
  readonly on: Face["name"];
  readonly x: number;
  readonly y: number;
  /** The owner's name of the hole, where it is there already. */
  readonly own?: string;
}

export interface Wall {
  readonly material: WallMaterial;
  readonly wallMm: number;
}

export interface EntryRoom {
  /** Between the larger across-corners and the next centre; 3 to 5 mm. */
  readonly spannerRoomMm: number;
}

export const usualRoom: EntryRoom = { spannerRoomMm: entryRoom.usualSpannerRoomMm };

/** Least wall left between two holes [mm]: a share of the larger hole, and so many wall thicknesses. */
export function minWebMm(wall: Wall, largerHoleMm: number): number {
  const rule = wallRules.rows.find((row) => row.material === wall.material);
  if (rule === undefined) throw new RangeError(`no rule for walls of ${wall.material}`);
  return Math.max(rule.webPerHole * largerHoleMm, rule.webPerWall * wall.wallMm);
}

/**
 * Least distance between the centres of two entries [mm]: nuts clear each other and a spanner gets round the larger
 * (its across-corners and the room), and the web between the holes holds.
 */
export function minApartMm(a: Entry, b: Entry, wall: Wall, room: EntryRoom): number {
  const bodies =
    a.spanner || b.spanner
      ? Math.max(a.acrossMm, b.acrossMm) + room.spannerRoomMm
      : (a.acrossMm + b.acrossMm) / 2 + 1;
  return Math.max(bodies, (a.holeMm + b.holeMm) / 2 + minWebMm(wall, Math.max(a.holeMm, b.holeMm)));
}

/** Where the centre of an entry may lie on a face. */
export interface Window {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/**
 * Distance an entry's centre keeps from a wall, a boss or the base inside [mm]. A lock nut's thickness stays free beside the
 * nut: the nuts of two faces that meet there would touch otherwise, and a spanner gets in.
 */
export function fromWallMm(entry: Entry, wall: Wall): number {
  const nut = entry.acrossMm / 2 + (entry.spanner ? glandFits.lockNutMm : 0);
  return Math.max(nut, entry.holeMm / 2 + minWebMm(wall, entry.holeMm));
}

/** Distance from the lid's lip: the hole stays clear of seal and lip, the nut under the lid [mm]. */
export function fromLidMm(entry: Entry): number {
  return Math.max(entry.acrossMm / 2, entry.holeMm / 2 + entryRoom.sealMm);
}

/** The centres a face allows, before bosses are looked at. Empty where x0 > x1 or y0 > y1. */
export function windowOf(face: Face, entry: Entry, wall: Wall): Window {
  const edge = fromWallMm(entry, wall);
  return {
    x0: edge,
    x1: face.lengthMm - edge,
    y0: edge,
    y1: face.depthMm - face.lidLipMm - fromLidMm(entry),
  };
}

/** Gap from a point to a rectangle [mm]; 0 inside. */
export function gapMm(
  x: number,
  y: number,
  r: { x: number; y: number; widthMm: number; heightMm: number },
): number {
  const dx = Math.max(r.x - x, 0, x - (r.x + r.widthMm));
  const dy = Math.max(r.y - y, 0, y - (r.y + r.heightMm));
  return Math.hypot(dx, dy);
}
