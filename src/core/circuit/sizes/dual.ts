import type { Box, Paths } from "./paths.js";
import type { Program } from "./program.js";

/** Prices on the rows' volts, and what each option costs with its drop priced in. */
export interface Dual {
  /** A lower bound on the cost of every choice in the box. */
  readonly bound: number;
  /** Of each group: cost of each option with its drop priced in. */
  readonly priced: readonly Float64Array[];
  /** Least of `priced` in the box, by group. */
  readonly leastPriced: Float64Array;
  readonly rowPrice: Float64Array;
  /** The option of each group that is cheapest at these prices. */
  readonly choice: readonly number[];
}

/**
 * Bounds by pricing the rows (Lagrange): Σ of the cheapest priced options, less what the slack of the rows is worth. One for a
 * program and a box; the arrays are kept from round to round.
 */
export class Pricing {
  private readonly perVolt: Float64Array;
  private readonly perOhmPerM: Float64Array;
  private readonly leastPriced: Float64Array;
  private readonly choice: number[];
  private readonly over: Float64Array;

  constructor(
    private readonly program: Program,
    private readonly paths: Paths,
    private readonly box: Box,
  ) {
    this.perVolt = new Float64Array(paths.groupOf.length);
    this.perOhmPerM = new Float64Array(program.options.length);
    this.leastPriced = new Float64Array(program.options.length);
    this.choice = [...box.low];
    this.over = new Float64Array(program.rows.length);
  }

  /** The bound at these prices (≥ 0), with all that follows from it. */
  at(rowPrice: Float64Array): Dual {
    const bound = this.bound(rowPrice);
    const priced = this.program.options.map(({ cost, ohmPerM }, group) => {
      const weight = this.perOhmPerM[group] ?? 0;
      const sums = new Float64Array(cost.length);
      for (let option = 0; option < cost.length; option += 1)
        sums[option] = (cost[option] ?? 0) + weight * (ohmPerM[option] ?? 0);
      return sums;
    });
    return { bound, priced, leastPriced: this.leastPriced.slice(), rowPrice, choice: [...this.choice] };
  }

  /**
   * Raises the bound by moving the prices along the rows that are over or under (subgradient steps of Polyak's length).
   * @param target Cost of a choice that is known, which no bound can pass.
   * @param offer Sees a choice now and then; returns the cost of the best known one, a new target.
   */
  raise(
    start: Float64Array,
    rounds: number,
    target: number,
    offer: (choice: readonly number[]) => number,
  ): Dual {
    let best: Float64Array = start;
    let bestBound = Number.NEGATIVE_INFINITY;
    let aim = target;
    let reach = 1;
    let stale = 0;
    let price: Float64Array = start.slice();
    for (let round = 0; ; round += 1) {
      const bound = this.bound(price);
      if (bound > bestBound) {
        if (bound - bestBound > 1e-4 * (aim - bound)) stale = 0;
        best = price;
        bestBound = bound;
      } else stale += 1;
      if (round >= rounds || bestBound >= aim * (1 - 1e-9) || reach < 0.02) break;
      if (round % 16 === 15) aim = Math.min(aim, offer(this.choice));
      const square = this.pull(price);
      if (!(square > 0)) break;
      if (stale >= 5) {
        reach /= 2;
        stale = 0;
        price = best;
        this.bound(price);
        this.pull(price);
      }
      price = this.moved(price, (reach * Math.max(aim - bound, aim * 1e-4)) / square);
    }
    return this.at(best);
  }

  private moved(price: Float64Array, step: number): Float64Array {
    const moved = new Float64Array(price.length);
    for (let row = 0; row < price.length; row += 1)
      moved[row] = Math.max(0, (price[row] as number) + step * (this.over[row] as number));
    return moved;
  }

  /** How far each row is over at the present choice; a row that costs nothing and is kept does not pull. */
  private pull(price: Float64Array): number {
    const { rows, options } = this.program;
    let square = 0;
    for (let row = 0; row < rows.length; row += 1) {
      const own = rows[row];
      if (!own) continue;
      let overV = -own.slackV;
      for (const { group, ampereM } of own.terms)
        overV += ampereM * (options[group]?.ohmPerM[this.choice[group] ?? 0] ?? 0);
      if (overV < 0 && !((price[row] as number) > 0)) overV = 0;
      this.over[row] = overV;
      square += overV * overV;
    }
    return square;
  }

  private bound(price: Float64Array): number {
    const { paths, perVolt, perOhmPerM, box } = this;
    const { rows, options } = this.program;
    perVolt.fill(0);
    perOhmPerM.fill(0);
    let bound = 0;
    for (let row = 0; row < rows.length; row += 1) {
      const start = paths.startOf[row] as number;
      perVolt[start] = (perVolt[start] as number) + (price[row] as number);
      bound -= (price[row] as number) * (rows[row]?.slackV ?? 0);
    }
    for (let step = perVolt.length - 1; step > 0; step -= 1) {
      const worth = perVolt[step] as number;
      if (worth === 0) continue;
      const next = paths.nextOf[step] as number;
      const group = paths.groupOf[step] as number;
      perVolt[next] = (perVolt[next] as number) + worth;
      perOhmPerM[group] = (perOhmPerM[group] as number) + worth * (paths.ampereMOf[step] as number);
    }
    for (let group = 0; group < options.length; group += 1) {
      const own = options[group];
      if (!own) continue;
      const { cost, ohmPerM } = own;
      const weight = perOhmPerM[group] as number;
      let best = box.low[group] as number;
      let least = (cost[best] as number) + weight * (ohmPerM[best] as number);
      for (let option = best + 1; option <= (box.high[group] as number); option += 1) {
        const sum = (cost[option] as number) + weight * (ohmPerM[option] as number);
        if (sum < least) {
          least = sum;
          best = option;
        }
      }
      this.choice[group] = best;
      this.leastPriced[group] = least;
      bound += least;
    }
    return bound;
  }
}
