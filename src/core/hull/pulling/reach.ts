import { reaching } from "../../reference/reaching.js";
import type { HullProblem } from "../problem.js";
import { type Point, straightM } from "../vector.js";

/** An opening one can put an arm through. */
export interface Opening {
  readonly name: string;
  readonly at: Point;
  /** Smaller clear size [m]. */
  readonly clearM: number;
  /** How far the owner's arm reaches through it, where measured [m]. */
  readonly reachM?: number;
  /** Space behind it: holes in the same space can be reached. */
  readonly space: string;
}

export interface HoleBehind {
  readonly name: string;
  /** Back of the hole. */
  readonly at: Point;
  readonly space: string;
  /** Room behind the face there [m]. */
  readonly roomM?: number;
}

/** Which opening serves a hole, and how far the arm goes. */
export interface Reach {
  readonly hole: string;
  /** Every opening that reaches it, nearest first. */
  readonly through: readonly {
    readonly opening: string;
    readonly distanceM: number;
    readonly spareM: number;
  }[];
  readonly problems: readonly HullProblem[];
}

/** Reach through an opening: the owner's measure, else by what part of the arm goes in [m]. */
function reachThroughM(opening: Opening): number {
  if (!(opening.clearM > 0))
    throw new RangeError(`${opening.name} must be > 0 m wide, got ${opening.clearM}`);
  if (opening.reachM !== undefined) return opening.reachM;
  if (opening.clearM >= reaching.armOpeningM) return reaching.armM;
  return opening.clearM >= reaching.forearmOpeningM ? reaching.forearmM : 0;
}

/**
 * Which openings reach which holes. The arm goes straight; a hole without room for a hand behind it is told.
 * @throws RangeError if an opening has no size.
 */
export function reaches(openings: readonly Opening[], holes: readonly HoleBehind[]): Reach[] {
  return holes.map((hole): Reach => {
    const tried = openings
      .filter(({ space }) => space === hole.space)
      .map((opening) => {
        const distanceM = straightM(opening.at, hole.at);
        return { opening: opening.name, distanceM, spareM: reachThroughM(opening) - distanceM };
      })
      .sort((a, b) => a.distanceM - b.distanceM);
    const through = tried.filter(({ spareM }) => spareM >= 0);
    const best = tried.reduce<(typeof tried)[number] | undefined>(
      (a, b) => (a && a.spareM >= b.spareM ? a : b),
      undefined,
    );
    const problems: HullProblem[] = [];
    if (through.length === 0)
      problems.push({
        problem: "cannot be reached",
        at: hole.name,
        ...(best
          ? {
              with: [best.opening],
              figure: best.distanceM,
              limit: best.distanceM + best.spareM,
              unit: "m" as const,
            }
          : {}),
      });
    if (hole.roomM !== undefined && !(hole.roomM >= reaching.handRoomM))
      problems.push({
        problem: "no room behind",
        at: hole.name,
        figure: hole.roomM,
        limit: reaching.handRoomM,
        unit: "m",
        terms: { for: "hand" },
      });
    return { hole: hole.name, through, problems };
  });
}
