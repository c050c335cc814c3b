import { mirrored, type Point, straightM } from "../../../../core/hull/vector.js";
import { gearRoleFacts } from "../../../../core/reference/gear-roles.js";
import { bottomAt, sheerAt } from "./hull-at.js";
import type { BoatScene, Moves } from "./scene.js";
import type { BoatThing } from "./things.js";

/** Between the middles of things one has not moved apart yet, and what their places are rounded to [m]: figures one can lay off with a tape. */
const spacing = {
  inches: { apartM: 12 * 0.0254, roundM: 0.0254 },
  millimetres: { apartM: 0.3, roundM: 0.01 },
} as const;

/** The place on the centreline nearest to amidships that nothing stands at yet [m from station 0]. */
export function freeAmidships({ plan, drawn: { form }, things }: BoatScene): number {
  const { apartM, roundM } = spacing[plan.source.shows.lengths];
  const middle = Math.round((form.fromM + form.toM) / 2 / roundM) * roundM;
  const taken = things.flatMap(({ at }) => (at && Math.abs(at[1]) < apartM ? [at[0]] : []));
  for (let step = 0; step * apartM < (form.toM - form.fromM) / 2; step += 1)
    for (const x of [middle - step * apartM, middle + step * apartM])
      if (taken.every((other) => Math.abs(other - x) > apartM - 1e-9)) return x;
  return middle;
}

/**
 * Pieces in a row: evenly between the two that are farthest apart. Where those of one entry are pairs across the boat already, each side
 * is a row of its own and they stay pairs.
 * @returns undefined where there are fewer than three to a row, or one has no place.
 */
export function inRow(things: readonly BoatThing[]): Moves | undefined {
  if (!arePairs(things)) return spread(things);
  const first = things.slice(0, things.length / 2);
  const half = spread(first);
  if (!half) return undefined;
  const moves = new Map(half);
  for (const [i, { name }] of first.entries()) {
    const to = half.get(name);
    const twin = things[things.length - 1 - i];
    if (to && twin) moves.set(twin.name, mirrored(to));
  }
  return moves;
}

/** Is the first the mirror image of the last, and so on inwards? Within what one writes, 3 mm. */
function arePairs(things: readonly BoatThing[]): boolean {
  const [first] = things;
  if (!first || things.length !== first.count || first.count % 2 !== 0) return false;
  return things.slice(0, things.length / 2).every(({ at, group }, i) => {
    const twin = things[things.length - 1 - i];
    if (!at || !twin?.at || group !== first.group || Math.abs(at[1]) < 0.01) return false;
    return straightM(mirrored(at), twin.at) < 0.003;
  });
}

/** Evenly on the straight line between the two that are farthest apart, in the order they lie along it. */
function spread(things: readonly BoatThing[]): Moves | undefined {
  const placed = things.flatMap(({ name, index, at }) => (at ? [{ name, index, at }] : []));
  if (placed.length < 3 || placed.length < things.length) return undefined;
  let ends: readonly [Point, Point] | undefined;
  let most = 0;
  for (const a of placed)
    for (const b of placed) {
      const apart = straightM(a.at, b.at);
      if (apart > most) [most, ends] = [apart, a.at[0] <= b.at[0] ? [a.at, b.at] : [b.at, a.at]];
    }
  if (!ends) return undefined;
  const [from, to] = ends;
  const along = (at: Point) => [0, 1, 2].reduce((sum, i) => sum + part(at, from, i) * part(to, from, i), 0);
  const ordered = placed.toSorted((a, b) => along(a.at) - along(b.at) || a.index - b.index);
  return new Map(
    ordered.map(({ name }, i): [string, Point] => [name, between(from, to, i / (ordered.length - 1))]),
  );
}

const part = (a: Point, b: Point, i: number) => (a[i] ?? 0) - (b[i] ?? 0);

function between(a: Point, b: Point, share: number): Point {
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share, a[2] + (b[2] - a[2]) * share];
}

/**
 * The other side: all pieces of one entry, an even number of them, become pairs, the last the mirror image of the first, as
 * the numbers of a pair run; anything else goes over the centreline.
 * @returns undefined where one has no place.
 */
export function mirror(things: readonly BoatThing[]): Moves | undefined {
  const [first] = things;
  if (!first || things.some(({ at }) => at === undefined)) return undefined;
  const whole = things.length === first.count && things.every(({ group }) => group === first.group);
  const pairs = whole && first.count % 2 === 0;
  const half = pairs ? things.slice(0, first.count / 2) : things;
  return new Map(
    half.flatMap(({ name, at }, i): [string, Point][] => {
      const twin = pairs ? things[things.length - 1 - i] : undefined;
      return at ? [[twin?.name ?? name, mirrored(at)]] : [];
    }),
  );
}

/** Where the pieces of an entry come to lie that is brought aboard at a place: in a row fore and aft, lamps at the sheer and all else on the bottom, unless the height is known. */
export function broughtAboard(
  { plan, drawn }: BoatScene,
  pieces: readonly BoatThing[],
  at: Point,
  heightKnown: boolean,
): Moves {
  const { form } = drawn;
  const room = (form.toM - form.fromM) * 0.6;
  const { apartM } = spacing[plan.source.shows.lengths];
  const apart = pieces.length > 1 ? Math.min(apartM, room / (pieces.length - 1)) : 0;
  return new Map(
    pieces.map(({ name, role, sizeM }, i): [string, Point] => {
      const x = at[0] + apart * (i - (pieces.length - 1) / 2);
      if (heightKnown) return [name, [x, at[1], at[2]]];
      const lamp = role !== undefined && gearRoleFacts.rows[role].light;
      const z = lamp ? sheerAt(drawn, x)[1] : bottomAt(drawn, x, at[1]) + sizeM[2] / 2;
      return [name, [x, at[1], z]];
    }),
  );
}
