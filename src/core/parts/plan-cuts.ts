import type { StockWire, WireOffer } from "../plan/model/layout.js";
import type { Plan } from "../plan/model/plan.js";
import type { Money } from "../quantity/money.js";
import { oldWireEnd } from "../reference/consumables.js";
import { inComparableMoney } from "./cuts/coarse-money.js";
import { type WireLabel, wireLabels } from "./cuts/labels.js";
import { solveCuts } from "./cuts/solve-cuts.js";
import type { CutOptions, CutPlan, CutProblem, CutRequest, SoldByLength, StockLength } from "./cuts/types.js";
import { cuttingUnitMm, inMillimetres, inUnits } from "./cuts/units.js";
import type { WireKind } from "./wire-kinds.js";

/** The cut list of one kind of wire. */
export interface CutFigures extends WireKind {
  /** Undefined: the pieces cannot be had from stock and what is sold. */
  readonly plan?: CutPlan;
  readonly problems: readonly CutProblem[];
  /** `priced`: everything bought has a price. `unpriced`: some has none. `not sold`: no price list has this wire, so it is bought by the metre or foot. */
  readonly prices: "priced" | "unpriced" | "not sold";
  /** Lines of `stock` it is cut from, by the ids of the lengths: `stock 2` is the second. */
  readonly price?: Money;
}

export interface CutsFigures {
  readonly kinds: readonly CutFigures[];
  readonly labels: readonly WireLabel[];
}

const millimetresPerFoot = 304.8;

/** What to cut from what, kind by kind, and the flags for both ends of every piece. */
export function planCuts(plan: Plan, kinds: readonly WireKind[], options: CutOptions = {}): CutsFigures {
  const currency = plan.wireOffers.find(({ price }) => price !== undefined)?.price?.currency;
  const stock = stockByKind(plan.stockWire, kinds);
  return {
    kinds: kinds.map((kind) => {
      const offers = plan.wireOffers.filter((offer) => matches(offer, kind));
      return cutFigures(plan, kind, stock.get(kind.kind) ?? [], offers, currency, options);
    }),
    labels: wireLabels(kinds.flatMap(({ pieces }) => pieces)),
  };
}

function cutFigures(
  plan: Plan,
  kind: WireKind,
  onHand: readonly StockLength[],
  offers: readonly WireOffer[],
  currency: string | undefined,
  options: CutOptions,
): CutFigures {
  const sold = spools(offers, currency);
  const priced = cheapestMetered(offers, currency);
  const unlisted = priced === undefined && sold.length === 0;
  const metered = unlisted ? anyLength(plan) : priced;
  const request: CutRequest = {
    kind: kind.kind,
    pieces: kind.pieces.map(({ piece, lengthMm }) => ({ id: piece, lengthMm })),
    stock: [...onHand, ...sold],
    ...(metered === undefined ? {} : { soldByLength: metered }),
  };
  const unitMm = cuttingUnitMm(plan.shows.lengths, metered?.stepMm);
  const solve = (asked: CutRequest) =>
    inMillimetres(
      inComparableMoney(inUnits(asked, unitMm), (comparable) => solveCuts(comparable, options)),
      unitMm,
    );
  const first = solve(request);
  const tooLong = new Set(
    first.ok
      ? []
      : first.problems.flatMap((one) => (one.problem === "longer-than-any-length" ? [one.piece] : [])),
  );
  // What can be cut is cut: the pieces that no length holds are named.
  const answer =
    tooLong.size === 0
      ? first
      : solve({ ...request, pieces: request.pieces.filter(({ id }) => !tooLong.has(id)) });
  const problems = [
    ...(first.ok ? [] : first.problems),
    ...(answer.ok || tooLong.size === 0 ? [] : answer.problems),
  ];
  if (!answer.ok) return { ...kind, problems, prices: "unpriced" };
  const bought = answer.plan.lengths.filter(({ source }) => source === "new" || source === "by length");
  const unpriced = new Set(
    answer.plan.problems.flatMap((one) => (one.problem === "missing-price" ? [one.stock] : [])),
  );
  const prices =
    unlisted && bought.length > 0
      ? "not sold"
      : bought.some((one) => unpriced.has(one.stock))
        ? "unpriced"
        : "priced";
  return {
    ...kind,
    plan: answer.plan,
    problems,
    prices,
    ...(prices === "priced" && bought.length > 0 && currency !== undefined
      ? { price: { currency, minor: answer.plan.total.priceMinor } }
      : {}),
  };
}

const inMm = (lengthM: number): number => lengthM * 1000;

function spools(offers: readonly WireOffer[], currency: string | undefined): StockLength[] {
  return offers.flatMap((offer, index): StockLength[] => {
    if (offer.sold !== "spool") return [];
    const spool = {
      id: `spool ${index + 1}`,
      lengthMm: inMm(offer.lengthM),
      source: "new",
      count: "any",
    } as const;
    if (!(spool.lengthMm > 0)) return [];
    return offer.price === undefined || offer.price.currency !== currency
      ? [spool]
      : [{ ...spool, priceMinor: offer.price.minor }];
  });
}

function cheapestMetered(
  offers: readonly WireOffer[],
  currency: string | undefined,
): SoldByLength | undefined {
  let best: SoldByLength | undefined;
  for (const offer of offers) {
    if (offer.sold !== "by length" || offer.price.currency !== currency) continue;
    const stepMm = inMm(offer.stepM);
    const sold = { id: "by length", stepMm, pricePerStepMinor: offer.price.minor };
    if (best !== undefined && sold.pricePerStepMinor / stepMm >= best.pricePerStepMinor / best.stepMm)
      continue;
    best = offer.maxM === undefined ? sold : { ...sold, maxMm: Math.max(stepMm, inMm(offer.maxM)) };
  }
  return best;
}

/** Wire no price list has: so many metres or feet of it, each dearer than anything on hand. */
function anyLength({ shows }: Plan): SoldByLength {
  const stepMm = shows.lengths === "inches" ? millimetresPerFoot : 1000;
  return { id: "by length", stepMm, pricePerStepMinor: 1 };
}

const matches = (
  line: { readonly size: WireKind["size"]; readonly cores: number; readonly colour?: string },
  { size, cores, colour }: WireKind,
): boolean =>
  line.size.key === size.key &&
  line.cores === cores &&
  (line.colour === undefined || colour === undefined || line.colour === colour);

/** Every line of stock to one kind; a line without colour that several kinds could use goes to the one that needs most. */
function stockByKind(stock: readonly StockWire[], kinds: readonly WireKind[]): Map<string, StockLength[]> {
  const needMm = (kind: WireKind) => kind.pieces.reduce((sum, piece) => sum + piece.lengthMm, 0);
  const lists = new Map<string, StockLength[]>();
  for (const [index, line] of stock.entries()) {
    const [taker] = kinds.filter((kind) => matches(line, kind)).toSorted((a, b) => needMm(b) - needMm(a));
    const lengthMm = inMm(line.lengthM);
    if (taker === undefined || !(line.count > 0) || !(lengthMm > 0)) continue;
    const length: StockLength = {
      id: `stock ${index + 1}`,
      lengthMm,
      source: line.kind,
      count: line.count,
      ...(line.fresh === true ? {} : { trimMm: oldWireEnd.trimMm }),
    };
    lists.set(taker.kind, [...(lists.get(taker.kind) ?? []), length]);
  }
  return lists;
}
