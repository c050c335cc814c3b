import type { Point } from "../../../../core/hull/vector.js";
import type { Edit } from "../../../../core/plan/edits/edit.js";
import { faceEdits } from "./face-edits.js";
import { type Lengths, pointText } from "./length-text.js";
import type { BoatScene, Moves } from "./scene.js";
import type { BoatThing } from "./things.js";

/** The edits that write where pieces were moved to. Pieces on a face stay on it; all others stand free. */
export function placeEdits(scene: BoatScene, moves: Moves, shows: Lengths): Edit[] {
  const groups = new Map<string, BoatThing[]>();
  for (const name of moves.keys()) {
    const thing = scene.byName.get(name);
    if (thing) groups.set(thing.group, [...(groups.get(thing.group) ?? []), thing]);
  }
  return [...groups.values()].flatMap((things) => {
    const [first] = things;
    if (!first) return [];
    return first.face ? faceEdits(scene, things, moves, shows) : freeEdits(scene, things, moves, shows);
  });
}

function freeEdits(scene: BoatScene, things: readonly BoatThing[], moves: Moves, shows: Lengths): Edit[] {
  const [first] = things;
  if (!first) return [];
  const { group, count, kind } = first;
  if (kind === "waypoint") return set(group, "at", moves.get(first.name), shows);
  if (count === 1) return set(group, "stands at", moves.get(first.name), shows);
  const written = scene.plan.source.gear.find(({ name }) => name === group)?.standsAtM?.length;
  // what was not moved keeps its place as the owner wrote it
  if (written === count)
    return things.flatMap(({ name, index }) =>
      set(group, `stands at / ${index + 1}`, moves.get(name), shows),
    );
  const texts = scene.things
    .filter((thing) => thing.group === group)
    .map(({ name, at }) => moves.get(name) ?? at ?? moves.get(first.name))
    .flatMap((point) => (point ? [pointText(point, shows)] : []));
  return [{ edit: "set field", at: group, field: "stands at", to: `[${texts.join(", ")}]` }];
}

function set(at: string, field: string, point: Point | undefined, shows: Lengths): Edit[] {
  return point ? [{ edit: "set field", at, field, to: pointText(point, shows) }] : [];
}
