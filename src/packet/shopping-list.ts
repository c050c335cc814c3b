import type { BoughtFigures, BoughtThing } from "../core/parts/bought-lines.js";
import type { LayoutFigures } from "../core/parts/layout-types.js";
import { type PartLine, partKinds } from "../core/parts/parts-list.js";
import type { WireLine } from "../core/parts/plan-parts.js";
import { pricesWanting } from "../core/parts/prices-wanting.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { LayoutWords } from "../words/layout/english.js";
import {
  boughtAmountWords,
  boughtWords,
  moneyWords,
  packWords,
  roundLengthWords,
  wireBuyWords,
} from "../words/layout-words.js";
import { listed } from "../words/listed.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { flow } from "./flow.js";
import type { Paper } from "./page.js";
import { heading, paragraph, space } from "./piece.js";
import type { Section } from "./section.js";
import { type Cell, type Column, groupedTable, type Row } from "./table.js";

type ShoppingWords = PaperWords["layout"]["shopping"];

const columns = ({ heads }: ShoppingWords): readonly Column[] => [
  { heading: "", share: 8, hand: "tick" },
  { heading: heads.item, share: 80 },
  { heading: heads.buy, share: 54 },
  { heading: heads.price, share: 30, align: "right" },
  { heading: heads.needed, share: 24, align: "right" },
  { heading: heads.spare, share: 16, align: "right" },
  { heading: heads.onHand, share: 24, align: "right" },
  { heading: heads.left, share: 22, align: "right" },
  { heading: heads.for, share: 66 },
];

/** What to buy, kind by kind as one walks the shop; then what comes from the shelf. What has no price says so, once over the list where most have none. */
export function shoppingList(
  { parts, cuts }: LayoutFigures,
  shows: Shows,
  paper: Paper,
  words: PaperWords,
): Section {
  const say = words.layout.shopping;
  const widthMm = paper.right - paper.left;
  const buying = parts.list.lines.filter(({ toBuy }) => toBuy > 0);
  const wire = parts.wire.filter(({ buy }) => buy.length > 0);
  const wanting = pricesWanting(parts);
  const saidOnce = wanting !== undefined;
  const pieces = new Map(cuts.kinds.map((kind) => [kind.kind, kind.pieces.length]));
  const groups = partKinds.flatMap((kind) => {
    const rows =
      kind === "conductor"
        ? wire.map((line) => ({
            ...wireRow(line, pieces.get(line.item) ?? 0, shows, words, saidOnce),
            ...boughtRow(parts.bought.wire, line.item, shows, words),
          }))
        : buying
            .filter((line) => line.kind === kind)
            .map((line) => ({
              ...partRow(line, words, saidOnce),
              ...boughtRow(parts.bought.parts, line.item, shows, words),
            }));
    return rows.length === 0 ? [] : [{ name: words.of.layout.partKinds[kind], rows }];
  });
  const list = groupedTable(columns(say), groups, widthMm, words.frame.continued);
  const shelf = shelfWords(parts, shows, words.of.layout);
  const notWanted = notWantedWords(parts.bought, shows, words.of.layout);
  // beside the title a sum of the few that have a price would pass for the whole
  const total = parts.total === undefined || saidOnce ? "" : moneyWords(parts.total);
  return {
    title: say.title,
    subtitle: [say.count(buying.length + wire.length), total].filter((part) => part !== "").join(" · "),
    pages:
      parts.list.lines.length + parts.wire.length === 0 && notWanted === ""
        ? []
        : flow(
            [
              ...(wanting
                ? [
                    paragraph(
                      { text: say.pricesWanting(wanting.without, wanting.all), maxLines: 4 },
                      widthMm,
                      2,
                    ),
                  ]
                : []),
              ...(groups.length === 0 ? [] : list),
              ...(notWanted === ""
                ? []
                : [
                    heading(words.of.layout.bought.notWanted, widthMm),
                    paragraph({ text: notWanted, maxLines: 12 }, widthMm, 1),
                  ]),
              ...(shelf === "" ? [] : [heading(say.shelf, widthMm)]),
              ...(shelf === "" ? [] : [paragraph({ text: shelf, maxLines: 12 }, widthMm, 1)]),
              space(2),
              paragraph(
                { text: totalWords(parts, words, saidOnce), weight: "semibold", maxLines: 8 },
                widthMm,
              ),
            ],
            paper,
          ),
  };
}

/** @param saidOnce The cell of what has no price stays free for the pencil. */
function priceCell(price: PartLine["price"], { noPrice }: ShoppingWords, saidOnce: boolean): Cell {
  if (price !== undefined) return moneyWords(price);
  return saidOnce ? "" : { words: [{ text: noPrice, sizePt: 9.5, colour: "accent" }] };
}

function partRow(line: PartLine, words: PaperWords, saidOnce: boolean): Row {
  const { layout } = words.of;
  const { item, kind, needed, spares, fromStock, leftOver, price } = line;
  return {
    cells: [
      "",
      { words: [{ text: layout.part(item, kind), weight: "semibold" }] },
      packWords(line, layout, saidOnce),
      priceCell(price, words.layout.shopping, saidOnce),
      String(needed),
      some(spares),
      some(fromStock),
      some(leftOver),
      { words: [{ text: usesWords(line, words), sizePt: 9.5, colour: "soft", maxLines: 2 }] },
    ],
  };
}

/** The tick of what was bought, and what is to be said of it. */
function boughtRow(
  things: readonly BoughtThing[],
  item: string,
  shows: Shows,
  { of: { layout } }: PaperWords,
): Pick<Row, "ticked" | "note"> {
  const bought = things.find((one) => one.item === item && one.wanted);
  const said = boughtWords(bought, shows, layout);
  return {
    ticked: bought?.more === 0,
    ...(said === undefined ? {} : { note: { text: said, weight: "semibold" } }),
  };
}

function notWantedWords({ wire, parts }: BoughtFigures, shows: Shows, words: LayoutWords): string {
  const gone = (things: readonly BoughtThing[]) => things.filter(({ wanted }) => !wanted);
  return [
    ...gone(wire).map((one) => `${words.wire(one.item)}: ${boughtAmountWords(one, shows)}`),
    ...gone(parts).map((one) => `${words.part(one.item, one.kind)}: ${boughtAmountWords(one, shows)}`),
  ].join(";  ");
}

const some = (count: number): string => (count > 0 ? String(count) : "");

function wireRow(line: WireLine, pieces: number, shows: Shows, words: PaperWords, saidOnce: boolean): Row {
  const { layout } = words.of;
  const length = (lengthMm: number) => (lengthMm > 0 ? roundLengthWords(lengthMm, shows) : "");
  return {
    cells: [
      "",
      { words: [{ text: layout.wire(line.item), weight: "semibold" }] },
      wireBuyWords(line, shows, layout),
      priceCell(line.price, words.layout.shopping, saidOnce),
      length(line.neededMm),
      "",
      length(line.fromStockMm),
      length(line.leftMm),
      { words: [{ text: words.layout.shopping.seeCuts(pieces), sizePt: 9.5, colour: "soft" }] },
    ],
  };
}

/** Gear is for itself. */
function usesWords({ item, kind, for: uses }: PartLine, { frame, of }: PaperWords): string {
  const { joining, use } = of.layout;
  const others = uses.filter((one) => one !== item).map((one) => use(one, kind));
  return others.length > 4
    ? `${listed(others.slice(0, 3), joining)}${frame.more(others.length - 3)}`
    : listed(others, joining);
}

function shelfWords({ list, wire }: LayoutFigures["parts"], shows: Shows, words: LayoutWords): string {
  return [
    ...wire.flatMap(({ item, fromStockMm }) =>
      fromStockMm > 0 ? [`${words.wire(item)}: ${roundLengthWords(fromStockMm, shows)}`] : [],
    ),
    ...list.lines.flatMap(({ item, kind, fromStock }) =>
      fromStock > 0 ? [`${words.part(item, kind)}: ${fromStock}`] : [],
    ),
  ].join(";  ");
}

function totalWords(
  { total, withoutPrice, currencies, list, wire }: LayoutFigures["parts"],
  { layout: { shopping: words }, of }: PaperWords,
  saidOnce: boolean,
): string {
  if (currencies.length > 1) return words.currencies(listed(currencies, of.layout.joining));
  const sum = total === undefined ? words.noTotal : words.total(moneyWords(total));
  if (withoutPrice.length === 0) return sum;
  // an empty cell tells which, where they are too many to name
  if (saidOnce) return `${sum}${words.without(words.count(withoutPrice.length))}`;
  const kinds = new Map(list.lines.map(({ item, kind }) => [item, kind]));
  const named = new Set(wire.map(({ item }) => item));
  const names = withoutPrice.map((item) =>
    named.has(item) ? of.layout.wire(item) : of.layout.part(item, kinds.get(item) ?? "other"),
  );
  return `${sum}${words.without(names.join("; "))}`;
}
