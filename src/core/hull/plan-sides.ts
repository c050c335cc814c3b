import type { CompletePlan } from "../plan/completed.js";
import type { FacePlan } from "../plan/model/hull.js";
import { sides as bothSides } from "../plan/model/placing.js";
import type { Spot } from "./faces/patch.js";
import type { FaceFigures, Placed, ReferenceFigures, SideFigures } from "./figures.js";
import { faceOn, type layFace, materialOf, openingsOf, pointsOn, zonesOf } from "./plan-faces.js";
import { clearancesOn } from "./plan-holes.js";
import { checkedOf, marksOf, twinSideMarks } from "./plan-marks.js";
import { placeAll, thingsOn } from "./plan-placing.js";
import type { HullProblem } from "./problem.js";

/** Lays one face on the boat with all that stands on it: places, marks, clearances, readings. */
export function faceFigures(
  plan: CompletePlan,
  face: FacePlan,
  laid: ReturnType<typeof layFace>,
  references: readonly ReferenceFigures[],
): FaceFigures {
  const material = materialOf(face, plan);
  const about = { name: face.name, plan: face, ...(material === undefined ? {} : { material }) };
  if (laid === undefined) return { ...about, sides: [], problems: [] };
  if ("problem" in laid) return { ...about, sides: [], problems: [laid] };
  const straight = new Set(
    plan.source.hull.references.flatMap(({ name, straightTo }) => straightTo.map((to) => `${name}\n${to}`)),
  );
  const things = thingsOn(plan, face);
  const sides: SideFigures[] = [];
  for (const side of face.pair ? bothSides : (["port"] as const)) {
    const on = faceOn(laid, side);
    const points = pointsOn(on, face, side, references, straight);
    const from = (name: string): Spot | undefined => points.find((point) => point.name === name)?.spot;
    const zones = zonesOf(on, face.zones);
    const here = things.filter(({ piece }) => !face.pair || piece.side === side);
    const { placed, problems } =
      sides[0] === undefined
        ? placeAll(on, face, material, here, from)
        : // the second side mirrors the first, whatever its own reference points were measured to
          placeAll(
            on,
            face,
            material,
            here,
            (name) => sides[0]?.references.find((one) => one.name === name)?.spot ?? from(name),
          );
    sides.push(
      sideFigures(
        plan,
        {
          face: on,
          plan: face,
          side,
          zones,
          openings: openingsOf(on, face, side, from),
          ...(material === undefined ? {} : { material }),
        },
        placed,
        points,
        sides[0],
        problems,
      ),
    );
  }
  return { ...about, sides, problems: [] };
}

type Ground = Parameters<typeof clearancesOn>[0];

/** Marks, clearances and what was read, of one side whose things have their spots. */
export function sideFigures(
  plan: CompletePlan,
  ground: Ground,
  placed: readonly Placed[],
  references: SideFigures["references"],
  first: SideFigures | undefined,
  problems: readonly HullProblem[],
): SideFigures {
  const { face, side, zones, openings } = ground;
  const marks =
    first === undefined
      ? marksOf(face, placed, references, plan.marks)
      : twinSideMarks(face, placed, first, references, plan.marks);
  const { checked, problems: unread } = checkedOf(
    face,
    marks,
    references,
    plan.source.hull.checked,
    plan.marks,
    first !== undefined,
  );
  return {
    side,
    face,
    references,
    zones,
    openings,
    placed,
    marks,
    clearances: clearancesOn(ground, placed),
    ...(checked === undefined ? {} : { checked }),
    problems: [...problems, ...marks.flatMap(({ mark }) => mark.problems), ...unread],
  };
}

/** What a side looks like to those who work on its holes. */
export function groundOf(face: FaceFigures, side: SideFigures): Ground {
  return {
    face: side.face,
    plan: face.plan,
    side: side.side,
    zones: side.zones,
    openings: side.openings,
    ...(face.material === undefined ? {} : { material: face.material }),
  };
}
