import type { QuantityFault } from "../../quantity/fault.js";
import type { MoneyProblem } from "../../quantity/money.js";
import { nearestOf } from "../../quantity/nearest.js";
import { type CsvProblem, readCsv } from "./csv.js";

/** What is wrong with a table someone brings; line and column of the file, from 1. */
export type TableProblem =
  | CsvProblem
  | {
      readonly problem: "unknown-column";
      readonly line: number;
      readonly column: string;
      readonly nearest?: string;
    }
  | { readonly problem: "missing-column"; readonly line: number; readonly column: string }
  | { readonly problem: "column-twice"; readonly line: number; readonly column: string }
  | {
      readonly problem: "too-many-cells";
      readonly line: number;
      readonly expected: number;
      readonly found: number;
    }
  | { readonly problem: "empty-cell"; readonly line: number; readonly column: string }
  | {
      readonly problem: "not-one-of";
      readonly line: number;
      readonly column: string;
      readonly found: string;
      readonly allowed: readonly string[];
    }
  | {
      readonly problem: "not-a-count";
      readonly line: number;
      readonly column: string;
      readonly found: string;
    }
  | {
      readonly problem: "negative-stock";
      readonly line: number;
      readonly column: string;
      readonly found: string;
    }
  | {
      readonly problem: "not-a-quantity";
      readonly line: number;
      readonly column: string;
      readonly fault: QuantityFault;
    }
  | {
      readonly problem: "not-money";
      readonly line: number;
      readonly column: string;
      readonly money: MoneyProblem;
    };

export interface TableRow<Column extends string> {
  readonly line: number;
  /** Trimmed; empty cells are left out. */
  readonly cells: Readonly<Partial<Record<Column, string>>>;
}

export interface Table<Column extends string> {
  readonly rows: readonly TableRow<Column>[];
  readonly problems: readonly TableProblem[];
}

/**
 * Reads a table with a heading: columns in any order, headings without regard to capitals. Nothing unknown is passed over
 * in silence.
 */
export function readColumns<Column extends string>(
  text: string,
  columns: readonly Column[],
  required: readonly Column[],
): Table<Column> {
  const csv = readCsv(text);
  if (!csv.ok) return { rows: [], problems: [csv.problem] };
  const problems: TableProblem[] = [];
  const [heading, ...body] = csv.rows;
  const line = heading?.line ?? 1;
  const found = (heading?.cells ?? []).map((cell) => {
    const name = cell.trim().toLowerCase();
    const column = columns.find((one) => one === name);
    if (column === undefined) {
      const nearest = nearestOf(name, columns);
      problems.push({
        problem: "unknown-column",
        line,
        column: cell,
        ...(nearest === undefined ? {} : { nearest }),
      });
    }
    return column;
  });
  for (const column of columns) {
    const times = found.filter((one) => one === column).length;
    if (times > 1) problems.push({ problem: "column-twice", line, column });
    if (times === 0 && required.includes(column)) problems.push({ problem: "missing-column", line, column });
  }
  if (problems.length > 0) return { rows: [], problems };
  const rows = body.flatMap((row): TableRow<Column>[] => {
    if (row.cells.length > found.length) {
      problems.push({
        problem: "too-many-cells",
        line: row.line,
        expected: found.length,
        found: row.cells.length,
      });
      return [];
    }
    const cells: Partial<Record<Column, string>> = {};
    found.forEach((column, k) => {
      const cell = row.cells[k]?.trim() ?? "";
      if (column !== undefined && cell !== "") cells[column] = cell;
    });
    const empty = required.find((column) => cells[column] === undefined);
    if (empty === undefined) return [{ line: row.line, cells }];
    problems.push({ problem: "empty-cell", line: row.line, column: empty });
    return [];
  });
  return { rows, problems };
}

/** A count of things, or the problem with it. */
export function readCount(text: string, line: number, column: string): number | TableProblem {
  if (/^[-\u2212]\s*\d+$/.test(text)) return { problem: "negative-stock", line, column, found: text };
  if (!/^\d{1,7}$/.test(text)) return { problem: "not-a-count", line, column, found: text };
  return Number(text);
}
