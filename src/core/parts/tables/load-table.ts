import { readDraw } from "../../quantity/forms.js";
import { readColumns, readCount, type TableProblem, type TableRow } from "./columns.js";
import { writeCsv } from "./csv.js";

/** Columns of a load list: the plan's own keys of gear. */
export const loadColumns = [
  "name",
  "count",
  "role",
  "draws",
  "behaves as",
  "starts",
  "works",
  "drop",
  "surroundings",
  "weight",
] as const;
export type LoadColumn = (typeof loadColumns)[number];

/**
 * A load list as CSV. The cells stay as the owner wrote them, for the reader of the plan to judge; what it draws and how
 * many there are is looked at here, so that a mistake is named with its line.
 */
export function readLoadTable(text: string): {
  rows: TableRow<LoadColumn>[];
  problems: readonly TableProblem[];
} {
  const table = readColumns(text, loadColumns, ["name", "draws"]);
  const problems = [...table.problems];
  const rows = table.rows.filter(({ line, cells }) => {
    const draw = readDraw(cells.draws ?? "");
    if (!draw.ok) problems.push({ problem: "not-a-quantity", line, column: "draws", fault: draw.fault });
    const count = readCount(cells.count ?? "1", line, "count");
    if (typeof count !== "number") problems.push(count);
    return draw.ok && typeof count === "number";
  });
  return { rows, problems };
}

export function writeLoadTable(rows: readonly Readonly<Partial<Record<LoadColumn, string>>>[]): string {
  return writeCsv([[...loadColumns], ...rows.map((row) => loadColumns.map((column) => row[column] ?? ""))]);
}
