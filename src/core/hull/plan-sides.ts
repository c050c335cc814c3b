import type { CompletePlan } from "../plan/completed.js";
import type { FaceFigures, LaidFace, LaidSide, SideFigures } from "./figures.js";
import { clearancesOn, type HoleGround } from "./plan-holes.js";
import { checkedOf, marksOf, twinSideMarks } from "./plan-marks.js";

/** A laid face with marks, clearances and what was read after marking. */
export function faceFigures(plan: CompletePlan, face: LaidFace): FaceFigures {
  const sides: SideFigures[] = [];
  for (const side of face.sides) sides.push(sideFigures(plan, face, side, sides[0]));
  return { ...face, sides };
}

/** @param first On the second side of a pair: the first. */
function sideFigures(
  plan: CompletePlan,
  of: LaidFace,
  laid: LaidSide,
  first: SideFigures | undefined,
): SideFigures {
  const { face, placed, references, problems } = laid;
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
    ...laid,
    marks,
    clearances: clearancesOn(groundOf(of, laid), placed),
    ...(checked === undefined ? {} : { checked }),
    problems: [...problems, ...marks.flatMap(({ mark }) => mark.problems), ...unread],
  };
}

/** What a side looks like to those who work on its holes. */
export function groundOf(face: LaidFace, side: LaidSide): HoleGround {
  return {
    face: side.face,
    plan: face.plan,
    side: side.side,
    zones: side.zones,
    openings: side.openings,
    ...(face.material === undefined ? {} : { material: face.material }),
  };
}
