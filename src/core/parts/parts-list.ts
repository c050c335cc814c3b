import { type Money, type MoneyProblem, sumMoney } from "../quantity/money.js";
import { cheapestPacks, type Pack } from "./packs.js";

/** Kinds of a shopping list, in the order one walks the shop. */
export const partKinds = [
  "conductor",
  "terminal",
  "joint",
  "sleeve",
  "gland",
  "fuse",
  "fuse holder",
  "box",
  "switch",
  "bus",
  "tie",
  "sealant",
  "tape",
  "label",
  "gear",
  "other",
] as const;
export type PartKind = (typeof partKinds)[number];

/** Something needed, by the name it is bought under, and what for. */
export interface Need {
  readonly kind: PartKind;
  readonly item: string;
  readonly count: number;
  /** Thing of the plan that needs it. */
  readonly for: string;
}

export interface StockItem {
  readonly item: string;
  readonly count: number;
}

export interface PackPrice {
  readonly item: string;
  readonly pack: string;
  readonly count: number;
  /** Undefined: sold so, at a price not known. */
  readonly price?: Money;
}

/** Spares bought beyond need: a share of it, and at least so many, of what is spoiled or lost at the bench. */
export interface SpareRule {
  readonly kind: PartKind;
  readonly share: number;
  readonly atLeast: number;
}

/** Common practice, no source: one crimp in ten goes wrong, a fuse of each rating lies aboard. */
const usualSpares: readonly SpareRule[] = [
  { kind: "terminal", share: 0.1, atLeast: 2 },
  { kind: "joint", share: 0.1, atLeast: 2 },
  { kind: "sleeve", share: 0.1, atLeast: 1 },
  { kind: "fuse", share: 0, atLeast: 2 },
  { kind: "tie", share: 0.2, atLeast: 5 },
];

export interface PartLine {
  readonly kind: PartKind;
  readonly item: string;
  readonly needed: number;
  readonly spares: number;
  readonly fromStock: number;
  readonly toBuy: number;
  readonly packs: readonly { readonly pack: string; readonly times: number }[];
  /** Everything of it that lies on the bench when the work is done: stock not used, and packs not emptied; spares apart. */
  readonly leftOver: number;
  readonly price?: Money;
  readonly for: readonly string[];
}

export type PartsProblem =
  | { readonly problem: "negative-stock"; readonly item: string; readonly count: number }
  | { readonly problem: "missing-price"; readonly item: string }
  | { readonly problem: "not-sold"; readonly item: string }
  | MoneyProblem;

export interface PartsList {
  readonly lines: readonly PartLine[];
  /** Of the priced lines; undefined where nothing is bought or two currencies are mixed. */
  readonly total?: Money;
  /** Items the total leaves out because their price is not known. */
  readonly withoutPrice: readonly string[];
  readonly problems: readonly PartsProblem[];
}

/**
 * Counts what the plan needs, adds spares, takes off the stock on hand and buys the rest in the cheapest packs.
 * Lines come by kind, then by name.
 * @throws RangeError on needs that are not whole numbers ≥ 0.
 */
export function partsList(
  needs: readonly Need[],
  stock: readonly StockItem[],
  prices: readonly PackPrice[],
  spareRules: readonly SpareRule[] = usualSpares,
): PartsList {
  const problems: PartsProblem[] = [];
  const onHand = new Map<string, number>();
  for (const { item, count } of stock) {
    if (!(count >= 0)) problems.push({ problem: "negative-stock", item, count });
    else onHand.set(item, (onHand.get(item) ?? 0) + count);
  }
  const currencies = sumMoney(prices.flatMap(({ price }) => (price === undefined ? [] : [price])));
  if (!currencies.ok) problems.push(currencies.problem);
  const sold = new Map<string, PackPrice[]>();
  for (const price of prices) sold.set(price.item, [...(sold.get(price.item) ?? []), price]);

  const lines: PartLine[] = [];
  for (const [item, { kind, count, uses }] of counted(needs)) {
    const rule = spareRules.find((one) => one.kind === kind);
    const spares =
      rule === undefined || count === 0 ? 0 : Math.max(rule.atLeast, Math.ceil(rule.share * count));
    const have = onHand.get(item) ?? 0;
    const toBuy = Math.max(0, count + spares - have);
    const bought = buy(item, toBuy, sold.get(item) ?? [], currencies.ok);
    if (bought.problem !== undefined) problems.push(bought.problem);
    lines.push({
      kind,
      item,
      needed: count,
      spares,
      fromStock: Math.min(have, count + spares),
      toBuy,
      packs: bought.packs,
      leftOver: have + bought.count - Math.min(count + spares, have + bought.count),
      ...(bought.price === undefined ? {} : { price: bought.price }),
      for: uses,
    });
  }
  lines.sort((a, b) => partKinds.indexOf(a.kind) - partKinds.indexOf(b.kind) || (a.item < b.item ? -1 : 1));
  const total = sumMoney(lines.flatMap(({ price }) => (price === undefined ? [] : [price])));
  const withoutPrice = lines
    .filter((line) => line.toBuy > 0 && line.price === undefined)
    .map((line) => line.item);
  const list = { lines, withoutPrice, problems };
  return total.ok && total.total !== undefined ? { ...list, total: total.total } : list;
}

function counted(needs: readonly Need[]) {
  const items = new Map<string, { kind: PartKind; count: number; uses: string[] }>();
  for (const need of needs) {
    if (!(Number.isInteger(need.count) && need.count >= 0)) {
      throw new RangeError(`need of ${need.item} must be a whole number ≥ 0, got ${need.count}`);
    }
    const entry = items.get(need.item) ?? { kind: need.kind, count: 0, uses: [] };
    entry.count += need.count;
    if (!entry.uses.includes(need.for)) entry.uses.push(need.for);
    items.set(need.item, entry);
  }
  return items;
}

interface Bought {
  readonly packs: PartLine["packs"];
  readonly count: number;
  readonly price?: Money;
  readonly problem?: PartsProblem;
}

function buy(item: string, toBuy: number, offers: readonly PackPrice[], oneCurrency: boolean): Bought {
  if (toBuy === 0) return { packs: [], count: 0 };
  if (offers.length === 0) return { packs: [], count: 0, problem: { problem: "not-sold", item } };
  const priced = oneCurrency ? offers.filter((offer) => offer.price !== undefined) : [];
  const currency = priced[0]?.price?.currency;
  // Without a price the fewest spare pieces decide; a price is never guessed.
  const packs: Pack[] = (priced.length > 0 ? priced : offers).map((offer) => ({
    id: offer.pack,
    count: offer.count,
    priceMinor: priced.length > 0 ? (offer.price?.minor ?? 0) : 0,
  }));
  const choice = cheapestPacks(toBuy, packs);
  if (choice === undefined) return { packs: [], count: 0, problem: { problem: "not-sold", item } };
  const bought = { packs: choice.packs.map(({ id, times }) => ({ pack: id, times })), count: choice.bought };
  if (currency === undefined) return { ...bought, problem: { problem: "missing-price", item } };
  return { ...bought, price: { currency, minor: choice.priceMinor } };
}
