import type { BoxFigures } from "../../core/box/plan-boxes.js";
import type { Whole } from "../../core/layout-figures.js";
import type { BoughtThing } from "../../core/parts/bought-lines.js";
import type { LayoutFigures } from "../../core/parts/layout-types.js";
import type { PartLine } from "../../core/parts/parts-list.js";
import { writeCsv } from "../../core/parts/tables/csv.js";
import { writeLoadTable } from "../../core/parts/tables/load-table.js";
import { loadRows, priceRows, stockRows } from "../../core/parts/tables/plan-tables.js";
import { writePriceTable } from "../../core/parts/tables/price-table.js";
import { writeStockTable } from "../../core/parts/tables/stock-table.js";
import { type TableStyle, wireUnit } from "../../core/parts/tables/written.js";
import type { Plan, Shows } from "../../core/plan/model/plan.js";
import { moneyWords, packWords, wireBuyWords } from "../../words/layout-words.js";
import type { PaperWords } from "../../words/paper/paper-words.js";
import type { PlanTable } from "./table-names.js";
import { plainBlanks, tableStyle } from "./table-style.js";

/**
 * A table of the plan as CSV, in the plan's own units: a length stands as a number in the unit its heading names. A cell that a
 * spreadsheet would run as a formula is made harmless.
 */
export function planTable(
  table: PlanTable,
  { figures, layout }: Pick<Whole, "figures" | "layout">,
  words: PaperWords,
): string {
  const plan = figures.plan.source;
  const style = tableStyle(plan.shows, words.tables);
  switch (table) {
    case "list":
      return shoppingTable(layout, plan, style, words);
    case "cuts":
      return cutTable(layout, style, words);
    case "flags":
      return writeCsv([flagColumns(style), ...flagRows(layout, style, words)]);
    case "runs":
      return runTable(layout, style);
    case "holes":
      return holeTable(layout.boxes, plan.shows, words);
    case "loads":
      return writeLoadTable(loadRows(figures.plan), style);
    case "stock":
      return writeStockTable(
        stockRows(plan, ({ size, cores }) => `${style.size(size.key)}, ${words.tables.cores(cores)}`),
        style,
      );
    case "prices":
      return writePriceTable(priceRows(plan, layout.parts), style);
    default:
      return table satisfies never;
  }
}

/** A number for a spreadsheet: a point, no unit. */
const plainNumber = (value: number | undefined, places: number): string =>
  value === undefined || !Number.isFinite(value) ? "" : String(Number(value.toFixed(places)));

/** A length on the owner's tape: inches to a ten-thousandth, or millimetres to a hundredth. */
const tapeNumber = (lengthMm: number, { lengths }: Pick<TableStyle, "lengths">): string =>
  lengths === "inches" ? plainNumber(lengthMm / 25.4, 4) : plainNumber(lengthMm, 2);

/** A length of wire in all: inches, or metres to a tenth of a millimetre. */
const wireNumber = (lengthMm: number, { lengths }: Pick<TableStyle, "lengths">): string =>
  lengths === "inches" ? plainNumber(lengthMm / 25.4, 4) : plainNumber(lengthMm / 1000, 4);

/** Pieces of wire are cut in whole inches on an inch plan, and kept in whole millimetres: back to the sixteenth they were cut by. */
const pieceMm = (lengthMm: number, { lengths }: Pick<TableStyle, "lengths">): number =>
  lengths === "inches" ? (Math.round((lengthMm / 25.4) * 16) / 16) * 25.4 : lengthMm;

const tapeUnit = ({ lengths }: Pick<TableStyle, "lengths">) => (lengths === "inches" ? "in" : "mm");

/** Wire by its kind, sizes as the owner reads them. */
const wireNames = ({ cuts }: LayoutFigures, { size: sized }: TableStyle, { of: { layout } }: PaperWords) => {
  const keys = new Map(cuts.kinds.map(({ kind, size }) => [kind, size.key]));
  return (kind: string): string => {
    const key = keys.get(kind) ?? "";
    const said = layout.wire(kind);
    return key !== "" && said.startsWith(key) ? sized(key) + said.slice(key.length) : said;
  };
};

function shoppingTable(layout: LayoutFigures, plan: Plan, style: TableStyle, words: PaperWords): string {
  const { heading } = style;
  const amount = words.tables.pieces(wireUnit(style));
  return writeCsv([
    [
      heading("kind"),
      heading("item"),
      heading("needed", amount),
      heading("spares"),
      heading("from stock", amount),
      heading("to buy", amount),
      heading("bought", amount),
      heading("packs"),
      heading("left over", amount),
      heading("price"),
    ],
    ...wireRows(layout, plan, style, words),
    ...layout.parts.list.lines.map((line) => lineRow(line, layout, words)),
    ...notWantedRows(layout, style, words),
  ]);
}

function wireRows(layout: LayoutFigures, { shows }: Plan, style: TableStyle, words: PaperWords): string[][] {
  const named = wireNames(layout, style, words);
  return layout.parts.wire.map((line) => [
    words.tables.kinds.conductor,
    named(line.item),
    wireNumber(pieceMm(line.neededMm, style), style),
    "",
    wireNumber(line.fromStockMm, style),
    wireNumber(
      line.buy.reduce((sum, one) => sum + one.lengthMm * one.times, 0),
      style,
    ),
    wireNumber(boughtOf(layout.parts.bought.wire, line.item), style),
    plainBlanks(wireBuyWords(line, shows, words.of.layout)),
    wireNumber(line.leftMm, style),
    line.price === undefined ? "" : plainBlanks(moneyWords(line.price)),
  ]);
}

/** What was bought and has no line of its own any more. */
function notWantedRows(
  { parts: { bought, list, wire } }: LayoutFigures,
  style: TableStyle,
  { tables, of: { layout } }: PaperWords,
): string[][] {
  const listed = new Set([...list.lines, ...wire].map(({ item }) => item));
  const row = (kind: string, item: string, amount: string) => [
    kind,
    item,
    "0",
    "",
    "",
    "0",
    amount,
    "",
    "",
    "",
  ];
  return [
    ...bought.wire
      .filter(({ item }) => !listed.has(item))
      .map((one) => row(tables.kinds.conductor, layout.wire(one.item), wireNumber(one.bought, style))),
    ...bought.parts
      .filter(({ item }) => !listed.has(item))
      .map((one) => row(tables.kinds[one.kind], layout.part(one.item, one.kind), String(one.bought))),
  ];
}

const boughtOf = (things: readonly BoughtThing[], item: string): number =>
  things.find((one) => one.item === item)?.bought ?? 0;

const lineRow = (
  line: PartLine,
  { parts: { bought } }: LayoutFigures,
  { tables, of: { layout } }: PaperWords,
): string[] => [
  tables.kinds[line.kind],
  layout.part(line.item, line.kind),
  String(line.needed),
  String(line.spares),
  String(line.fromStock),
  String(line.toBuy),
  String(boughtOf(bought.parts, line.item)),
  line.packs.length === 0 ? "" : plainBlanks(packWords(line, layout)),
  String(line.leftOver),
  line.price === undefined ? "" : plainBlanks(moneyWords(line.price)),
];

/** Each piece and the length it is cut from, in the order of cutting. */
function cutTable(layout: LayoutFigures, style: TableStyle, words: PaperWords): string {
  const named = wireNames(layout, style, words);
  const { colour, from: sources } = words.of.layout;
  const unit = tapeUnit(style);
  const rows = layout.cuts.kinds.flatMap(({ kind, plan, pieces }) => {
    const colours = new Map(pieces.map((piece) => [piece.piece, piece.colours.map(colour).join(", ")]));
    return (plan?.lengths ?? []).flatMap(({ source, copy, lengthMm, cuts }) => {
      const length = `${tapeNumber(lengthMm, style)} ${unit}`;
      const from = source === "offcut" ? sources.offcut(length, undefined) : sources[source](length, copy);
      return cuts.map((cut) => [
        named(kind),
        plainBlanks(from),
        String(copy),
        cut.piece,
        colours.get(cut.piece) ?? "",
        tapeNumber(cut.fromMm, style),
        tapeNumber(cut.toMm, style),
        tapeNumber(cut.lengthMm, style),
      ]);
    });
  });
  const { heading } = style;
  return writeCsv([
    [
      heading("wire"),
      heading("cut from"),
      heading("no"),
      heading("piece"),
      heading("colours"),
      heading("from", unit),
      heading("to", unit),
      heading("length", unit),
    ],
    ...rows,
  ]);
}

export const flagColumns = (style: TableStyle): string[] => [
  ...["piece", "end", "here", "there", "wire", "colours"].map((column) => style.heading(column)),
  style.heading("length", tapeUnit(style)),
];

/** The flags for both ends of every piece. */
export function flagRows(layout: LayoutFigures, style: TableStyle, words: PaperWords): string[][] {
  const named = wireNames(layout, style, words);
  return layout.cuts.labels.map((label) => [
    label.piece,
    style.word(label.end),
    label.here,
    label.there,
    named(label.kind),
    label.colours.map(words.of.layout.colour).join(", "),
    tapeNumber(pieceMm(label.lengthMm, style), style),
  ]);
}

function runTable({ routes }: LayoutFigures, style: TableStyle): string {
  const { heading } = style;
  const unit = wireUnit(style);
  return writeCsv([
    [
      ...["run", "from", "to", "past"].map((column) => heading(column)),
      ...["way", "slack", "cut"].map((column) => heading(column, unit)),
    ],
    ...routes.runs.map((one) => [
      one.run,
      one.points[0] ?? "",
      one.points.at(-1) ?? "",
      one.points.slice(1, -1).join(" > "),
      wireNumber(one.cut.routeM * 1000, style),
      wireNumber(one.cut.slackM * 1000, style),
      wireNumber(pieceMm(one.cut.cutM * 1000, style), style),
    ]),
  ]);
}

/** Holes of boxes, from the lower left corner of the face's inside. Where the owner reads inches the drill stands in millimetres too: drills and glands are sold so. */
export function holeTable(boxes: readonly BoxFigures[], shows: Shows, words: PaperWords): string {
  const style = tableStyle(shows, words.tables);
  const { faces, entry } = words.of.layout;
  const unit = tapeUnit(style);
  const inches = unit === "in";
  const rows = boxes.flatMap(({ box, layout }) =>
    (layout?.entries ?? []).map(({ id, on, x, y, holeMm }) => [
      box,
      faces[on],
      entry(id),
      layout?.glands.find(({ cable }) => cable === id)?.fit.size ?? "",
      ...(inches ? [plainNumber(holeMm, 2)] : []),
      tapeNumber(holeMm, style),
      tapeNumber(x, style),
      tapeNumber(y, style),
    ]),
  );
  const { heading } = style;
  return writeCsv([
    [
      ...["box", "face", "entry", "gland"].map((column) => heading(column)),
      ...(inches ? [heading("drill", "mm")] : []),
      ...["hole", "x", "y"].map((column) => heading(column, unit)),
    ],
    ...rows,
  ]);
}
