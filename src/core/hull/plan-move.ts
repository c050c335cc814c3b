import type { Place } from "../plan/model/placing.js";
import type { Spot } from "./faces/patch.js";
import type { FaceFigures, HullFigures, Placed, SideFigures, SideMark } from "./figures.js";
import { edgeFor, spotOfPlace } from "./plan-faces.js";
import { clearancesOn, holeOf } from "./plan-holes.js";
import { afloat, problemsOf } from "./plan-hull.js";
import { marksOf, twinSideMarks } from "./plan-marks.js";
import { placedAt } from "./plan-placing.js";
import { groundOf } from "./plan-sides.js";
import type { HullProblem } from "./problem.js";

/** Where to: the owner's way, or a spot of the face under the pointer. */
export type MoveTo = Place | { readonly spot: Spot };

/**
 * The figures with one placed piece, and its twin, somewhere else on its face: its marks, clearances, hole and float figures, and the
 * clearances of what else stands there. Readings taken after marking, weights and pulls stay as they are. Everything else is shared with
 * the figures given, so that it follows a pointer.
 * @throws RangeError if nothing placed is called so, or the place counts from a reference point that is not on the face.
 */
export function moveOnFace(figures: HullFigures, name: string, to: MoveTo): HullFigures {
  const face = figures.faces.find(({ sides }) =>
    sides.some(({ placed }) => placed.some(({ piece }) => piece.name === name)),
  );
  const own = face?.sides.find(({ placed }) => placed.some(({ piece }) => piece.name === name));
  const was = own?.placed.find(({ piece }) => piece.name === name);
  if (face === undefined || own === undefined || was === undefined)
    throw new RangeError(`a piece that stands on a face required, got ${name}`);
  const spot = spotOf(own, to);
  const names = new Set([name, ...(was.piece.twin === undefined ? [] : [was.piece.twin])]);
  const edge = "spot" in to ? was.edge : edgeFor(own.face, to);
  const moved: FaceFigures = { ...face, sides: [] };
  const sides: SideFigures[] = [];
  for (const side of face.sides) {
    if (!side.placed.some(({ piece }) => names.has(piece.name))) {
      sides.push(side);
      continue;
    }
    const placed = side.placed.map((one) =>
      names.has(one.piece.name) ? placedAt(side.face, one, edge, spot) : one,
    );
    const marks = marksWith(figures, side, placed, names, sides[0]);
    const problems = side.problems.filter(({ at }) => !names.has(at));
    const clear = clearancesOn(groundOf(moved, side), placed);
    sides.push({
      ...side,
      placed,
      marks,
      clearances: clear,
      problems: [...problems, ...ownProblems(marks, names)],
    });
  }
  const changed: FaceFigures = { ...face, sides };
  const faces = figures.faces.map((one) => (one === face ? changed : one));
  const about = { ...figures, faces, holes: holesWith(figures, changed, names) };
  const lost = figures.problems.filter((one) =>
    figures.references.some((reference) => reference.name === one.at),
  );
  return { ...about, problems: problemsOf(about, lost) };
}

function spotOf(side: SideFigures, to: MoveTo): Spot {
  if ("spot" in to) return to.spot;
  const from = (name: string) => side.references.find((one) => one.name === name)?.spot;
  const spot = spotOfPlace(side.face, to, from);
  if (spot === undefined)
    throw new RangeError(`a reference point on the face required, got ${to.from ?? "none"}`);
  return spot;
}

/** Marks of a side with the moved ones worked out anew, from the reference points alone. */
function marksWith(
  figures: HullFigures,
  side: SideFigures,
  placed: readonly Placed[],
  names: ReadonlySet<string>,
  first: SideFigures | undefined,
): SideMark[] {
  const movedHere = placed.filter(({ piece, toMark }) => names.has(piece.name) && toMark);
  const { marks } = figures.plan;
  const fresh =
    first === undefined
      ? marksOf(side.face, movedHere, side.references, marks)
      : twinSideMarks(side.face, movedHere, first, side.references, marks);
  return side.marks.map((one) => fresh.find(({ mark }) => mark.name === one.mark.name) ?? one);
}

function ownProblems(marks: readonly SideMark[], names: ReadonlySet<string>): HullProblem[] {
  return marks.filter(({ mark }) => names.has(mark.name)).flatMap(({ mark }) => mark.problems);
}

/** Holes of the face anew: the moved ones whole, the others for their clearances. */
function holesWith(
  figures: HullFigures,
  face: FaceFigures,
  names: ReadonlySet<string>,
): HullFigures["holes"] {
  const fresh = new Map(
    face.sides.flatMap((side) => {
      const ground = groundOf(face, side);
      const clear = new Map(side.clearances.map((one) => [one.name, one]));
      return side.placed.map((one) => {
        const hole = holeOf(ground, one, clear.get(one.piece.name));
        const before = figures.holes.find(({ name }) => name === one.piece.name);
        const kept = before?.afloat === undefined ? hole : { ...hole, afloat: before.afloat };
        return [one.piece.name, names.has(one.piece.name) ? afloat(hole, one, figures.float) : kept] as const;
      });
    }),
  );
  return figures.holes.map((hole) => fresh.get(hole.name) ?? hole);
}
