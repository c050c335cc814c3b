import type { LayoutFigures } from "../core/parts/layout-types.js";
import { type PartLine, partKinds } from "../core/parts/parts-list.js";
import type { WireLine } from "../core/parts/plan-parts.js";
import type { Shows } from "../core/plan/model/plan.js";
import { layoutInEnglish } from "../words/layout/english.js";
import { moneyWords, packWords, roundLengthWords, wireBuyWords } from "../words/layout-words.js";
import { counted } from "../words/numbers.js";
import { listed } from "../words/say.js";
import { flow } from "./flow.js";
import type { Paper } from "./page.js";
import { heading, paragraph, space } from "./piece.js";
import type { Section } from "./section.js";
import { type Cell, type Column, groupedTable, type Row } from "./table.js";

const columns: readonly Column[] = [
  { heading: "", share: 8, hand: "tick" },
  { heading: "Item", share: 80 },
  { heading: "Buy", share: 54 },
  { heading: "Price", share: 30, align: "right" },
  { heading: "Needed", share: 24, align: "right" },
  { heading: "Spare", share: 16, align: "right" },
  { heading: "On hand", share: 24, align: "right" },
  { heading: "Left over", share: 22, align: "right" },
  { heading: "For", share: 66 },
];

/** What to buy, kind by kind as one walks the shop; then what comes from the shelf. What has no price says so. */
export function shoppingList({ parts, cuts }: LayoutFigures, shows: Shows, paper: Paper): Section {
  const widthMm = paper.right - paper.left;
  const buying = parts.list.lines.filter(({ toBuy }) => toBuy > 0);
  const wire = parts.wire.filter(({ buy }) => buy.length > 0);
  const pieces = new Map(cuts.kinds.map((kind) => [kind.kind, kind.pieces.length]));
  const groups = partKinds.flatMap((kind) => {
    const rows =
      kind === "conductor"
        ? wire.map((line) => wireRow(line, pieces.get(line.item) ?? 0, shows))
        : buying.filter((line) => line.kind === kind).map(partRow);
    return rows.length === 0 ? [] : [{ name: layoutInEnglish.partKinds[kind], rows }];
  });
  const list = groupedTable(columns, groups, widthMm);
  const shelf = shelfWords(parts, shows);
  const total = parts.total === undefined ? "" : moneyWords(parts.total);
  return {
    title: "Shopping list",
    subtitle: [counted(buying.length + wire.length, "item"), total].filter((part) => part !== "").join(" · "),
    pages:
      parts.list.lines.length + parts.wire.length === 0
        ? []
        : flow(
            [
              ...(groups.length === 0 ? [] : list),
              ...(shelf === "" ? [] : [heading("From the shelf", widthMm)]),
              ...(shelf === "" ? [] : [paragraph({ text: shelf, maxLines: 12 }, widthMm, 1)]),
              space(2),
              paragraph({ text: totalWords(parts), weight: "semibold", maxLines: 8 }, widthMm),
            ],
            paper,
          ),
  };
}

const priceCell = (price: PartLine["price"]): Cell =>
  price === undefined ? { words: [{ text: "not known", sizePt: 9.5, colour: "accent" }] } : moneyWords(price);

function partRow(line: PartLine): Row {
  const { item, needed, spares, fromStock, leftOver, price, for: uses } = line;
  return {
    cells: [
      "",
      { words: [{ text: item, weight: "semibold" }] },
      packWords(line),
      priceCell(price),
      String(needed),
      some(spares),
      some(fromStock),
      some(leftOver),
      { words: [{ text: usesWords(item, uses), sizePt: 9.5, colour: "soft", maxLines: 2 }] },
    ],
  };
}

const some = (count: number): string => (count > 0 ? String(count) : "");

function wireRow(line: WireLine, pieces: number, shows: Shows): Row {
  const length = (lengthMm: number) => (lengthMm > 0 ? roundLengthWords(lengthMm, shows) : "");
  return {
    cells: [
      "",
      { words: [{ text: line.item, weight: "semibold" }] },
      wireBuyWords(line, shows),
      priceCell(line.price),
      length(line.neededMm),
      "",
      length(line.fromStockMm),
      length(line.leftMm),
      { words: [{ text: `${counted(pieces, "piece")}: see the cut list`, sizePt: 9.5, colour: "soft" }] },
    ],
  };
}

/** Gear is for itself. */
function usesWords(item: string, uses: readonly string[]): string {
  const others = uses.filter((one) => one !== item);
  return others.length > 4 ? `${listed(others.slice(0, 3))} and ${others.length - 3} more` : listed(others);
}

function shelfWords({ list, wire }: LayoutFigures["parts"], shows: Shows): string {
  return [
    ...wire.flatMap(({ item, fromStockMm }) =>
      fromStockMm > 0 ? [`${item}: ${roundLengthWords(fromStockMm, shows)}`] : [],
    ),
    ...list.lines.flatMap(({ item, fromStock }) => (fromStock > 0 ? [`${item}: ${fromStock}`] : [])),
  ].join(";  ");
}

function totalWords({ total, withoutPrice, currencies }: LayoutFigures["parts"]): string {
  if (currencies.length > 1)
    return `Prices are in ${listed(currencies)}: no total is made of two currencies.`;
  const sum = total === undefined ? "Nothing on it has a price." : `Total: ${moneyWords(total)}.`;
  if (withoutPrice.length === 0) return sum;
  return `${sum} Not in it, for want of a price: ${withoutPrice.join("; ")}.`;
}
