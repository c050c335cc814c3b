import { harmless, paint, type Terminal } from "./terminal.js";

export interface Column {
  readonly heading: string;
  readonly align: "left" | "right";
}

/** A table in plain text, numbers to the right; the widest left column gives way where the terminal is narrow. */
export function textTable(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  terminal: Terminal,
): string[] {
  const cells = rows.map((row) => row.map(harmless));
  const widths = columns.map(({ heading }, at) =>
    Math.max(heading.length, ...cells.map((row) => row[at]?.length ?? 0)),
  );
  const gaps = 2 * (columns.length - 1);
  for (
    let over = total(widths) + gaps - terminal.width;
    over > 0;
    over = total(widths) + gaps - terminal.width
  ) {
    const widest = widestLeft(columns, widths);
    if (widest < 0 || (widths[widest] ?? 0) <= 8) break;
    widths[widest] = Math.max(8, (widths[widest] ?? 0) - over);
  }
  const line = (row: readonly string[]) =>
    columns
      .map(({ align }, at) => {
        const width = widths[at] ?? 0;
        const cell = shorten(row[at] ?? "", width);
        return align === "right" ? cell.padStart(width) : cell.padEnd(width);
      })
      .join("  ")
      .trimEnd();
  return [paint(line(columns.map(({ heading }) => heading)), "quiet", terminal), ...cells.map(line)];
}

const total = (widths: readonly number[]) => widths.reduce((sum, width) => sum + width, 0);

function widestLeft(columns: readonly Column[], widths: readonly number[]): number {
  let widest = -1;
  columns.forEach(({ align }, at) => {
    if (align === "left" && (widest < 0 || (widths[at] ?? 0) > (widths[widest] ?? 0))) widest = at;
  });
  return widest;
}

function shorten(text: string, width: number): string {
  return text.length <= width ? text : `${text.slice(0, width - 1)}…`;
}
