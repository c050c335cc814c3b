import type { CompletePlan } from "../../plan/completed.js";
import type { Edit } from "../../plan/edits/edit.js";
import type { TableRow } from "./columns.js";
import { type LoadColumn, loadColumns } from "./load-table.js";
import { loadRows } from "./plan-tables.js";

/**
 * The edits that bring a plan's gear to what a load list says: gear it does not have is added, of the rest what differs is set.
 * An empty cell changes nothing; gear the list does not name stays.
 */
export function loadEdits(plan: CompletePlan, rows: readonly TableRow<LoadColumn>[]): Edit[] {
  const known = new Map(loadRows(plan).map((row) => [row.name, row]));
  return rows.flatMap(({ cells }): Edit[] => {
    const { name = "" } = cells;
    const given = loadColumns.flatMap((key) => {
      const text = key === "name" ? undefined : cells[key];
      return text === undefined ? [] : [{ key, to: key === "count" ? Number(text) : text }];
    });
    const before = known.get(name);
    if (before !== undefined)
      return given
        .filter(({ key, to }) => String(to) !== before[key])
        .map(({ key, to }) => ({ edit: "set field", at: name, field: key, to }));
    const keys = given.map(({ key, to }) => `${key}: ${JSON.stringify(to)}`);
    return [{ edit: "add", kind: "gear", name, as: `{${keys.join(", ")}}` }];
  });
}
