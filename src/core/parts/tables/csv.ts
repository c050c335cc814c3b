/**
 * Comma-separated values after RFC 4180 (2005): fields in quotes where they hold a comma, a quote or a line end; a quote
 * inside is doubled; lines end in CR LF.
 */

export interface CsvProblem {
  readonly problem: "open-quote" | "text-after-quote" | "quote-in-plain-field" | "too-large";
  readonly line: number;
  readonly column: number;
}

export type CsvAnswer =
  | { readonly ok: true; readonly rows: readonly CsvRow[] }
  | { readonly ok: false; readonly problem: CsvProblem };

export interface CsvRow {
  /** Line of the file the row begins on, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

const maxLength = 5_000_000;
/** A spreadsheet runs a cell that begins so as a formula. */
const startsFormula = /^[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/;
const plainNumber = /^[+-]?\d+([.,]\d+)?$/;

/** Text as a cell that no spreadsheet runs: a leading apostrophe before what would start a formula. Plain numbers stay. */
export function neutralCell(text: string): string {
  if (plainNumber.test(text)) return text;
  // Leading blanks and apostrophes do not hide a formula; a second apostrophe keeps the way back unambiguous.
  const bare = text.replace(/^['\s\u00A0\uFEFF]+/, "");
  return startsFormula.test(text) || startsFormula.test(bare) ? `'${text}` : text;
}

/** What `neutralCell` made harmless, as it was. */
export function plainCell(cell: string): string {
  return cell.startsWith("'") && neutralCell(cell.slice(1)) === cell ? cell.slice(1) : cell;
}

export function writeCsv(rows: readonly (readonly string[])[]): string {
  const quoted = (cell: string): string => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
  return rows.map((row) => `${row.map((cell) => quoted(neutralCell(cell))).join(",")}\r\n`).join("");
}

/**
 * Reads what `writeCsv` writes, and what spreadsheets do: LF alone, a byte order mark, semicolons for commas where the
 * first line has only those. Empty lines are passed over; an apostrophe put there for safety is taken off.
 */
export function readCsv(text: string): CsvAnswer {
  if (text.length > maxLength) return { ok: false, problem: { problem: "too-large", line: 1, column: 1 } };
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  const first = body.slice(0, /[\r\n]/.exec(body)?.index ?? body.length);
  const comma = !first.includes(",") && first.includes(";") ? ";" : ",";
  const rows: CsvRow[] = [];
  let [at, line, lineStart] = [0, 1, 0];
  const fail = (problem: CsvProblem["problem"]): CsvAnswer => ({
    ok: false,
    problem: { problem, line, column: at - lineStart + 1 },
  });
  while (at < body.length) {
    const startLine = line;
    const cells: string[] = [];
    for (;;) {
      let cell = "";
      if (body[at] === '"') {
        const [openAt, openLine, openStart] = [at, line, lineStart];
        at += 1;
        for (;;) {
          const char = body[at];
          if (char === undefined) {
            [at, line, lineStart] = [openAt, openLine, openStart];
            return fail("open-quote");
          }
          at += 1;
          if (char === '"') {
            if (body[at] !== '"') break;
            at += 1;
          } else if (char === "\n") {
            line += 1;
            lineStart = at;
          }
          cell += char;
        }
        const after = body[at];
        if (after !== undefined && after !== comma && after !== "\r" && after !== "\n")
          return fail("text-after-quote");
      } else {
        const from = at;
        for (
          let char = body[at];
          char !== undefined && char !== comma && char !== "\r" && char !== "\n";
          char = body[at]
        ) {
          if (char === '"') return fail("quote-in-plain-field");
          at += 1;
        }
        cell = body.slice(from, at);
      }
      cells.push(plainCell(cell));
      if (body[at] !== comma) break;
      at += 1;
    }
    if (body[at] === "\r") at += 1;
    if (body[at] === "\n") at += 1;
    line += 1;
    lineStart = at;
    if (cells.some((cell) => cell.trim() !== "")) rows.push({ line: startLine, cells });
  }
  return { ok: true, rows };
}
