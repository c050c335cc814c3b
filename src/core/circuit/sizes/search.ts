import { type Box, type Paths, pathsOf } from "./paths.js";
import { costOf, type Program, type Row } from "./program.js";
import { solveRows } from "./relaxation.js";
import { type Real, type Touching, touchingOf } from "./repair.js";

/** How far a search may go before it says `bounded`. */
export interface Effort {
  /** Longest list of partial choices. */
  readonly maxLabels: number;
  /** Parts of the choices looked at while proving against the true drops. */
  readonly maxBoxes: number;
}

/** True drop over limit for each row at a choice of options; 1 is at the limit, Infinity where the circuit collapses. */
export type TrueExcess = (choice: readonly number[]) => readonly number[];

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
 * optimum is a lower bound; where it also holds in truth it is the optimum. Otherwise the choices are split into boxes, best first:
 * a choice that fails for some gear excludes every choice with all of that gear's conductors no larger (more copper never raises a drop).
 * @param excessOf Undefined: the rows themselves are the truth.
 * @param monotone Whether more copper never raises any true drop; without that only the relaxation can prove anything.
 * @returns Undefined where no choice keeps the rows. The largest of everything must hold in truth.
 */
export function search(
  program: Program,
  effort: Effort,
  excessOf: TrueExcess | undefined,
  monotone: boolean,
): Found | undefined {
  return new Search(program, effort, excessOf, monotone).run();
}

/** A part of the choices, with the best there by the rows. */
interface Open {
  readonly box: Box;
  readonly best: Real;
  readonly rowPrice: Float64Array;
}

class Search {
  private readonly paths: Paths;
  private readonly touching: Touching;
  private readonly whole: Box;
  private found: Real | undefined;

  constructor(
    private readonly program: Program,
    private readonly effort: Effort,
    private readonly excessOf: TrueExcess | undefined,
    private readonly monotone: boolean,
  ) {
    this.paths = pathsOf(program);
    this.touching = touchingOf(program);
    const { options } = program;
    this.whole = { low: options.map(() => 0), high: options.map(({ cost }) => cost.length - 1) };
  }

  run(): Found | undefined {
    const { maxLabels } = this.effort;
    const below = Number.POSITIVE_INFINITY;
    const { best, bound, rowPrice } = solveRows(this.program, this.paths, this.touching, this.whole, {
      below,
      maxLabels,
    });
    if (!best) return undefined;
    if (!this.excessOf || this.holds(best.choice)) return this.answer(best, bound);
    this.tighten(best.choice, rowPrice);
    const found = this.found ?? this.largest();
    const exact = best.cost <= bound * (1 + costTolerance);
    if (found.cost <= bound * (1 + costTolerance) || !exact || !this.monotone)
      return this.answer(found, bound);
    return this.split({ box: this.whole, best, rowPrice });
  }

  private answer({ choice, cost }: Real, lowerBound: number): Found {
    return {
      choice,
      cost,
      lowerBound: Math.min(cost, lowerBound),
      proven: cost <= lowerBound * (1 + costTolerance),
    };
  }

  private largest(): Real {
    return { choice: this.whole.high, cost: costOf(this.program.options, this.whole.high) };
  }

  private excess(choice: readonly number[]): readonly number[] {
    return this.excessOf?.(choice) ?? [];
  }

  private holds(choice: readonly number[]): boolean {
    return this.excess(choice).every((excess) => excess <= 1);
  }

  /** A good choice that holds in truth: ask a little more of each row that failed, again and again; at worst everything large. */
  private tighten(start: readonly number[], rowPrice: Float64Array): void {
    this.offer(this.whole.high);
    const share = this.program.rows.map(() => 1);
    const { maxLabels } = this.effort;
    let choice: readonly number[] | undefined = start;
    for (let round = 0; round < 12 && choice; round += 1) {
      const excess = this.excess(choice);
      if (excess.every((value) => value <= 1)) return;
      excess.forEach((value, at) => {
        if (value > 1) share[at] = (share[at] ?? 1) * Math.min(value, 1.5) * (1 + 1e-6);
      });
      const rows = this.program.rows.map((row, at): Row => tightened(row, share[at] ?? 1));
      const below = this.found?.cost ?? Number.POSITIVE_INFINITY;
      const program = { ...this.program, rows };
      choice = solveRows(program, this.paths, this.touching, this.whole, { below, maxLabels, rowPrice }).best
        ?.choice;
      if (choice) this.offer(choice);
    }
  }

  private offer(choice: readonly number[]): void {
    const cost = costOf(this.program.options, choice);
    if (cost < (this.found?.cost ?? Number.POSITIVE_INFINITY) && this.holds(choice))
      this.found = { choice, cost };
  }

  private split(first: Open): Found {
    const open: Open[] = [first];
    let lowerBound = first.best.cost;
    for (let count = 0; count < this.effort.maxBoxes; count += 1) {
      open.sort((a, b) => b.best.cost - a.best.cost);
      const next = open.pop();
      if (!next) break;
      lowerBound = Math.max(lowerBound, next.best.cost);
      const limit = this.found?.cost ?? Number.POSITIVE_INFINITY;
      if (limit <= next.best.cost * (1 + costTolerance)) break;
      const excess = this.excess(next.best.choice);
      if (excess.every((value) => value <= 1)) {
        this.found = { choice: next.best.choice, cost: next.best.cost };
        break;
      }
      for (const box of this.larger(next, excess)) {
        const { maxLabels } = this.effort;
        const settings = { below: limit, maxLabels, rowPrice: next.rowPrice };
        const { best, bound, rowPrice } = solveRows(this.program, this.paths, this.touching, box, settings);
        if (!best && bound >= limit * (1 - costTolerance)) continue;
        if (!best || best.cost > bound * (1 + costTolerance))
          return this.answer(this.found ?? this.largest(), lowerBound);
        open.push({ box, best, rowPrice });
      }
      if (open.length === 0) lowerBound = this.found?.cost ?? lowerBound;
    }
    return this.answer(this.found ?? this.largest(), lowerBound);
  }

  /** The box without the choices known to fail: in each part one more group is larger than it was. */
  private larger({ box, best }: Open, excess: readonly number[]): Box[] {
    const worst = excess.reduce((at, value, index) => (value > (excess[at] ?? 0) ? index : at), 0);
    const own = (this.program.rows[worst]?.terms ?? []).map(({ group }) => group);
    const ownOnly = [...box.high];
    for (const group of own) ownOnly[group] = best.choice[group] ?? 0;
    const failsAnyway = (this.excess(ownOnly)[worst] ?? 0) > 1;
    const others = this.paths.order.filter((group) => !own.includes(group));
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

/** The row with its whole drop, the fixed part too, taken as `share` times as large. */
function tightened(row: Row, share: number): Row {
  return { ...row, slackV: (row.slackV + row.fixedV) / share - row.fixedV };
}
