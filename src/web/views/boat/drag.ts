import { minus, mirrored, type Point, plus } from "../../../core/hull/vector.js";
import { onFace, underPointer } from "./model/on-face.js";
import { movedInView, type Spot2, type ViewName } from "./model/paper.js";
import type { BoatScene, Moves } from "./model/scene.js";
import { type Snap, snapped } from "./model/snap.js";
import type { BoatThing } from "./model/things.js";

/** Something on its way: where it and what moves with it are now. */
export interface Drag {
  readonly lead: BoatThing;
  readonly view: ViewName;
  readonly from: Point;
  readonly at: Point;
  readonly moves: Moves;
  readonly snaps: readonly Snap[];
  /** By the pointer, or by the arrow keys. */
  readonly by: "pointer" | "keys";
}

/** @returns undefined where the thing has no place yet. */
export function dragOf(
  thing: BoatThing,
  view: ViewName,
  by: Drag["by"],
  marked: readonly BoatThing[],
): (Drag & { readonly others: readonly BoatThing[] }) | undefined {
  const { at } = thing;
  if (!at) return undefined;
  const others = marked.some(({ name }) => name === thing.name)
    ? marked.filter(({ name }) => name !== thing.name)
    : [];
  return { lead: thing, view, from: at, at, moves: new Map([[thing.name, at]]), snaps: [], by, others };
}

/**
 * The drag with its lead so far from where it began [mm on the sheet]. What stands on a face stays on it; all else holds on to what is
 * within reach.
 * @param withinM How near is near [m]; 0: it holds on to nothing.
 */
export function dragged(
  scene: BoatScene,
  drag: Drag,
  byMm: Spot2,
  others: readonly BoatThing[],
  withinM: number,
): Drag {
  const { lead, view, from } = drag;
  const wanted = movedInView(view, from, byMm);
  const seat = lead.face && onFace(scene.hull, lead.name);
  if (seat) {
    const at = underPointer(seat.side.face, view, wanted);
    return { ...drag, at, snaps: [], moves: movesOnFace(scene, lead, from, at) };
  }
  const moving = new Set([lead.name, ...others.map(({ name }) => name)]);
  const { at, snaps } =
    withinM > 0 ? snapped(scene, view, wanted, moving, withinM) : { at: wanted, snaps: [] };
  const by = minus(at, from);
  const moves = new Map<string, Point>([[lead.name, at]]);
  for (const { name, at: was, face } of others) if (was && !face) moves.set(name, plus(was, by));
  return { ...drag, at, snaps, moves };
}

/** Its twin moves as its mirror image; in a row the others come along. Where they come to lie exactly shows when it is let go. */
function movesOnFace(scene: BoatScene, lead: BoatThing, from: Point, at: Point): Moves {
  const moves = new Map<string, Point>([[lead.name, at]]);
  const { face } = lead;
  if (!face) return moves;
  const by = minus(at, from);
  if (face.row)
    for (const { name, group, at: was, face: own } of scene.things) {
      if (group !== lead.group || name === lead.name || !was || !own) continue;
      moves.set(name, plus(was, own.side === face.side ? by : mirrored(by)));
    }
  else if (face.twin !== undefined) moves.set(face.twin, mirrored(at));
  return moves;
}
