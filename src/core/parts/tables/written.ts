import { writeCsv } from "./csv.js";

/** How a table is written: the owner's unit of length, and the names of its columns in the reader's language. */
export interface TableStyle {
  readonly lengths: "inches" | "millimetres";
  /** A column's heading; the unit of what stands under it, where it has one. */
  readonly heading: (column: string, unit?: string) => string;
  /** A conductor's size, with its area where the owner reads that. */
  readonly size: (key: string) => string;
  /** A word of the format under a heading: `offcut`, `spool`. */
  readonly word: (word: string) => string;
}

/** The unit wire is counted in. */
export const wireUnit = ({ lengths }: Pick<TableStyle, "lengths">): "in" | "m" =>
  lengths === "inches" ? "in" : "m";

/** Rows under the headings of their columns. */
export function writeColumns<Column extends string>(
  columns: readonly Column[],
  rows: readonly Readonly<Partial<Record<Column, string>>>[],
  headings: readonly string[],
): string {
  return writeCsv([headings, ...rows.map((row) => columns.map((column) => row[column] ?? ""))]);
}
