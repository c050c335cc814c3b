import type { Edit } from "../../../core/plan/edits/edit.js";
import { keyText } from "../../../core/plan/edits/value.js";
import { type FormTable, listKey, sameStationM, type TableColumn, type TableRow } from "./table.js";

/** A figure for a cell; undefined: none was measured there. */
export interface FigureChange {
  readonly row: TableRow;
  readonly column: TableColumn;
  readonly text: string | undefined;
}

/** A station that moves. */
export interface StationChange {
  readonly row: TableRow;
  readonly text: string;
  readonly stationM: number;
}

/** A station that comes, with what was measured there by the column's key. */
export interface NewStation {
  readonly text: string;
  readonly stationM: number;
  readonly figures: ReadonlyMap<string, string>;
}

export interface TableChanges {
  readonly figures: readonly FigureChange[];
  readonly stations: readonly StationChange[];
  readonly come: readonly NewStation[];
  readonly gone: readonly TableRow[];
}

export const noChanges: TableChanges = { figures: [], stations: [], come: [], gone: [] };

const set = (field: string, to: string): Edit => ({
  edit: "set field",
  at: "craft",
  field: `form / ${field}`,
  to,
});
const remove = (field: string): Edit => ({ edit: "remove field", at: "craft", field: `form / ${field}` });

/** The edits that bring changes of the table into the plan, all of one step. */
export function tableEdits(table: FormTable, changes: TableChanges): Edit[] {
  return table.kind === "survey" ? surveyEdits(table, changes) : measuredEdits(table, changes);
}

const noFigure = "none";

function surveyEdits(table: FormTable, changes: TableChanges): Edit[] {
  const order = orderAfter(table, changes);
  const kept = order.length === table.rows.length && order.every((one, i) => one.was === i);
  if (!kept) return wholeLists(table, changes, order);
  return [
    ...changes.stations.map(({ row, text }) =>
      set(`stations / ${table.rows.indexOf(row) + 1}`, keyText(text)),
    ),
    ...changes.figures.map(({ row, column, text }) =>
      set(
        `lines / ${column.line} / ${listKey(column.coordinate)} / ${table.rows.indexOf(row) + 1}`,
        text === undefined ? noFigure : keyText(text),
      ),
    ),
  ];
}

/** A line of the table as it will be: one that was there, by its number, or a new one. */
interface NextRow {
  readonly stationM: number;
  readonly text: string;
  readonly was?: number;
  readonly figures?: NewStation["figures"];
}

function orderAfter({ rows }: FormTable, { stations, come, gone }: TableChanges): NextRow[] {
  const moved = new Map(stations.map((one) => [one.row, one]));
  const stay = rows.flatMap((row, was): NextRow[] => {
    if (gone.includes(row)) return [];
    const { stationM, text } = moved.get(row) ?? { stationM: row.stationM, text: row.name };
    return [{ was, stationM, text }];
  });
  return [...stay, ...come].sort((a, b) => a.stationM - b.stationM);
}

/** Stations come, go, or change places: every list is written anew. */
function wholeLists(table: FormTable, { figures }: TableChanges, order: readonly NextRow[]): Edit[] {
  const typed = new Map(
    figures.map(({ row, column, text }) => [`${row.key}\n${column.key}`, text ?? noFigure]),
  );
  const list = (texts: readonly string[]) => `[${texts.map(keyText).join(", ")}]`;
  const cell = ({ key }: TableColumn, next: NextRow): string => {
    const row = next.was === undefined ? undefined : table.rows[next.was];
    if (row === undefined) return next.figures?.get(key) ?? noFigure;
    return typed.get(`${row.key}\n${key}`) ?? row.figures.get(key)?.text ?? noFigure;
  };
  return [
    set("stations", list(order.map(({ text }) => text))),
    ...table.columns.map((column) =>
      set(
        `lines / ${column.line} / ${listKey(column.coordinate)}`,
        list(order.map((next) => cell(column, next))),
      ),
    ),
  ];
}

/** What was measured of a starting form: a list of places, each with one figure or both. */
function measuredEdits(table: FormTable, changes: TableChanges): Edit[] {
  const items = itemsOf(table);
  const { count } = table;
  const edits: Edit[] = [];
  const bare = new Map<number, Set<string>>();
  const taken = (item: number, key: string) => bare.set(item, (bare.get(item) ?? new Set()).add(key));
  const fresh = new Map<string, { at: string; line: string; parts: string[] }>();
  const add = (at: string, { line, coordinate }: TableColumn, text: string) => {
    const key = `${at}\n${line}`;
    const one = fresh.get(key) ?? { at, line, parts: [] };
    one.parts.push(`${coordinate}: ${keyText(text)}`);
    fresh.set(key, one);
  };
  for (const { row, column, text } of changes.figures) {
    const there = row.figures.get(column.key);
    const beside = there ?? besides(table, row, column);
    if (text === undefined) {
      if (there) taken(there.item, column.key);
    } else if (beside) edits.push(set(`measured / ${beside.item + 1} / ${column.coordinate}`, keyText(text)));
    else add(row.name, column, text);
  }
  for (const { row, text } of changes.stations)
    for (const item of itemsAt(row)) edits.push(set(`measured / ${item + 1} / at`, keyText(text)));
  for (const { text: at, figures } of changes.come)
    for (const column of table.columns) {
      const text = figures.get(column.key);
      if (text !== undefined) add(at, column, text);
    }
  for (const row of changes.gone) for (const [key, { item }] of row.figures) taken(item, key);
  const written = [...fresh.values()].map(
    ({ at, line, parts }) => `{line: ${keyText(line)}, at: ${keyText(at)}, ${parts.join(", ")}}`,
  );
  if (count === 0 && written.length > 0) edits.push(set("measured", `[${written.join(", ")}]`));
  else edits.push(...written.map((one, i) => set(`measured / ${count + i + 1}`, one)));
  // from the last: the numbers of those before stay
  for (const [item, keys] of [...bare].sort(([a], [b]) => b - a)) {
    const whole = items.get(item) ?? [];
    if (whole.every((key) => keys.has(key))) edits.push(remove(`measured / ${item + 1}`));
    else
      for (const { key, coordinate } of table.columns)
        if (keys.has(key)) edits.push(remove(`measured / ${item + 1} / ${coordinate}`));
  }
  return edits;
}

/** Keys of the figures in each item of the list. */
function itemsOf({ rows }: FormTable): Map<number, string[]> {
  const items = new Map<number, string[]>();
  for (const { figures } of rows)
    for (const [key, { item }] of figures) items.set(item, [...(items.get(item) ?? []), key]);
  return items;
}

const itemsAt = ({ figures }: TableRow): number[] => [
  ...new Set([...figures.values()].map(({ item }) => item)),
];

/** The other figure of the same line at the same place, in whose item this one goes too. */
function besides({ columns }: FormTable, { figures }: TableRow, { line, key }: TableColumn) {
  const other = columns.find((one) => one.line === line && one.key !== key);
  return other && figures.get(other.key);
}

/** Is there a station at that place already? */
export const rowAt = ({ rows }: FormTable, stationM: number): TableRow | undefined =>
  rows.find((row) => Math.abs(row.stationM - stationM) < sameStationM);
