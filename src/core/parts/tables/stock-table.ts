import type { StockWire } from "../../plan/model/layout.js";
import { readConductorSize } from "../../quantity/conductor-size.js";
import type { QuantityResult } from "../../quantity/fault.js";
import { type Quantity, readQuantity } from "../../quantity/read.js";
import { writeQuantity } from "../../quantity/write.js";
import {
  nameOf,
  nameProblems,
  type OtherNames,
  readColumns,
  readCount,
  type TableProblem,
} from "./columns.js";
import { type TableStyle, wireUnit, writeColumns } from "./written.js";

/** One line of stock on hand: a length of wire (with `size` and `lengthM`), or so many of something. */
export type StockRow =
  | {
      readonly item: string;
      readonly count: number;
      readonly size: string;
      readonly cores: number;
      readonly lengthM: number;
      readonly colour?: string;
      readonly kind: StockWire["kind"];
    }
  | { readonly item: string; readonly count: number };

const kinds = ["offcut", "spool"] as const satisfies readonly StockWire["kind"][];
const columns = ["item", "count", "size", "cores", "colour", "length", "kind"] as const;

/**
 * Stock as CSV: `item,count,size,cores,colour,length (in),kind`. Wire has a size and a length, and is an offcut unless its kind says
 * spool; everything else has only a count. A length without a unit is in that of its heading.
 */
export function readStockTable(
  text: string,
  also: OtherNames = new Map(),
): { rows: StockRow[]; problems: readonly TableProblem[] } {
  const table = readColumns(text, { columns, required: ["item", "count"], lengths: ["length"], also });
  const problems = [...table.problems, ...nameProblems(table.rows, "item", false)];
  const rows = table.rows.flatMap(({ line, cells }): StockRow[] => {
    const count = readCount(cells.count ?? "", line, "count");
    if (typeof count !== "number") {
      problems.push(count);
      return [];
    }
    const item = cells.item ?? "";
    if (cells.size === undefined && cells.length === undefined) return [{ item, count }];
    const kindName = nameOf(cells.kind ?? "offcut");
    const kind = kinds.find((one) => one === (also.get(kindName) ?? kindName));
    if (kind === undefined) {
      problems.push({ problem: "not-one-of", line, column: "kind", found: cells.kind ?? "", allowed: kinds });
    }
    for (const column of ["size", "length"] as const) {
      if (cells[column] === undefined) problems.push({ problem: "empty-cell", line, column });
    }
    const size = readConductorSize(withoutArea(cells.size ?? ""));
    const length = lengthIn(cells.length ?? "", table.units.length);
    const cores = readCount(cells.cores ?? "1", line, "cores");
    if (!size.ok && cells.size !== undefined) {
      problems.push({ problem: "not-a-quantity", line, column: "size", fault: size.fault });
    }
    if (!length.ok && cells.length !== undefined) {
      problems.push({ problem: "not-a-quantity", line, column: "length", fault: length.fault });
    }
    if (typeof cores !== "number") problems.push(cores);
    if (!size.ok || !length.ok || typeof cores !== "number" || kind === undefined) return [];
    if (!(length.value.value > 0)) {
      problems.push({ problem: "negative-stock", line, column: "length", found: cells.length ?? "" });
      return [];
    }
    const colour = cells.colour === undefined ? {} : { colour: cells.colour };
    return [{ item, count, size: size.value.key, cores, ...colour, lengthM: length.value.value, kind }];
  });
  return { rows, problems };
}

/** `16 AWG (1.31 mm²)`, as the area stands beside the name for whoever thinks in it: the name. */
const withoutArea = (cell: string): string => cell.replace(/\s*\(\s*[\d.]+\s*mm²\s*\)$/, "");

/** A length with its unit, or a number in the unit of its heading. */
function lengthIn(cell: string, unit: string | undefined): QuantityResult<Quantity> {
  const read = readQuantity(cell, "length");
  return !read.ok && read.fault.code === "no unit" && unit !== undefined
    ? readQuantity(`${cell} ${unit}`, "length")
    : read;
}

/** Lengths with as many digits as read back to the same, in the unit of the heading. */
export function writeStockTable(rows: readonly StockRow[], style: TableStyle): string {
  const unit = wireUnit(style);
  const body = rows.map((row) => {
    const { item, count } = row;
    if (!("size" in row)) return { item, count: String(count) };
    const { size, cores, colour = "", lengthM, kind } = row;
    const length = writeQuantity(lengthM, unit).replace(` ${unit}`, "");
    return {
      item,
      count: String(count),
      size: style.size(size),
      cores: String(cores),
      colour,
      length,
      kind: style.word(kind),
    };
  });
  return writeColumns(
    columns,
    body,
    columns.map((column) => (column === "length" ? style.heading(column, unit) : style.heading(column))),
  );
}
