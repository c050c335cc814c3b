import { writeCsv } from "../core/parts/tables/csv.js";

/** A table as CSV on standard output; a cell that a spreadsheet would run as a formula is made harmless. */
export function printCsv(heading: readonly string[], rows: readonly (readonly string[])[]): void {
  process.stdout.write(writeCsv([heading, ...rows]));
}

/** A number for a spreadsheet: a point, no unit. */
export const plainNumber = (value: number | undefined, places: number): string =>
  value === undefined || !Number.isFinite(value) ? "" : String(Number(value.toFixed(places)));
