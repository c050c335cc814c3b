import { harmless, paint, type Terminal, wrap } from "./terminal.js";

export interface Column {
  readonly heading: string;
  readonly align: "left" | "right";
}

export const left = (heading: string): Column => ({ heading, align: "left" });
export const right = (heading: string): Column => ({ heading, align: "right" });

const gap = "  ";

/**
 * A table in plain text, numbers to the right. Where the terminal is narrow the words of its left columns wrap in their cells; where that is not
 * enough each row stands for itself, its figures under its name with their headings. Nothing is cut.
 */
export function textTable(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  terminal: Terminal,
): string[] {
  const cells = rows.map((row) => columns.map((_, at) => harmless(row[at] ?? "")));
  const widths = widthsFor(columns, cells, terminal.width);
  if (widths === undefined) return cells.flatMap((row) => record(columns, row, terminal));
  const headings = columns.map(({ heading }) => heading);
  const lines = (row: readonly string[]) => rowLines(columns, row, widths);
  return [...lines(headings).map((line) => paint(line, "quiet", terminal)), ...cells.flatMap(lines)];
}

/** Words longer than this are broken where a column is narrow; the name a row begins with wraps only where it is longer than that. */
const longestWord = 16;
const longestName = 24;

/** Widths at which the table fits; undefined: it does not, however its words wrap. */
function widthsFor(
  columns: readonly Column[],
  cells: readonly (readonly string[])[],
  roomWide: number,
): number[] | undefined {
  const all = columns.map(({ heading }, at) => [heading, ...cells.map((row) => row[at] ?? "")]);
  const widths = all.map((texts) => Math.max(...texts.map(({ length }) => length)));
  const least = all.map((texts, at) => {
    const width = widths[at] ?? 0;
    if (columns[at]?.align === "right") return width;
    if (at === 0) return Math.min(width, longestName);
    const words = texts.flatMap((text) => text.split(" ").map(({ length }) => Math.min(length, longestWord)));
    return Math.max(...words);
  });
  const gaps = gap.length * (columns.length - 1);
  for (let over = total(widths) + gaps - roomWide; over > 0; over -= 1) {
    let widest = -1;
    for (const [at, width] of widths.entries())
      if (width > (least[at] ?? 0) && width > (widths[widest] ?? 0)) widest = at;
    if (widest < 0) return undefined;
    widths[widest] = (widths[widest] ?? 0) - 1;
  }
  return widths;
}

const total = (widths: readonly number[]) => widths.reduce((sum, width) => sum + width, 0);

function rowLines(columns: readonly Column[], row: readonly string[], widths: readonly number[]): string[] {
  const set = row.map((cell, at) => wrapHard(cell, widths[at] ?? 0));
  const height = Math.max(1, ...set.map(({ length }) => length));
  return Array.from({ length: height }, (_, line) =>
    columns
      .map(({ align }, at) => {
        const text = set[at]?.[line] ?? "";
        return align === "right" ? text.padStart(widths[at] ?? 0) : text.padEnd(widths[at] ?? 0);
      })
      .join(gap)
      .trimEnd(),
  );
}

/** As `wrap`; a word that is longer than a line is broken. */
function wrapHard(text: string, width: number): string[] {
  return wrap(text, width).flatMap((line) =>
    line.length <= width ? [line] : (line.match(new RegExp(`.{1,${Math.max(1, width)}}`, "gu")) ?? [line]),
  );
}

/** A heading and a short figure under it are not parted. */
function underHeading({ heading, align }: Column = { heading: "", align: "left" }, cell: string): string {
  if (heading === "") return cell;
  const together = align === "right" && heading.length + cell.length < 28;
  return together ? `${heading} ${cell}`.replaceAll(" ", "\u00a0") : `${heading} ${cell}`;
}

function record(columns: readonly Column[], row: readonly string[], terminal: Terminal): string[] {
  const [name = "", ...rest] = row;
  const figures = rest.flatMap((cell, at) => (cell === "" ? [] : [underHeading(columns[at + 1], cell)]));
  const under = wrapHard(figures.join("\u00a0· "), terminal.width - 4).map((line) => `    ${line}`);
  return [...(name === "" ? [] : wrapHard(name, terminal.width)), ...(figures.length === 0 ? [] : under)];
}
