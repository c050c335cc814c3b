import {
  type Entry,
  type EntryRoom,
  fromWallMm,
  gapMm,
  minApartMm,
  type Placed,
  type Wall,
  windowOf,
} from "./entry-rules.js";
import type { Face } from "./face.js";

/**
 * Entries in rows along a face, evenly spread, the rows about its middle: what one marks and drills most easily.
 * @returns undefined where rows do not take them all.
 */
export function inRows(
  face: Face,
  entries: readonly Entry[],
  wall: Wall,
  room: EntryRoom,
): Placed[] | undefined {
  if (entries.length === 0) return [];
  const largestFirst = entries.toSorted((a, b) => b.acrossMm - a.acrossMm || b.holeMm - a.holeMm);
  const full = rowsOf(face, largestFirst, wall, room, entries.length);
  if (full === undefined) return undefined;
  // As many rows as it takes, but no row fuller than need be.
  const even = rowsOf(face, largestFirst, wall, room, Math.ceil(entries.length / full.length));
  return (even && laidInRows(face, even, wall, room)) ?? laidInRows(face, full, wall, room);
}

function rowsOf(
  face: Face,
  entries: readonly Entry[],
  wall: Wall,
  room: EntryRoom,
  most: number,
): Entry[][] | undefined {
  const rows: Entry[][] = [];
  for (const entry of entries) {
    const row = rows.at(-1);
    if (row !== undefined && row.length < most && rowLength(face, [...row, entry], wall, room) <= 0)
      row.push(entry);
    else if (rowLength(face, [entry], wall, room) <= 0) rows.push([entry]);
    else return undefined;
  }
  return rows;
}

function laidInRows(
  face: Face,
  rows: readonly (readonly Entry[])[],
  wall: Wall,
  room: EntryRoom,
): Placed[] | undefined {
  const levels = rowLevels(face, rows, wall, room);
  if (levels === undefined) return undefined;
  return rows.flatMap((row, k) => spread(face, row, levels[k] ?? 0, wall, room));
}

/** Room at each end of a face: corner, or boss. */
function ends(face: Face, entry: Entry, wall: Wall): readonly [left: number, right: number] {
  const edge = fromWallMm(entry, wall);
  let left = edge;
  let right = face.lengthMm - edge;
  for (const boss of face.keepOuts) {
    if (boss.x <= 0) left = Math.max(left, boss.x + boss.widthMm + edge);
    else right = Math.min(right, boss.x - edge);
  }
  return [left, right];
}

/** By how much a row is too long; ≤ 0: it fits. */
function rowLength(face: Face, row: readonly Entry[], wall: Wall, room: EntryRoom): number {
  const first = row[0];
  const last = row.at(-1);
  if (first === undefined || last === undefined) return 0;
  let need = 0;
  row.forEach((entry, k) => {
    const next = row[k + 1];
    if (next !== undefined) need += minApartMm(entry, next, wall, room);
  });
  return ends(face, first, wall)[0] + need - ends(face, last, wall)[1];
}

function rowLevels(
  face: Face,
  rows: readonly (readonly Entry[])[],
  wall: Wall,
  room: EntryRoom,
): number[] | undefined {
  const windows = rows.map((row) => row.map((entry) => windowOf(face, entry, wall)));
  const low = windows.map((row) => Math.max(...row.map((one) => one.y0)));
  const high = windows.map((row) => Math.min(...row.map((one) => one.y1)));
  const levels = [low[0] ?? 0];
  for (let k = 1; k < rows.length; k += 1) {
    const apart = Math.max(
      ...(rows[k - 1] ?? []).flatMap((a) => (rows[k] ?? []).map((b) => minApartMm(a, b, wall, room))),
    );
    levels.push(Math.max(low[k] ?? 0, (levels[k - 1] ?? 0) + apart));
  }
  const spare = Math.min(...levels.map((level, k) => (high[k] ?? 0) - level));
  if (!(spare >= 0)) return undefined;
  return levels.map((level) => level + spare / 2);
}

function spread(face: Face, row: readonly Entry[], y: number, wall: Wall, room: EntryRoom): Placed[] {
  const [first, last] = [row[0], row.at(-1)];
  if (first === undefined || last === undefined) return [];
  const [left] = ends(face, first, wall);
  const spare = -rowLength(face, row, wall, room);
  const gap = spare / (row.length + 1);
  let x = left;
  return row.map((entry, k) => {
    const before = row[k - 1];
    x += gap + (before === undefined ? 0 : minApartMm(before, entry, wall, room));
    return { ...entry, on: face.name, x, y };
  });
}

/**
 * As many entries as go, largest first, each against two of its neighbours: walls, bosses or entries already there. Once
 * as low as can be and then left, once as far left and then low, which gives zigzag rows; the fuller one counts.
 */
export function packed(
  face: Face,
  entries: readonly Entry[],
  wall: Wall,
  room: EntryRoom,
): { placed: Placed[]; left: Entry[] } {
  const low = packedBy("low", face, entries, wall, room);
  if (low.left.length === 0) return low;
  const left = packedBy("left", face, entries, wall, room);
  return left.placed.length > low.placed.length ? left : low;
}

function packedBy(
  first: "low" | "left",
  face: Face,
  entries: readonly Entry[],
  wall: Wall,
  room: EntryRoom,
): { placed: Placed[]; left: Entry[] } {
  const placed: Placed[] = [];
  const left: Entry[] = [];
  for (const entry of entries.toSorted((a, b) => b.acrossMm - a.acrossMm || b.holeMm - a.holeMm)) {
    const at = closestPlace(first, face, entry, placed, wall, room);
    if (at === undefined) left.push(entry);
    else placed.push({ ...entry, on: face.name, ...at });
  }
  return { placed, left };
}

function closestPlace(
  first: "low" | "left",
  face: Face,
  entry: Entry,
  placed: readonly Placed[],
  wall: Wall,
  room: EntryRoom,
): { x: number; y: number } | undefined {
  const window = windowOf(face, entry, wall);
  const edge = fromWallMm(entry, wall);
  const [left, right] = ends(face, entry, wall);
  const discs = placed.map((other) => ({ x: other.x, y: other.y, r: minApartMm(entry, other, wall, room) }));
  let best: { x: number; y: number } | undefined;
  const offer = (x: number, y: number): void => {
    const hair = 1e-9;
    if (x < window.x0 - hair || x > window.x1 + hair || y < window.y0 - hair || y > window.y1 + hair) return;
    const [far, then] = first === "low" ? [y, x] : [x, y];
    if (best !== undefined) {
      const [bestFar, bestThen] = first === "low" ? [best.y, best.x] : [best.x, best.y];
      if (far > bestFar + hair || (far > bestFar - hair && then >= bestThen)) return;
    }
    if (discs.some((disc) => Math.hypot(disc.x - x, disc.y - y) < disc.r - hair)) return;
    if (face.keepOuts.some((boss) => gapMm(x, y, boss) < edge - hair)) return;
    best = { x, y };
  };
  const xs = [left, right];
  const ys = [window.y0, window.y1];
  for (const x of xs) for (const y of ys) offer(x, y);
  discs.forEach((disc, i) => {
    for (const x of xs) for (const y of crossings(disc.r, x - disc.x)) offer(x, disc.y + y);
    for (const y of ys) for (const x of crossings(disc.r, y - disc.y)) offer(disc.x + x, y);
    for (const other of discs.slice(i + 1)) for (const at of meet(disc, other)) offer(at.x, at.y);
  });
  return best;
}

function crossings(r: number, offset: number): number[] {
  const square = r * r - offset * offset;
  if (square < 0) return [];
  return [-Math.sqrt(square), Math.sqrt(square)];
}

interface Disc {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

function meet(a: Disc, b: Disc): { x: number; y: number }[] {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const d = Math.hypot(dx, dy);
  if (d === 0 || d > a.r + b.r || d < Math.abs(a.r - b.r)) return [];
  const along = (a.r * a.r - b.r * b.r + d * d) / (2 * d);
  const across = Math.sqrt(Math.max(0, a.r * a.r - along * along));
  const [ux, uy] = [dx / d, dy / d];
  return [1, -1].map((side) => ({
    x: a.x + along * ux - side * across * uy,
    y: a.y + along * uy + side * across * ux,
  }));
}
