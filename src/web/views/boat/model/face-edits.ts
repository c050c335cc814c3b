import { spotNear } from "../../../../core/hull/faces/near.js";
import type { Edit } from "../../../../core/plan/edits/edit.js";
import type { Gear } from "../../../../core/plan/model/gear.js";
import type { Place } from "../../../../core/plan/model/placing.js";
import { type Lengths, lengthText } from "./length-text.js";
import { alongAndOff, onFace } from "./on-face.js";
import type { BoatScene, Moves } from "./scene.js";
import type { BoatThing } from "./things.js";

/** The edits for pieces of one entry that stand on a face: the place of each, or the row they stand in, moved as the first was. */
export function faceEdits(
  scene: BoatScene,
  things: readonly BoatThing[],
  moves: Moves,
  shows: Lengths,
): Edit[] {
  const [first] = things;
  const entry = scene.plan.source.gear.find(({ name }) => name === first?.group);
  const placing = entry?.placing;
  if (!first || !entry || !placing) return [];
  if (placing.row) return rowEdits(scene, entry, first, moves, shows);
  const each = placing.places.length;
  const done = new Set<number>();
  return things.flatMap(({ name, index, count }): Edit[] => {
    // of a pair both pieces have one place: what moves the one moves the other
    const slot = placing.pair && index >= each ? count - 1 - index : index;
    const place = placing.places[slot];
    const moved = movedOn(scene, name, moves);
    if (!moved || !place || done.has(slot)) return [];
    done.add(slot);
    const to = placeText({ ...place, alongM: place.alongM + moved.byM, offM: moved.offM }, shows);
    return [{ edit: "set field", at: entry.name, field: each === 1 ? "at" : `at / ${slot + 1}`, to }];
  });
}

function rowEdits(scene: BoatScene, entry: Gear, { name }: BoatThing, moves: Moves, shows: Lengths): Edit[] {
  const moved = movedOn(scene, name, moves);
  const row = entry.placing?.row;
  if (!moved || !row) return [];
  const of = (field: string, lengthM: number): Edit => ({
    edit: "set field",
    at: entry.name,
    field: `row / ${field}`,
    to: lengthText(lengthM, shows),
  });
  return [of("from", row.fromM + moved.byM), of("to", row.toM + moved.byM), of("off", moved.offM)];
}

/** How far along its edge a piece was moved, and how far off it is now [m]. */
function movedOn(scene: BoatScene, name: string, moves: Moves) {
  const seat = onFace(scene.hull, name);
  const to = moves.get(name);
  if (!seat || !to) return undefined;
  const { side, placed } = seat;
  const now = alongAndOff(side.face, placed.edge, spotNear(side.face, to).spot);
  return { byM: now.alongM - placed.alongM, offM: now.offM };
}

/** `{along: 790 mm, below: sheer, off: 60 mm}`, with what it was counted from. */
function placeText({ alongM, offM, from, edge }: Place, shows: Lengths): string {
  const parts = [
    `along: ${lengthText(alongM, shows)}`,
    ...(from === undefined ? [] : [`from: ${JSON.stringify(from)}`]),
    ...(edge === undefined ? [] : [`${edge.off}: ${JSON.stringify(edge.line)}`]),
    `off: ${lengthText(offM, shows)}`,
  ];
  return `{${parts.join(", ")}}`;
}
