import type { HullProblem } from "../problem.js";
import type { Point } from "../vector.js";
import type { LinePoints, Span } from "./form.js";

/** How the numbers of a table are written: metres each stands for, or the loftsman's feet-inches-eighths (`2-7-4`). */
export type OffsetNotation = { readonly unitM: number } | "feet-inches-eighths";

/**
 * Reads a table of offsets written as comma (or semicolon, or tab) separated text.
 * The first column is `station`, the distance from station 0; then, for each line, `NAME half-breadth` and `NAME height`.
 * A line without half-breadths lies on the centreline; `NAME half-breadth` beside `height` alone in a heading `waterline H` stands at height H.
 * `also`: other words for these in a heading, by the one they stand for.
 * An empty cell (or `-`) means the line does not reach that station. Lines keep the order of their first column: keel first.
 * @throws RangeError if the unit is not above zero.
 */
export function parseOffsets(
  text: string,
  notation: OffsetNotation,
  also: ReadonlyMap<string, string> = new Map(),
): { lines: LinePoints[]; problems: HullProblem[] } {
  if (notation !== "feet-inches-eighths" && !(notation.unitM > 0))
    throw new RangeError(`unit must be > 0 m, got ${notation.unitM}`);
  const problems: HullProblem[] = [];
  const rows = text
    .replace(/^\uFEFF/, "")
    .split(/\r\n|\r|\n/)
    .map((line, i) => ({
      number: i + 1,
      cells: line.split(/[,;\t]/).map((cell) => cell.trim().replace(/^"(.*)"$/, "$1")),
    }))
    .filter(({ cells }) => cells.some((cell) => cell !== "") && !cells[0]?.startsWith("#"));
  const head = rows[0]?.cells ?? [];
  const columns = head.map((title, i) => readTitle(title, i, notation, also));
  for (const [i, column] of columns.entries())
    if (column === undefined)
      problems.push({ problem: "unknown column", at: `column ${i + 1}`, terms: { found: head[i] ?? "" } });
  const names = [
    ...new Set(columns.flatMap((column) => (column && column.line !== "" ? [column.line] : []))),
  ];
  const points = new Map<string, Point[]>(names.map((name) => [name, []]));
  for (const { number, cells } of rows.slice(1)) {
    const values = columns.map((column, i): number | undefined => {
      const cell = cells[i] ?? "";
      if (column === undefined || cell === "" || cell === "-") return undefined;
      const value = readOffset(cell, notation);
      if (value === undefined)
        problems.push({
          problem: "number expected",
          at: `line ${number}, column ${i + 1}`,
          terms: { found: cell },
        });
      return value;
    });
    const station = values[columns.findIndex((column) => column?.what === "station")];
    if (station === undefined) continue;
    for (const name of names) {
      const value = (what: string) => {
        const i = columns.findIndex((column) => column?.line === name && column.what === what);
        return i < 0 ? "no column" : values[i];
      };
      const half = value("half-breadth");
      const height = columns.find((column) => column?.line === name)?.heightM ?? value("height");
      if (half === undefined || typeof height !== "number") continue;
      points.get(name)?.push([station, half === "no column" ? 0 : Number(half), height]);
    }
  }
  const lines = names.map((name): LinePoints => {
    const waterline = columns.find((column) => column?.line === name)?.heightM !== undefined;
    const above: Span = waterline ? "round" : "flat";
    return { name, points: points.get(name) ?? [], knuckle: !waterline, above };
  });
  return { lines, problems };
}

interface Column {
  readonly line: string;
  readonly what: "station" | "half-breadth" | "height";
  readonly heightM?: number;
}

function readTitle(
  title: string,
  index: number,
  notation: OffsetNotation,
  also: ReadonlyMap<string, string>,
): Column | undefined {
  const plain = title
    .normalize("NFC")
    .toLowerCase()
    .split(/\s+/)
    .map((word) => also.get(word) ?? word)
    .join(" ");
  if (index === 0) return plain === "station" || plain === "x" ? { line: "", what: "station" } : undefined;
  const waterline = /^(waterline (\S+))(?: half-breadth)?$/.exec(plain);
  if (waterline) {
    const heightM = readOffset(waterline[2] ?? "", notation);
    return heightM === undefined ? undefined : { line: waterline[1] ?? "", what: "half-breadth", heightM };
  }
  const named = /^(.+) (half-breadth|height)$/.exec(plain);
  return named
    ? { line: named[1] ?? "", what: named[2] === "height" ? "height" : "half-breadth" }
    : undefined;
}

/** One number of the table [m], or undefined where it is none. `2-7-4+` is 2 ft 7 4/8 in and half an eighth. */
export function readOffset(cell: string, notation: OffsetNotation): number | undefined {
  if (notation !== "feet-inches-eighths") {
    const value = cell === "" ? Number.NaN : Number(cell);
    return Number.isFinite(value) ? value * notation.unitM : undefined;
  }
  const parts = /^(-)?(\d+)-(\d+)-(\d+)([+-])?$/.exec(cell);
  if (!parts) return undefined;
  const eighths = Number(parts[4]) + (parts[5] === "+" ? 0.5 : parts[5] === "-" ? -0.5 : 0);
  if (!(Number(parts[3]) < 12 && Number(parts[4]) < 8)) return undefined;
  return (parts[1] ? -1 : 1) * (Number(parts[2]) * 0.3048 + Number(parts[3]) * 0.0254 + eighths * 0.003175);
}
