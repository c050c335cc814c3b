import { type Money, sumMoney } from "../quantity/money.js";
import { boughtFigures } from "./bought.js";
import type { BoughtFigures } from "./bought-lines.js";
import { inTheBoat, leftToMake, needsLeft } from "./in-the-boat.js";
import type { PackPrice } from "./parts-list.js";
import { type PartsList, partsList } from "./parts-list.js";
import type { CutFigures } from "./plan-cuts.js";
import { type NeedsInput, planNeeds } from "./plan-needs.js";

/** Wire to buy of one kind. */
export interface WireLine {
  readonly item: string;
  readonly neededMm: number;
  readonly fromStockMm: number;
  /** Spools, each at its length, and wire cut off by the step. */
  readonly buy: readonly {
    readonly sold: "spool" | "by length";
    readonly lengthMm: number;
    readonly times: number;
  }[];
  readonly price?: Money;
  /** Rests long enough to keep. */
  readonly leftMm: number;
  readonly scrapMm: number;
}

export interface PartsFigures {
  readonly list: PartsList;
  /** What was bought, held against the list; the list is what is to buy in all. */
  readonly bought: BoughtFigures;
  readonly wire: readonly WireLine[];
  /** Of everything that has a price, where all prices are in one currency. */
  readonly total?: Money;
  /** Bought, but without a price: left out of the total. */
  readonly withoutPrice: readonly string[];
  /** Currencies of the price lists, where there are several. */
  readonly currencies: readonly string[];
}

/** The whole list: what is needed, what is on hand, what to buy, and what will be left over. */
export function planParts(input: NeedsInput): PartsFigures {
  const boat = inTheBoat(input.plan);
  const { partOffers, wireOffers, stockParts, catalogue } = input.plan.source;
  const boxes = catalogue.map(
    ({ name, price }): PackPrice => ({
      item: name,
      pack: name,
      count: 1,
      ...(price === undefined ? {} : { price }),
    }),
  );
  const named = new Set(partOffers.flatMap(({ item, price }) => (price === undefined ? [] : [item])));
  const prices = [...partOffers, ...boxes.filter(({ item }) => !named.has(item))];
  const list = partsList(needsLeft(planNeeds(leftToMake(input, boat)), input.plan, boat), stockParts, prices);
  const wire = input.cuts.kinds.map(wireLine);
  const offered = [...prices, ...wireOffers].flatMap(({ price }) => price?.currency ?? []);
  const currencies = [...new Set(offered)].sort();
  const total = sumMoney([
    ...(list.total === undefined ? [] : [list.total]),
    ...wire.flatMap(({ price }) => price ?? []),
  ]);
  return {
    list,
    bought: boughtFigures(input.plan.source, input.cuts.kinds, list),
    wire,
    ...(currencies.length <= 1 && total.ok && total.total !== undefined ? { total: total.total } : {}),
    withoutPrice: [
      ...wire.filter(({ buy, price }) => buy.length > 0 && price === undefined).map(({ item }) => item),
      ...list.withoutPrice,
    ],
    currencies: currencies.length > 1 ? currencies : [],
  };
}

function wireLine({ kind, pieces, plan, price }: CutFigures): WireLine {
  const lengths = plan?.lengths ?? [];
  const fromStock = lengths.filter(({ source }) => source === "offcut" || source === "spool");
  const spools = new Map<number, number>();
  for (const { source, lengthMm } of lengths)
    if (source === "new") spools.set(lengthMm, (spools.get(lengthMm) ?? 0) + 1);
  const metered = lengths.filter(({ source }) => source === "by length");
  const meteredMm = metered.reduce((sum, { lengthMm }) => sum + lengthMm, 0);
  const cutMm = (cuts: (typeof lengths)[number]["cuts"]) => cuts.reduce((sum, one) => sum + one.lengthMm, 0);
  return {
    item: kind,
    neededMm: pieces.reduce((sum, { lengthMm }) => sum + lengthMm, 0),
    fromStockMm: fromStock.reduce((sum, { cuts }) => sum + cutMm(cuts), 0),
    buy: [
      ...[...spools].map(([lengthMm, times]) => ({ sold: "spool" as const, lengthMm, times })),
      ...(meteredMm > 0 ? [{ sold: "by length" as const, lengthMm: meteredMm, times: 1 }] : []),
    ],
    ...(price === undefined ? {} : { price }),
    leftMm: lengths.reduce((sum, one) => sum + (one.leftIsUseful ? one.leftMm : 0), 0),
    scrapMm: plan?.scrapMm ?? 0,
  };
}
