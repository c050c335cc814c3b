/** Text of a block of cells as spreadsheets hand it over: tabs between cells, lines between rows, quotes around either. */
export function readBlock(text: string): string[][] {
  const rows: string[][] = [[]];
  let cell = "";
  let quoted = false;
  const put = () => {
    rows.at(-1)?.push(unguarded(cell.trim()));
    cell = "";
  };
  for (let at = 0; at < text.length; at += 1) {
    const sign = text.charAt(at);
    if (quoted) {
      if (sign !== '"') cell += sign;
      else if (text.charAt(at + 1) === '"') {
        cell += '"';
        at += 1;
      } else quoted = false;
    } else if (sign === '"' && cell === "") quoted = true;
    else if (sign === "\t") put();
    else if (sign === "\n" || sign === "\r") {
      if (sign === "\r" && text.charAt(at + 1) === "\n") at += 1;
      put();
      if (at < text.length - 1) rows.push([]);
    } else cell += sign;
  }
  if (cell !== "" || rows.at(-1)?.length === 0 || text.endsWith("\t")) put();
  return rows;
}

export function writeBlock(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => row.map(written).join("\t")).join("\n");
}

function written(cell: string): string {
  const safe = guarded(cell);
  return /[\t\n\r"]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** What a spreadsheet would take for a formula. A number with its sign is none. */
const formula = /^(?:[=@]|[-+](?![\d.]))/;

/** A cell that another program must not work out as a formula gets an apostrophe before it, and loses it when it comes back. */
const guarded = (cell: string): string => (formula.test(cell) ? `'${cell}` : cell);
const unguarded = (cell: string): string =>
  cell.startsWith("'") && formula.test(cell.slice(1)) ? cell.slice(1) : cell;
