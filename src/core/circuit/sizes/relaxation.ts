import { type Dual, Pricing } from "./dual.js";
import { eliminate } from "./eliminate.js";
import type { Model } from "./model.js";
import type { Box } from "./paths.js";
import { type Real, repair } from "./repair.js";

/** What is known of the rows within a box: the best choice found, and what every choice there costs at least. */
export interface Relaxed {
  /** Undefined: no choice there costs less than asked for. */
  readonly best: Real | undefined;
  readonly bound: number;
  readonly rowPrice: Float64Array;
}

const shortList = 48;
const costTolerance = 1e-9;

/**
 * The cheapest choice in a box that keeps all rows and costs less than `below`: prices on volts and a repaired choice bracket it, options
 * that cannot win are struck, and an elimination with short lists, a relaxed one for bounds and a full one close the gap, as far as needed.
 */
export function solveRows(
  model: Model,
  given: Box,
  settings: { readonly below: number; readonly maxLabels: number; readonly rowPrice?: Float64Array },
): Relaxed {
  const { program, paths, touching } = model;
  const start = settings.rowPrice ?? new Float64Array(program.rows.length);
  const box = raisedLow(model, given);
  if (!box) return { best: undefined, bound: Number.POSITIVE_INFINITY, rowPrice: start };
  let best: Real | undefined;
  const offer = (choice: readonly number[]): number => {
    const real = repair(program, touching, box, choice);
    if (real && real.cost < (best?.cost ?? Number.POSITIVE_INFINITY)) best = real;
    return best?.cost ?? Number.POSITIVE_INFINITY;
  };
  const target = offer(box.high);
  const rounds = settings.rowPrice ? 24 : 120;
  const dual = new Pricing(program, paths, box).raise(start, rounds, target, offer);
  offer(dual.choice);
  const { rowPrice } = dual;
  const answer = (bound: number): Relaxed => {
    const cost = best?.cost ?? Number.POSITIVE_INFINITY;
    return cost < settings.below
      ? { best, bound: Math.min(bound, cost), rowPrice }
      : { best: undefined, bound, rowPrice };
  };
  const limit = () => Math.min(settings.below, best?.cost ?? Number.POSITIVE_INFINITY);
  const closed = (bound: number) => bound >= limit() * (1 - costTolerance);
  if (closed(dual.bound)) return answer(dual.bound);

  const look = (
    side: "keep" | "relax",
    maxLabels: number,
    priced: Dual,
    within: Box,
    outside?: Float64Array,
  ) =>
    eliminate(
      program,
      paths,
      within,
      { side, maxLabels },
      { dual: priced, below: limit(), ...(outside ? { outside } : {}) },
    );
  const narrow = struck(box, dual, limit());
  const priced = new Pricing(program, paths, narrow).at(rowPrice);
  const quick = look("keep", shortList, priced, narrow);
  if (quick.best && quick.best.cost < limit()) best = quick.best;
  if (!quick.thinned) return answer(limit());

  const loose = look("relax", shortList, priced, narrow);
  if (!loose.thinned && loose.best && loose.best.cost < limit()) best = loose.best;
  const bound = loose.best ? Math.min(loose.best.cost, limit()) : limit();
  if (closed(bound)) return answer(bound);
  const full = look("keep", settings.maxLabels, priced, narrow, loose.outside);
  if (full.best && full.best.cost < limit()) best = full.best;
  return answer(full.thinned ? Math.max(bound, dual.bound) : limit());
}

/** The box without options that break a row even with everything else at its largest; undefined: some row cannot be kept. */
function raisedLow({ program: { options, rows }, touching }: Model, { low, high }: Box): Box | undefined {
  const roundingV = 1e-11;
  const spareV: number[] = [];
  for (const { slackV, terms } of rows) {
    let leftV = slackV;
    for (const { group, ampereM } of terms)
      leftV -= ampereM * (options[group]?.ohmPerM[high[group] ?? 0] ?? 0);
    if (!(leftV >= -roundingV)) return undefined;
    spareV.push(leftV);
  }
  const raised = [...low];
  for (let group = 0; group < raised.length; group += 1) {
    const ohmPerM = options[group]?.ohmPerM ?? [];
    const most = high[group] ?? 0;
    // the least that each of its rows lets it have
    let mostOhmPerM = Number.POSITIVE_INFINITY;
    for (const { row, ampereM } of touching[group] ?? [])
      if (ampereM > 0) mostOhmPerM = Math.min(mostOhmPerM, ((spareV[row] ?? 0) + roundingV) / ampereM);
    let option = raised[group] ?? 0;
    while (option < most && (ohmPerM[option] ?? 0) - (ohmPerM[most] ?? 0) > mostOhmPerM) option += 1;
    raised[group] = option;
  }
  return { low: raised, high };
}

/** The part of a box that can hold a choice that costs less than `below`, by the prices of the rows given; undefined: none can. */
export function affordable(
  { program, paths }: Model,
  box: Box,
  rowPrice: Float64Array,
  below: number,
): Box | undefined {
  const dual = new Pricing(program, paths, box).at(rowPrice);
  return dual.bound < below ? struck(box, dual, below) : undefined;
}

/** The box without options at its edges that, priced, cannot be part of a choice under `below`. */
function struck({ low, high }: Box, dual: Dual, below: number): Box {
  const room = below - dual.bound;
  const narrow = { low: [...low], high: [...high] };
  for (let group = 0; group < low.length; group += 1) {
    const priced = dual.priced[group] ?? [];
    const least = dual.leastPriced[group] ?? 0;
    const [from, to] = [low[group] ?? 0, high[group] ?? 0];
    let option = from;
    while (option < to && !((priced[option] ?? 0) - least <= room)) option += 1;
    narrow.low[group] = option;
    option = to;
    while (option > from && !((priced[option] ?? 0) - least <= room)) option -= 1;
    narrow.high[group] = option;
  }
  return narrow;
}
