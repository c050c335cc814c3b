import { reaching } from "../../reference/reaching.js";
import type { HullProblem } from "../problem.js";
import type { Passage } from "./drawn-line.js";

/** A cable to be pulled. */
export interface Pull {
  readonly name: string;
  readonly cableM: number;
  /** Largest thing on the end that goes first: terminal, plug, the knot excepted [m]. */
  readonly endM: number;
  readonly lengthM: number;
  /** Passages it goes through, by name. */
  readonly through: readonly string[];
}

/** What must go through one passage. */
export interface Passing {
  readonly passage: string;
  /** The largest thing, and whose it is. */
  readonly largest: string;
  readonly largestM: number;
  /** Area of all cables in it at the end, as a share of its own; undefined where its size is not known. */
  readonly fillShare?: number;
  readonly problems: readonly HullProblem[];
}

/**
 * Order of pulls: the largest ends first, while passages are still empty; among equals the longest way first, since it is the hardest
 * to lead and the others can follow it.
 */
export function pullOrder(pulls: readonly Pull[]): Pull[] {
  return pulls.toSorted(
    (a, b) =>
      b.endM - a.endM ||
      b.through.length - a.through.length ||
      b.lengthM - a.lengthM ||
      a.name.localeCompare(b.name, "en"),
  );
}

/**
 * Follows the pulls in order through each passage: does each end still pass beside the cables already there, and do all cables fit?
 * @throws RangeError if a size is not above zero, or a pull names an unknown passage.
 */
export function passings(passages: readonly Passage[], ordered: readonly Pull[]): Passing[] {
  for (const pull of ordered) {
    if (!(pull.cableM > 0 && pull.endM > 0))
      throw new RangeError(`${pull.name} must have sizes > 0 m, got ${pull.cableM} and ${pull.endM}`);
    const lost = pull.through.find((name) => !passages.some((one) => one.name === name));
    if (lost !== undefined) throw new RangeError(`${pull.name} goes through ${lost}, which is not a passage`);
  }
  return passages.flatMap((passage): Passing[] => {
    const through = ordered.filter((pull) => pull.through.includes(passage.name));
    const [first] = through;
    if (first === undefined) return [];
    const largest = through.reduce((a, b) => (sizeM(b) > sizeM(a) ? b : a), first);
    const problems: HullProblem[] = [];
    let area = 0;
    for (const pull of through) {
      // round cables packed side by side take a ring about this wide of the passage
      const taken = area > 0 ? Math.sqrt(area) : 0;
      const freeM = passage.clearM === undefined ? Number.POSITIVE_INFINITY : passage.clearM - taken;
      if (sizeM(pull) > freeM)
        problems.push({
          problem: "does not pass",
          at: pull.name,
          with: [passage.name],
          figure: sizeM(pull),
          limit: Math.max(0, freeM),
          unit: "m",
        });
      area += pull.cableM ** 2;
    }
    const fillShare = passage.clearM === undefined ? undefined : area / passage.clearM ** 2;
    if (fillShare !== undefined && fillShare > reaching.fillShare)
      problems.push({
        problem: "does not pass",
        at: passage.name,
        figure: fillShare,
        limit: reaching.fillShare,
        unit: "",
        terms: { what: "fill" },
      });
    return [
      {
        passage: passage.name,
        largest: largest.name,
        largestM: sizeM(largest),
        ...(fillShare === undefined ? {} : { fillShare }),
        problems,
      },
    ];
  });
}

function sizeM(pull: Pull): number {
  return Math.max(pull.cableM, pull.endM) + reaching.knotM;
}
