/**
 * A reader of CSV that works as spreadsheets do, written apart from the project's own and stricter: RFC 4180 (2005) line by line,
 * with the columns of the heading in every row.
 * @throws Error on what a spreadsheet would show in the wrong cells, or run.
 */
export function spreadsheetRows(text: string): string[][] {
  const rows: string[][] = [];
  let [row, cell, quoted]: [string[], string, boolean] = [[], "", false];
  const endCell = () => {
    // A spreadsheet takes the cell for a formula, whatever quotes stood around it.
    if (/^[=+\-@\t\r]/.test(cell) && Number.isNaN(Number(cell))) throw new Error(`would be run: ${cell}`);
    row.push(cell);
    cell = "";
  };
  for (let at = 0; at < text.length; at += 1) {
    const char = text.charAt(at);
    if (quoted) {
      if (char !== '"') cell += char;
      else if (text.charAt(at + 1) === '"') {
        cell += char;
        at += 1;
      } else quoted = false;
    } else if (char === '"' && cell === "") quoted = true;
    else if (char === ",") endCell();
    else if (char === "\r" && text.charAt(at + 1) === "\n") {
      endCell();
      rows.push(row);
      row = [];
      at += 1;
    } else cell += char;
  }
  if (quoted || row.length > 0 || cell !== "") throw new Error("the last line is not closed");
  for (const cells of rows)
    if (cells.length !== rows[0]?.length) throw new Error(`${cells.length} cells: ${cells.join(" | ")}`);
  return rows;
}

/** The table as a spreadsheet of a country with decimal commas saves it: byte order mark, semicolons, LF, quotes only where needed. */
export function spreadsheetText(text: string): string {
  const cellText = (cell: string) => (/[";\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
  return `\uFEFF${spreadsheetRows(text)
    .map((cells) => `${cells.map(cellText).join(";")}\n`)
    .join("")}`;
}
