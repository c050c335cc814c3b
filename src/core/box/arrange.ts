import { type Entry, type EntryRoom, minApartMm, type Placed, type Wall, windowOf } from "./entry-rules.js";
import type { Face } from "./face.js";
import { inRows, packed } from "./place-on-face.js";

export type ArrangeAnswer =
  | { readonly ok: true; readonly placed: readonly Placed[] }
  | {
      readonly ok: false;
      readonly problem: "entry-too-large" | "too-many-entries";
      /** Entries that found no place. */
      readonly without: readonly string[];
      readonly room: number;
      /** `proven`: no arrangement exists. `not found`: rows and close packing took no more. */
      readonly proof: "proven" | "not found";
    };

/**
 * Lays entries on the faces, best face first: all on one face in rows if they go, else as close as they lie, the rest on
 * the next.
 */
export function arrange(
  faces: readonly Face[],
  entries: readonly Entry[],
  wall: Wall,
  room: EntryRoom,
): ArrangeAnswer {
  const homeless = entries.filter(
    (entry) => !facesFor(faces, entry).some((face) => fitsAlone(face, entry, wall, room)),
  );
  if (homeless.length > 0) {
    const without = homeless.map((entry) => entry.id);
    return { ok: false, problem: "entry-too-large", without, room: 0, proof: "proven" };
  }
  const placed: Placed[] = [];
  let left: Entry[] = [...entries];
  for (const face of faces) {
    const bound = left.filter((entry) => entry.face === face.name);
    const free = left.filter((entry) => entry.face === undefined && fitsAlone(face, entry, wall, room));
    const wanted = [...bound, ...free];
    const rows = inRows(face, wanted, wall, room);
    // Those bound to this face come first where not all find room.
    const laid = rows ?? closest(face, bound, free, wall, room);
    placed.push(...laid);
    const ids = new Set(laid.map((entry) => entry.id));
    left = left.filter((entry) => !ids.has(entry.id));
  }
  if (left.length === 0) return { ok: true, placed };
  const most = mostEntries(faces, entries, wall, room);
  return {
    ok: false,
    problem: "too-many-entries",
    without: left.map((entry) => entry.id),
    room: placed.length,
    proof: entries.length > most ? "proven" : "not found",
  };
}

const facesFor = (faces: readonly Face[], entry: Entry): readonly Face[] =>
  entry.face === undefined ? faces : faces.filter((face) => face.name === entry.face);

function fitsAlone(face: Face, entry: Entry, wall: Wall, room: EntryRoom): boolean {
  return packed(face, [entry], wall, room).placed.length === 1;
}

/** The most that rows leave over is packed close; a few rows' worth is tried in rows again, so that it stays neat. */
function closest(
  face: Face,
  bound: readonly Entry[],
  free: readonly Entry[],
  wall: Wall,
  room: EntryRoom,
): Placed[] {
  const first = packed(face, [...bound, ...free], wall, room).placed;
  const boundIn = bound.every((entry) => first.some((one) => one.id === entry.id));
  const laid = boundIn ? first : packed(face, bound, wall, room).placed;
  return inRows(face, laid, wall, room) ?? laid;
}

/**
 * No more points than this lie at least d apart in a convex region: 2/√3 · area/d² + perimeter/(2·d) + 1
 * (N. Oler, An inequality in the geometry of numbers, Acta Mathematica 105, 1961; recalled).
 */
function mostEntries(faces: readonly Face[], entries: readonly Entry[], wall: Wall, room: EntryRoom): number {
  const smallest = entries.reduce((a, b) => (b.acrossMm < a.acrossMm ? b : a), entries[0] ?? unset);
  const apart = Math.min(...entries.map((entry) => minApartMm(entry, entry, wall, room)));
  const least = { ...smallest, holeMm: Math.min(...entries.map((entry) => entry.holeMm)), spanner: false };
  return faces.reduce((sum, face) => {
    const { x0, x1, y0, y1 } = windowOf(face, least, wall);
    const [w, h] = [x1 - x0, y1 - y0];
    if (w < 0 || h < 0) return sum;
    return sum + Math.floor((2 / Math.sqrt(3)) * ((w * h) / apart ** 2) + (w + h) / apart + 1 + 1e-9);
  }, 0);
}

const unset: Entry = { id: "", holeMm: 1, acrossMm: 1, spanner: false };
