import type { CompletePlan } from "../plan/completed.js";
import type { FaceFigures, HoleFigures, PullingFigures } from "./figures.js";
import { spaceName } from "./plan-faces.js";
import { drawnLine, type LinePath, type Passage } from "./pulling/drawn-line.js";
import { type Pull, passings, pullOrder } from "./pulling/order.js";

/** Where one stands: every opening leads there, so a cable may leave one space and enter another. No plan can call a space so. */
const openBoat = "\n";

/**
 * How the cables' ends come to the holes of faces that have openings: from the hole before it on the same cable, or else from the opening that
 * reaches the hole best, by the shortest drawn line; the largest ends first.
 * @param cableM Diameter of each run's cable, by the run's name; without it, and without the size of its end, a pull can't be judged [m].
 */
export function planPulling(
  plan: CompletePlan,
  faces: readonly FaceFigures[],
  holes: readonly HoleFigures[],
  cableM: ReadonlyMap<string, number>,
): PullingFigures {
  const closed = new Map(
    faces.flatMap(({ plan: face, sides }) =>
      sides
        .filter(({ openings }) => openings.length > 0)
        .map((side) => [`${face.name}\n${side.side}`, { face, side }] as const),
    ),
  );
  const inClosed = (hole: HoleFigures) => closed.get(`${hole.face}\n${hole.side}`);
  const openings = [...closed.values()].flatMap(({ side }) =>
    side.openings.map(
      ({ name, at, space, clearM }): Passage => ({ name, at, spaces: [space, openBoat], clearM }),
    ),
  );
  const passages: Passage[] = [
    ...openings,
    ...holes.flatMap((hole): Passage[] => {
      const here = inClosed(hole);
      if (here === undefined || hole.cut === undefined) return [];
      const spaces = [...new Set(here.side.openings.map(({ space }) => space))];
      return [
        {
          name: hole.name,
          at: hole.at,
          spaces: spaces.length > 0 ? spaces : [spaceName(here.face, hole.side)],
          clearM: hole.cut.holeMm / 1000,
        },
      ];
    }),
  ];
  const byName = new Map(holes.map((hole) => [hole.name, hole]));
  const unknown: string[] = [];
  const paths = new Map<string, LinePath>();
  const pulls = pullOrder(
    plan.runs.flatMap((run): Pull[] => {
      const hole = byName.get(run.to.place);
      if (hole === undefined || inClosed(hole) === undefined || hole.cut === undefined) return [];
      const { passesM } = hole.plan;
      const diameterM = cableM.get(run.name);
      if (passesM === undefined || diameterM === undefined) {
        unknown.push(hole.name);
        return [];
      }
      const before = byName.get(run.from.place);
      const start = before && inClosed(before) && before.cut ? before.name : hole.reach?.through[0]?.opening;
      const path = start === undefined ? undefined : drawnLine(passages, start, hole.name);
      if (path === undefined) return [];
      paths.set(run.name, path);
      return [
        {
          name: run.name,
          cableM: diameterM,
          endM: Math.max(passesM, diameterM),
          lengthM: path.lengthM,
          through: path.passages,
        },
      ];
    }),
  );
  const order = pulls.flatMap((pull) => {
    const path = paths.get(pull.name);
    return path === undefined ? [] : [{ ...pull, path }];
  });
  return { passages, order, passings: passings(passages, order), unknown };
}
