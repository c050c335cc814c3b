import type { Dual } from "./dual.js";
import { type Factor, Joiner, pricedCost } from "./joiner.js";
import { frontier, join, type Label, type Made, readChoice, staircase } from "./labels.js";
import { type Box, type Paths, restOf } from "./paths.js";
import type { Program } from "./program.js";
import { type Thinning, thin } from "./thin.js";

/** What is known before an elimination, so that it need not keep what cannot win. */
export interface Known {
  readonly dual: Dual;
  /** Only choices that cost less than this are of interest. */
  readonly below: number;
  /** From an earlier relaxed elimination in the same box. */
  readonly outside?: Float64Array;
}

export interface Eliminated {
  /** The best choice that costs less than `below`; undefined: none was found. */
  readonly best: { readonly cost: number; readonly choice: readonly number[] } | undefined;
  /** Lists grew too long and were cut on the side the thinning says. */
  readonly thinned: boolean;
  /** For a relaxed elimination: what everything apart from the part of the circuit a group closes must cost at least, by group. */
  readonly outside: Float64Array;
}

/**
 * The cheapest options that keep every row, by deciding one group after the other (dynamic programming with Pareto lists).
 * All limits whose rest of the way is the same share one figure, the worst of them, so that in a branching circuit each list has two
 * columns: cost, and volts needed. A partial choice whose cost, with its volts priced, cannot stay under `below` is left out. Exact
 * unless thinned.
 */
export function eliminate(
  program: Program,
  paths: Paths,
  box: Box,
  thinning: Thinning,
  known: Known,
): Eliminated {
  return new Elimination(program, paths, box, thinning, known).run();
}

class Elimination {
  private readonly waiting = new Map<number, Factor[]>();
  private readonly joiner: Joiner;
  private thinned = false;
  private cost = 0;
  private made: Made;
  /** Priced cost that all choices share so far: of lists, their least; of groups still open, theirs. */
  private bound: number;
  private readonly raisedBy: Float64Array;
  private readonly leastOf: Float64Array;
  private readonly parentOf: Int32Array;

  constructor(
    private readonly program: Program,
    private readonly paths: Paths,
    private readonly box: Box,
    private readonly thinning: Thinning,
    private readonly known: Known,
  ) {
    const count = program.options.length;
    this.bound = known.dual.bound;
    this.raisedBy = new Float64Array(count);
    this.leastOf = new Float64Array(count);
    this.parentOf = new Int32Array(count).fill(-1);
    this.joiner = new Joiner(paths, restOf(program, paths, box), (labels) => this.cut(labels));
  }

  run(): Eliminated {
    const holds = this.begin() && this.paths.order.every((group) => this.decide(group));
    const outside = this.outside();
    if (!holds) return { best: undefined, thinned: this.thinned, outside };
    const choice = [...this.box.low];
    readChoice(this.made, choice);
    return { best: { cost: this.cost, choice }, thinned: this.thinned, outside };
  }

  /** One factor for each first step, with the tightest of the rows that start there. */
  private begin(): boolean {
    const need = new Map<number, number>();
    const price = new Map<number, number>();
    this.program.rows.forEach(({ slackV }, row) => {
      const start = this.paths.startOf[row] ?? 0;
      need.set(start, Math.max(need.get(start) ?? Number.NEGATIVE_INFINITY, -slackV));
      price.set(start, (price.get(start) ?? 0) + (this.known.dual.rowPrice[row] ?? 0));
    });
    this.bound = this.known.dual.leastPriced.reduce((sum, value) => sum + value, 0);
    for (const [step, needV] of need) {
      if (!this.joiner.holds(needV, step)) return false;
      if (step === 0) continue;
      const perVolt = price.get(step) ?? 0;
      const least = needV * perVolt;
      this.bound += least;
      const labels = [{ cost: 0, needs: [needV], made: undefined }];
      this.wait({ steps: [step], perVolt: [perVolt], labels, least, by: [] });
    }
    return true;
  }

  private wait(factor: Factor): void {
    for (const step of factor.steps) {
      const list = this.waiting.get(step);
      if (list) list.push(factor);
      else this.waiting.set(step, [factor]);
    }
  }

  private decide(group: number): boolean {
    const { dual, below, outside } = this.known;
    const options = this.program.options[group];
    const priced = dual.priced[group];
    const low = this.box.low[group] ?? 0;
    const high = this.box.high[group] ?? 0;
    const factors = this.take(group);
    if (!options || !priced) return false;
    if (factors.length === 0) {
      this.cost += options.cost[low] ?? 0;
      return true;
    }
    const inner = factors.reduce((sum, { least }) => sum + least, dual.leastPriced[group] ?? 0);
    const room = below - Math.max(this.bound - inner, outside?.[group] ?? Number.NEGATIVE_INFINITY);
    const targets = this.joiner.targets(factors, group);
    const moves = this.joiner.moves(this.joiner.sameStep(factors), group);
    const all: Label[] = [];
    for (let option = low; option <= high; option += 1) {
      if (inner + (priced[option] ?? 0) - (dual.leastPriced[group] ?? 0) > room) continue;
      const cost = options.cost[option] ?? 0;
      for (const label of this.joiner.joined(moves, options.ohmPerM[option] ?? 0, targets.steps)) {
        if (cost + pricedCost(label, targets.perVolt) > room) continue;
        all.push({ cost: label.cost + cost, needs: label.needs, made: { group, option, rest: label.made } });
      }
    }
    const kept = this.cut(targets.steps.length > 1 ? frontier(all) : staircase(all));
    const cheapest = kept[0];
    if (!cheapest) return false;
    const least = kept.reduce(
      (min, label) => Math.min(min, pricedCost(label, targets.perVolt)),
      Number.POSITIVE_INFINITY,
    );
    for (const { by } of factors) for (const child of by) this.parentOf[child] = group;
    this.leastOf[group] = least;
    this.raisedBy[group] = least - inner;
    this.bound += least - inner;
    if (targets.steps.length > 0) this.wait({ ...targets, labels: kept, least, by: [group] });
    else {
      this.cost += cheapest.cost;
      this.made = join(this.made, cheapest.made);
    }
    return true;
  }

  /** Everything apart from what a group closes, without what the groups further in added (they saw that part too). */
  private outside(): Float64Array {
    const outside = new Float64Array(this.program.options.length).fill(Number.NEGATIVE_INFINITY);
    const further = new Float64Array(this.program.options.length);
    for (const group of [...this.paths.order].reverse()) {
      const parent = this.parentOf[group] ?? -1;
      if (parent >= 0) further[group] = (further[parent] ?? 0) + (this.raisedBy[parent] ?? 0);
      outside[group] = this.bound - (this.leastOf[group] ?? 0) - (further[group] ?? 0);
    }
    return outside;
  }

  /** Takes the factors that wait at this group. */
  private take(group: number): Factor[] {
    const found = new Set<Factor>();
    for (const step of this.paths.stepsOf[group] ?? []) {
      for (const factor of this.waiting.get(step) ?? []) found.add(factor);
      this.waiting.delete(step);
    }
    for (const factor of found) {
      if (factor.steps.length < 2) continue;
      for (const step of factor.steps) {
        const list = this.waiting.get(step);
        const at = list?.indexOf(factor) ?? -1;
        if (list && at >= 0) list.splice(at, 1);
      }
    }
    return [...found];
  }

  private cut(labels: Label[]): Label[] {
    const kept = thin(labels, this.thinning);
    if (kept !== labels) this.thinned = true;
    return kept;
  }
}
