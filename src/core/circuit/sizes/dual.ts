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
  /** Prices of the rows, to start from in a smaller box. */
  readonly rowPrice: Float64Array;
  /** The option of each group that is cheapest at these prices. */
  readonly choice: readonly number[];
}

/** The bound for given row prices (≥ 0): Σ of the cheapest priced options, less what the slack of the rows is worth. */
export function dualAt(program: Program, paths: Paths, box: Box, rowPrice: Float64Array): Dual {
  const perVolt = new Float64Array(paths.groupOf.length);
  let bound = 0;
  program.rows.forEach(({ slackV }, row) => {
    const start = paths.startOf[row] ?? 0;
    const price = rowPrice[row] ?? 0;
    perVolt[start] = (perVolt[start] ?? 0) + price;
    bound -= price * slackV;
  });
  const perOhmPerM = new Float64Array(program.options.length);
  for (let step = perVolt.length - 1; step > 0; step -= 1) {
    const next = paths.nextOf[step] ?? 0;
    const group = paths.groupOf[step] ?? 0;
    const price = perVolt[step] ?? 0;
    perVolt[next] = (perVolt[next] ?? 0) + price;
    perOhmPerM[group] = (perOhmPerM[group] ?? 0) + price * (paths.ampereMOf[step] ?? 0);
  }
  const leastPriced = new Float64Array(program.options.length);
  const choice = [...box.low];
  const priced = program.options.map(({ cost, ohmPerM }, group) => {
    const weight = perOhmPerM[group] ?? 0;
    const sums = Float64Array.from(cost, (own, option) => own + weight * (ohmPerM[option] ?? 0));
    let best = box.low[group] ?? 0;
    for (let option = best + 1; option <= (box.high[group] ?? 0); option += 1)
      if ((sums[option] ?? 0) < (sums[best] ?? 0)) best = option;
    choice[group] = best;
    leastPriced[group] = sums[best] ?? 0;
    bound += sums[best] ?? 0;
    return sums;
  });
  return { bound, priced, leastPriced, rowPrice, choice };
}

/**
 * Raises the bound by moving the prices along the rows that are over or under (subgradient steps of Polyak's length).
 * @param target Cost of a choice that is known, which no bound can pass.
 * @param each Sees every choice on the way; returns the cost of the best known one, a new target.
 */
export function raise(
  program: Program,
  paths: Paths,
  box: Box,
  start: Float64Array,
  rounds: number,
  target: number,
  each: (choice: readonly number[]) => number,
): Dual {
  let best = dualAt(program, paths, box, start);
  let now = best;
  let reach = 1;
  let stale = 0;
  let aim = target;
  const over = new Float64Array(program.rows.length);
  for (let round = 0; round < rounds; round += 1) {
    let square = 0;
    program.rows.forEach(({ slackV, terms }, row) => {
      let overV = -slackV;
      for (const { group, ampereM } of terms)
        overV += ampereM * (program.options[group]?.ohmPerM[now.choice[group] ?? 0] ?? 0);
      // a row that costs nothing and is kept does not pull
      over[row] = overV < 0 && (now.rowPrice[row] ?? 0) === 0 ? 0 : overV;
      square += (over[row] ?? 0) ** 2;
    });
    if (!(square > 0)) break;
    if (round % 8 === 7) aim = Math.min(aim, each(now.choice));
    const step = (reach * Math.max(aim - now.bound, aim * 1e-4)) / square;
    const rowPrice = now.rowPrice.map((price, row) => Math.max(0, price + step * (over[row] ?? 0)));
    now = dualAt(program, paths, box, rowPrice);
    if (now.bound > best.bound) {
      best = now;
      stale = 0;
    } else if (++stale >= 6) {
      reach /= 2;
      stale = 0;
      now = best;
    }
    if (best.bound >= aim * (1 - 1e-9)) break;
  }
  return best;
}
