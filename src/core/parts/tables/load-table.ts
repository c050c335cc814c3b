import { readDraw } from "../../quantity/forms.js";
import {
  nameProblems,
  type OtherNames,
  readColumns,
  readCount,
  type TableProblem,
  type TableRow,
} from "./columns.js";
import { type TableStyle, writeColumns } from "./written.js";

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
export function readLoadTable(
  text: string,
  also?: OtherNames,
): {
  rows: TableRow<LoadColumn>[];
  problems: readonly TableProblem[];
} {
  const table = readColumns(text, { columns: loadColumns, required: ["name", "draws"], also });
  const problems = [...table.problems, ...nameProblems(table.rows, "name", true)];
  const rows = table.rows.filter(({ line, cells }) => {
    const draw = readDraw(cells.draws ?? "");
    if (!draw.ok) problems.push({ problem: "not-a-quantity", line, column: "draws", fault: draw.fault });
    const count = readCount(cells.count ?? "1", line, "count");
    if (typeof count !== "number") problems.push(count);
    return draw.ok && typeof count === "number";
  });
  return { rows, problems };
}

export function writeLoadTable(
  rows: readonly Readonly<Partial<Record<LoadColumn, string>>>[],
  { heading }: TableStyle,
): string {
  return writeColumns(
    loadColumns,
    rows,
    loadColumns.map((column) => heading(column)),
  );
}
