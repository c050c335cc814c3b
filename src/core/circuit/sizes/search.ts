import { type Model, modelOf, wholeBox } from "./model.js";
import type { Box } from "./paths.js";
import type { Program } from "./program.js";
import { affordable, type Relaxed, solveRows } from "./relaxation.js";
import type { Real } from "./repair.js";
import { holdsAt, realChoice, type Truth } from "./truth.js";

/** How far a search may go before it says `bounded`. */
export interface Effort {
  /** Longest list of partial choices. */
  readonly maxLabels: number;
  /** Parts of the choices looked at while proving against the true drops. */
  readonly maxBoxes: number;
}

export interface Found {
  readonly choice: readonly number[];
  readonly cost: number;
  readonly lowerBound: number;
  readonly proven: boolean;
}

/** Costs nearer than this share are the same. */
const costTolerance = 1e-9;

/**
 * The cheapest options that keep every row in truth. The rows are a relaxation (their currents are at most the true ones), so their
 * optimum is a lower bound; where it also holds in truth it is the optimum. Otherwise a real choice is found, the sizes it leaves
 * affordable give sharper rows, and what gap is left is closed by splitting the choices into boxes, best first: a choice that fails for some
 * gear excludes every choice with all of that gear's conductors no larger (more copper never raises a drop).
 * @param truth Undefined: the rows themselves are the truth.
 * @returns Undefined where no choice keeps the rows. The largest of everything must hold in truth.
 */
export function search(program: Program, effort: Effort, truth: Truth | undefined): Found | undefined {
  const model = modelOf(program);
  const box = wholeBox(program);
  const below = Number.POSITIVE_INFINITY;
  const first = solveRows(model, box, { below, maxLabels: effort.maxLabels });
  const { best, bound, rowPrice } = first;
  if (!best) return undefined;
  if (!truth || holdsAt(truth, best.choice)) return answer(best, bound);
  const real = realChoice(model, truth, box, best.choice, rowPrice, effort.maxLabels);
  if (!truth.monotone) return answer(real, bound);
  return new Proof(effort, truth, real).run({ model, box, best, bound, rowPrice });
}

function answer({ choice, cost }: Real, lowerBound: number): Found {
  const proven = cost <= lowerBound * (1 + costTolerance);
  return { choice, cost, lowerBound: Math.min(cost, lowerBound), proven };
}

/** A part of the choices, with the best there by its rows. */
interface Part {
  readonly model: Model;
  readonly box: Box;
  readonly best: Real;
  readonly bound: number;
  readonly rowPrice: Float64Array;
}

class Proof {
  constructor(
    private readonly effort: Effort,
    private readonly truth: Truth,
    private found: Real,
  ) {}

  run(whole: Part): Found {
    const first = this.sharpened(whole, 5);
    const open = first ? [first] : [];
    for (let left = this.effort.maxBoxes; left > 0; ) {
      open.sort((a, b) => b.bound - a.bound);
      const next = open.at(-1);
      if (!next || this.closed(next.bound)) return answer(this.found, this.found.cost);
      const excess = this.truth.excessAt(next.best.choice);
      // a best that holds but is not known to be the best of its part leaves nothing to split by
      if (excess.every((value) => value <= 1)) break;
      open.pop();
      for (const box of this.larger(next, excess)) {
        // not looked at any more: it stays open with what is known of the whole
        if (left === 0) {
          open.push({ ...next, box });
          continue;
        }
        left -= 1;
        const part = this.solved(next.model, box, next.rowPrice);
        const sharp = part && this.sharpened(part, 1);
        if (sharp) open.push(sharp);
      }
    }
    return answer(
      this.found,
      open.reduce((least, { bound }) => Math.min(least, bound), this.found.cost),
    );
  }

  private closed(bound: number): boolean {
    return bound >= this.found.cost * (1 - costTolerance);
  }

  /** The best of a part by its rows; undefined where nothing there costs less than what is found, or what is found is its best. */
  private solved(model: Model, box: Box, rowPrice: Float64Array): Part | undefined {
    const settings = { below: this.found.cost, maxLabels: this.effort.maxLabels, rowPrice };
    const relaxed: Relaxed = solveRows(model, box, settings);
    const { best, bound } = relaxed;
    if (best && holdsAt(this.truth, best.choice)) this.found = best;
    if (!best || this.closed(bound)) {
      // nothing under the found cost, or not known: then the part stays open with what is known
      return this.closed(bound)
        ? undefined
        : { model, box, best: this.found, bound, rowPrice: relaxed.rowPrice };
    }
    return { model, box, best, bound, rowPrice: relaxed.rowPrice };
  }

  /** The part with rows for the largest sizes that are still affordable, again and again while that helps. */
  private sharpened(given: Part, rounds: number): Part | undefined {
    const { rowsAt } = this.truth;
    let part = given;
    for (let round = 0; round < rounds && rowsAt; round += 1) {
      const box = affordable(part.model, part.box, part.rowPrice, this.found.cost);
      if (!box) return undefined;
      if (round > 0 && box.high.every((option, group) => option === part.box.high[group])) break;
      const model = modelOf({ ...part.model.program, rows: rowsAt(box.high) });
      const next = this.solved(model, box, part.rowPrice);
      if (!next) return undefined;
      part = next;
    }
    return part;
  }

  /** The box without the choices known to fail: in each part one more group is larger than it was. */
  private larger({ model, box, best }: Part, excess: readonly number[]): Box[] {
    const worst = excess.reduce((at, value, index) => (value > (excess[at] ?? 0) ? index : at), 0);
    const own = (model.program.rows[worst]?.terms ?? []).map(({ group }) => group);
    const ownOnly = [...box.high];
    for (const group of own) ownOnly[group] = best.choice[group] ?? 0;
    const failsAnyway = (this.truth.excessAt(ownOnly)[worst] ?? 0) > 1;
    const others = model.paths.order.filter((group) => !own.includes(group));
    const groups = failsAnyway ? own : [...own, ...others];
    const parts: Box[] = [];
    const high = [...box.high];
    for (const group of groups) {
      const chosen = best.choice[group] ?? 0;
      if (chosen < (high[group] ?? 0)) {
        const low = [...box.low];
        low[group] = chosen + 1;
        parts.push({ low, high: [...high] });
      }
      high[group] = chosen;
    }
    return parts;
  }
}
