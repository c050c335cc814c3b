import type { BoxFigures } from "../../core/box/plan-boxes.js";
import type { Whole } from "../../core/layout-figures.js";
import type { LayoutFigures } from "../../core/parts/layout-types.js";
import type { PartLine } from "../../core/parts/parts-list.js";
import { writeCsv } from "../../core/parts/tables/csv.js";
import { writeLoadTable } from "../../core/parts/tables/load-table.js";
import { loadRows, priceRows, stockRows } from "../../core/parts/tables/plan-tables.js";
import { writePriceTable } from "../../core/parts/tables/price-table.js";
import { writeStockTable } from "../../core/parts/tables/stock-table.js";
import type { Plan } from "../../core/plan/model/plan.js";
import { moneyWords, packWords, wireBuyWords } from "../../words/layout-words.js";
import type { PlanTable } from "./table-names.js";

/** A table of the plan as CSV, whose cut lengths and holes are in millimetres whatever the owner reads; a cell that a spreadsheet would run as a formula is made harmless. */
export function planTable(table: PlanTable, { figures, layout }: Pick<Whole, "figures" | "layout">): string {
  const plan = figures.plan.source;
  switch (table) {
    case "list":
      return shoppingTable(layout, plan);
    case "cuts":
      return cutTable(layout);
    case "flags":
      return writeCsv([flagColumns, ...flagRows(layout)]);
    case "runs":
      return runTable(layout);
    case "holes":
      return holeTable(layout.boxes);
    case "loads":
      return writeLoadTable(loadRows(figures.plan));
    case "stock":
      return writeStockTable(stockRows(plan));
    case "prices":
      return writePriceTable(priceRows(plan, layout.parts));
    default:
      return table satisfies never;
  }
}

/** A number for a spreadsheet: a point, no unit. */
const plainNumber = (value: number | undefined, places: number): string =>
  value === undefined || !Number.isFinite(value) ? "" : String(Number(value.toFixed(places)));

const plainBlanks = (text: string): string => text.replaceAll("\u00a0", " ");

function shoppingTable(layout: LayoutFigures, plan: Plan): string {
  return writeCsv([
    ["kind", "item", "needed", "spares", "from stock", "to buy", "packs", "left over", "price"],
    ...wireRows(layout, plan),
    ...layout.parts.list.lines.map(lineRow),
  ]);
}

function wireRows({ parts }: LayoutFigures, { shows }: Plan): string[][] {
  const metres = (mm: number) => (mm / 1000).toFixed(3);
  return parts.wire.map((line) => [
    "conductor",
    line.item,
    `${metres(line.neededMm)} m`,
    "",
    `${metres(line.fromStockMm)} m`,
    `${metres(line.buy.reduce((sum, one) => sum + one.lengthMm * one.times, 0))} m`,
    plainBlanks(wireBuyWords(line, shows)),
    `${metres(line.leftMm)} m`,
    line.price === undefined ? "" : plainBlanks(moneyWords(line.price)),
  ]);
}

const lineRow = (line: PartLine): string[] => [
  line.kind,
  line.item,
  String(line.needed),
  String(line.spares),
  String(line.fromStock),
  String(line.toBuy),
  line.packs.length === 0 ? "" : packWords(line),
  String(line.leftOver),
  line.price === undefined ? "" : plainBlanks(moneyWords(line.price)),
];

/** Each piece and the length it is cut from, in the order of cutting. */
function cutTable({ cuts }: LayoutFigures): string {
  const rows = cuts.kinds.flatMap(({ kind, plan, pieces }) => {
    const colours = new Map(pieces.map((piece) => [piece.piece, piece.colours.join(", ")]));
    return (plan?.lengths ?? []).flatMap(({ source, copy, lengthMm, cuts: ofLength }) =>
      ofLength.map((cut) => [
        kind,
        `${source} ${lengthMm} mm`,
        String(copy),
        cut.piece,
        colours.get(cut.piece) ?? "",
        String(cut.fromMm),
        String(cut.toMm),
        String(cut.lengthMm),
      ]),
    );
  });
  return writeCsv([
    ["wire", "cut from", "no.", "piece", "colours", "from mm", "to mm", "length mm"],
    ...rows,
  ]);
}

export const flagColumns = ["piece", "end", "here", "there", "wire", "colours", "length mm"];

/** The flags for both ends of every piece. */
export function flagRows({ cuts }: LayoutFigures): string[][] {
  return cuts.labels.map((label) => [
    label.piece,
    label.end,
    label.here,
    label.there,
    label.kind,
    label.colours.join(", "),
    String(label.lengthMm),
  ]);
}

function runTable({ routes }: LayoutFigures): string {
  return writeCsv([
    ["run", "from", "to", "past", "way m", "slack m", "cut m"],
    ...routes.runs.map((one) => [
      one.run,
      one.points[0] ?? "",
      one.points.at(-1) ?? "",
      one.points.slice(1, -1).join(" > "),
      plainNumber(one.cut.routeM, 4),
      plainNumber(one.cut.slackM, 4),
      plainNumber(one.cut.cutM, 3),
    ]),
  ]);
}

/** Holes of boxes: millimetres from the lower left corner of the face's inside. */
export function holeTable(boxes: readonly BoxFigures[]): string {
  const rows = boxes.flatMap(({ box, layout }) =>
    (layout?.entries ?? []).map(({ id, on, x, y, holeMm }) => [
      box,
      on,
      id,
      layout?.glands.find(({ cable }) => cable === id)?.fit.size ?? "",
      plainNumber(holeMm, 2),
      plainNumber(x, 2),
      plainNumber(y, 2),
    ]),
  );
  return writeCsv([["box", "face", "entry", "gland", "hole mm", "x mm", "y mm"], ...rows]);
}
