import type { StockWire } from "../../plan/model/layout.js";
import { readConductorSize } from "../../quantity/conductor-size.js";
import { readQuantity } from "../../quantity/read.js";
import { writeQuantity } from "../../quantity/write.js";
import { readColumns, readCount, type TableProblem } from "./columns.js";
import { writeCsv } from "./csv.js";

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
 * Stock as CSV: `item,count,size,cores,colour,length,kind`. Wire has a size and a length, and is an offcut unless its kind says
 * spool; everything else has only a count.
 */
export function readStockTable(text: string): { rows: StockRow[]; problems: readonly TableProblem[] } {
  const table = readColumns(text, columns, ["item", "count"]);
  const problems = [...table.problems];
  const rows = table.rows.flatMap(({ line, cells }): StockRow[] => {
    const count = readCount(cells.count ?? "", line, "count");
    if (typeof count !== "number") {
      problems.push(count);
      return [];
    }
    const item = cells.item ?? "";
    if (cells.size === undefined && cells.length === undefined) return [{ item, count }];
    const kind = kinds.find((one) => one === (cells.kind ?? "offcut").toLowerCase());
    if (kind === undefined) {
      problems.push({ problem: "not-one-of", line, column: "kind", found: cells.kind ?? "", allowed: kinds });
    }
    for (const column of ["size", "length"] as const) {
      if (cells[column] === undefined) problems.push({ problem: "empty-cell", line, column });
    }
    const size = readConductorSize(cells.size ?? "");
    const length = readQuantity(cells.length ?? "", "length");
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

export function writeStockTable(rows: readonly StockRow[]): string {
  const body = rows.map((row) =>
    "size" in row
      ? [
          row.item,
          String(row.count),
          row.size,
          String(row.cores),
          row.colour ?? "",
          writeQuantity(row.lengthM, "m"),
          row.kind,
        ]
      : [row.item, String(row.count), "", "", "", "", ""],
  );
  return writeCsv([[...columns], ...body]);
}
