import {
  type BoughtFigures,
  type BoughtThing,
  type BoughtWireThing,
  boughtItem,
  partsBought,
} from "../../../core/parts/bought-lines.js";
import type { LayoutFigures } from "../../../core/parts/layout-types.js";
import type { PartKind } from "../../../core/parts/parts-list.js";
import { pricesWanting } from "../../../core/parts/prices-wanting.js";
import type { Plan, Shows } from "../../../core/plan/model/plan.js";
import type { LayoutWords } from "../../../words/layout/english.js";
import {
  boughtAmountWords,
  moneyWords,
  packWords,
  roundLengthWords,
  wireBuyWords,
} from "../../../words/layout-words.js";

/** One line of the shopping list; what is nought is left out. */
export interface BuyLine {
  readonly key: string;
  readonly wire: boolean;
  readonly kind: PartKind;
  /** What stock and prices in the plan are matched by. */
  readonly item: string;
  /** What it is called in the reader's language. */
  readonly name: string;
  readonly buy: string;
  readonly price: string | undefined;
  readonly needed: string;
  readonly spare: string;
  readonly onHand: string;
  readonly leftOver: string;
  readonly uses: readonly string[];
}

const some = (count: number) => (count > 0 ? String(count) : "");

/** What is to buy: wire first, then parts, as the core lists them. */
export function buyLines({ parts }: LayoutFigures, shows: Shows, words: LayoutWords): BuyLine[] {
  const saidOnce = pricesWanting(parts) !== undefined;
  const length = (lengthMm: number) => (lengthMm > 0 ? roundLengthWords(lengthMm, shows) : "");
  const price = (money: LayoutFigures["parts"]["total"]) =>
    money === undefined ? undefined : moneyWords(money);
  return [
    ...parts.wire
      .filter(({ buy }) => buy.length > 0)
      .map(
        (line): BuyLine => ({
          key: `wire\n${line.item}`,
          wire: true,
          kind: "conductor",
          item: line.item,
          name: words.wire(line.item),
          buy: wireBuyWords(line, shows, words),
          price: price(line.price),
          needed: length(line.neededMm),
          spare: "",
          onHand: length(line.fromStockMm),
          leftOver: length(line.leftMm),
          uses: [],
        }),
      ),
    ...parts.list.lines
      .filter(({ toBuy }) => toBuy > 0)
      .map(
        (line): BuyLine => ({
          key: `${line.kind}\n${line.item}`,
          wire: false,
          kind: line.kind,
          item: line.item,
          name: words.part(line.item, line.kind),
          buy: packWords(line, words, saidOnce),
          price: price(line.price),
          needed: some(line.needed),
          spare: some(line.spares),
          onHand: some(line.fromStock),
          leftOver: some(line.leftOver),
          uses: line.for.filter((one) => one !== line.item).map((one) => words.use(one, line.kind)),
        }),
      ),
  ];
}

/**
 * What was bought, as the plan has it now. Of wire the list has to be worked out anew to say how much more is wanted: until that is done, what
 * was bought just now counts as all that was wanted.
 */
export function boughtNow(plan: Plan, { cuts, parts }: LayoutFigures, fresh: boolean): BoughtFigures {
  if (fresh) return parts.bought;
  const known = new Map(parts.bought.wire.map((one) => [one.item, one]));
  const wire = new Map<string, BoughtWireThing>();
  for (const line of plan.boughtWire) {
    const item = boughtItem(line, cuts.kinds);
    const bought = (wire.get(item)?.bought ?? 0) + line.lengthM * line.count * 1000;
    const wanted = parts.wire.some((one) => one.item === item && one.buy.length > 0);
    wire.set(item, { kind: "conductor", item, bought, wanted, more: 0, over: 0, moreLengthsMm: [] });
  }
  const same = (one: BoughtWireThing) => Math.abs((known.get(one.item)?.bought ?? 0) - one.bought) < 1;
  return {
    wire: [...wire.values()].map((one) => (same(one) ? (known.get(one.item) ?? one) : one)),
    parts: partsBought(plan, parts.list),
  };
}

/** Something that was bought and that the list does not ask for any more. */
export interface Unwanted {
  readonly wire: boolean;
  readonly item: string;
  readonly name: string;
  readonly amount: string;
}

export function unwantedLines(bought: BoughtFigures, shows: Shows, words: LayoutWords): Unwanted[] {
  const said = (wire: boolean) => (one: BoughtThing) =>
    one.wanted
      ? []
      : [
          {
            wire,
            item: one.item,
            name: wire ? words.wire(one.item) : words.part(one.item, one.kind),
            amount: boughtAmountWords(one, shows),
          },
        ];
  return [...bought.wire.flatMap(said(true)), ...bought.parts.flatMap(said(false))];
}

/** What comes from the shelf. */
export function shelfLines(
  { parts }: LayoutFigures,
  shows: Shows,
  words: LayoutWords,
): { item: string; amount: string }[] {
  return [
    ...parts.wire.flatMap(({ item, fromStockMm }) =>
      fromStockMm > 0 ? [{ item: words.wire(item), amount: roundLengthWords(fromStockMm, shows) }] : [],
    ),
    ...parts.list.lines.flatMap(({ item, kind, fromStock }) =>
      fromStock > 0 ? [{ item: words.part(item, kind), amount: String(fromStock) }] : [],
    ),
  ];
}
