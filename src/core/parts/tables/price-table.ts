import { type Money, readMoney, sumMoney, writeMoney } from "../../quantity/money.js";
import type { PackPrice } from "../parts-list.js";
import { nameProblems, type OtherNames, readColumns, readCount, type TableProblem } from "./columns.js";
import { type TableStyle, writeColumns } from "./written.js";

const columns = ["item", "pack", "count", "price"] as const;

/**
 * Prices as CSV: `item,pack,count,price`, the price with its currency (`4.20 EUR`) or in the owner's usual one. An empty
 * price says 'sold so, price not known'.
 */
export function readPriceTable(
  text: string,
  usualCurrency?: string,
  also?: OtherNames,
): { rows: PackPrice[]; problems: readonly TableProblem[] } {
  const table = readColumns(text, { columns, required: ["item", "count"], also });
  const problems = [...table.problems, ...nameProblems(table.rows, "item", false)];
  const read = table.rows.flatMap(({ line, cells }): { line: number; row: PackPrice }[] => {
    const count = readCount(cells.count ?? "", line, "count");
    if (typeof count !== "number" || count === 0) {
      problems.push(
        typeof count === "number" ? { problem: "not-a-count", line, column: "count", found: "0" } : count,
      );
      return [];
    }
    const item = cells.item ?? "";
    const row = { item, pack: cells.pack ?? `${item} × ${count}`, count };
    if (cells.price === undefined) return [{ line, row }];
    const price = readMoney(cells.price, usualCurrency);
    if (!("problem" in price)) return [{ line, row: { ...row, price } }];
    problems.push({ problem: "not-money", line, column: "price", money: price });
    return [];
  });
  const sum = sumMoney(read.flatMap(({ row }): Money[] => (row.price === undefined ? [] : [row.price])));
  if (!sum.ok) {
    const first = read[0]?.row.price?.currency;
    const line = read.find(({ row }) => row.price !== undefined && row.price.currency !== first)?.line ?? 1;
    problems.push({ problem: "not-money", line, column: "price", money: sum.problem });
  }
  return { rows: read.map(({ row }) => row), problems };
}

export function writePriceTable(rows: readonly PackPrice[], { heading }: TableStyle): string {
  const body = rows.map(({ item, pack, count, price }) => ({
    item,
    pack,
    count: String(count),
    ...(price === undefined ? {} : { price: writeMoney(price) }),
  }));
  return writeColumns(
    columns,
    body,
    columns.map((column) => heading(column)),
  );
}
