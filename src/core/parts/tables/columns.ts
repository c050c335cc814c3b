import type { QuantityFault } from "../../quantity/fault.js";
import { alikes, composed, revealedWhole } from "../../quantity/look-alike.js";
import type { MoneyProblem } from "../../quantity/money.js";
import { nearestOf } from "../../quantity/nearest.js";
import { unitWritten } from "../../quantity/units.js";
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
      readonly problem: "names-alike" | "name-twice";
      readonly line: number;
      readonly column: string;
      readonly found: string;
      readonly firstLine: number;
    }
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
  /** Units that stand in the heading, `length (in)`: what a number without one is in. */
  readonly units: Readonly<Partial<Record<Column, string>>>;
  readonly problems: readonly TableProblem[];
}

/** Other names of columns and of what may stand under them, in small letters: those of other languages. */
export type OtherNames = ReadonlyMap<string, string>;

export interface Headed<Column extends string> {
  readonly columns: readonly Column[];
  readonly required: readonly Column[];
  /** Columns of lengths: their heading may end in a unit, `length (in)`. */
  readonly lengths?: readonly Column[];
  readonly also?: OtherNames | undefined;
}

/**
 * Reads a table with a heading: columns in any order, headings without regard to capitals and in any language that `also` has.
 * Nothing unknown is passed over in silence.
 */
export function readColumns<Column extends string>(
  text: string,
  { columns, required, lengths = [], also = new Map() }: Headed<Column>,
): Table<Column> {
  const units: Partial<Record<Column, string>> = {};
  const csv = readCsv(text);
  if (!csv.ok) return { rows: [], units, problems: [csv.problem] };
  const problems: TableProblem[] = [];
  const [heading, ...body] = csv.rows;
  const line = heading?.line ?? 1;
  const found = (heading?.cells ?? []).map((cell) => {
    const name = nameOf(cell);
    const inUnit = /^(.*?)\s*\(([^()]*)\)$/.exec(name);
    const known = (asked: string) => columns.find((one) => one === (also.get(asked) ?? asked));
    const measured = inUnit === null ? undefined : known(inUnit[1] ?? "");
    const sign = unitWritten(inUnit?.[2] ?? "");
    const withUnit = measured !== undefined && lengths.includes(measured) && sign?.dimension === "length";
    const column = withUnit ? measured : known(name);
    if (withUnit) units[measured] = sign.sign;
    if (column === undefined) {
      const nearest = nearestOf(inUnit?.[1] ?? name, [...columns, ...namesOf(also, columns)]);
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
  if (problems.length > 0) return { rows: [], units, problems };
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
      const cell = composed(row.cells[k] ?? "").trim();
      if (column !== undefined && cell !== "") cells[column] = cell;
    });
    const empty = required.find((column) => cells[column] === undefined);
    if (empty === undefined) return [{ line: row.line, cells }];
    problems.push({ problem: "empty-cell", line: row.line, column: empty });
    return [];
  });
  return { rows, units, problems };
}

/** A heading or a word under one, as it is looked up: composed letters, small, blanks at its ends off. */
export const nameOf = (cell: string): string => composed(cell).trim().toLowerCase();

const namesOf = (also: OtherNames, columns: readonly string[]): string[] =>
  [...also].flatMap(([name, column]) => (columns.includes(column) ? [name] : []));

/** Names of a column that look like one further up and are another; where each is for one thing, also those that are one. */
export function nameProblems<Column extends string>(
  rows: readonly TableRow<Column>[],
  column: Column,
  once: boolean,
): TableProblem[] {
  const named = rows.flatMap(({ line, cells }) => {
    const name = cells[column];
    return name === undefined ? [] : [{ line, name }];
  });
  const alike = alikes(named, ({ name }) => name).map(
    ({ thing, first }): TableProblem => ({
      problem: "names-alike",
      line: thing.line,
      column,
      found: revealedWhole(thing.name),
      firstLine: first.line,
    }),
  );
  if (!once) return alike;
  const seen = new Map<string, number>();
  const twice = named.flatMap(({ line, name }): TableProblem[] => {
    const firstLine = seen.get(name);
    if (firstLine !== undefined) return [{ problem: "name-twice", line, column, found: name, firstLine }];
    seen.set(name, line);
    return [];
  });
  return [...alike, ...twice];
}

/** A count of things, or the problem with it. */
export function readCount(text: string, line: number, column: string): number | TableProblem {
  if (/^[-\u2212]\s*\d+$/.test(text)) return { problem: "negative-stock", line, column, found: text };
  if (!/^\d{1,7}$/.test(text)) return { problem: "not-a-count", line, column, found: text };
  return Number(text);
}
