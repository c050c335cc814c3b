import type { Weight } from "../shapes.js";
import { glyphWidth } from "./glyphs.js";
import { textWidthMm } from "./measure.js";
import { printable } from "./printable.js";

export interface Type {
  readonly sizeMm: number;
  readonly weight: Weight;
}

const ellipsis = "…";

/** Words as they may part: at blanks, after a hyphen, and after a slash that does not stand in a fraction. */
const pieces = (() => {
  const inside = "(?:[^ /\\-–]|(?<=\\d)/(?=\\d))";
  const end = "(?:[\\-–]|(?<!\\d)/|/(?!\\d))";
  return new RegExp(`${inside}*${end}+|${inside}+| `, "g");
})();

/** One line no wider than `maxWidthMm`, cut with … where it must be. */
export function fitText(words: string, maxWidthMm: number, type: Type): string {
  return wrapText(words, maxWidthMm, type, 1)[0] ?? "";
}

/**
 * Breaks words into lines no wider than `maxWidthMm`: at blanks, after a slash (never of a fraction) or hyphen, and inside a word only where it
 * is wider than a line. What does not fit in `maxLines` is cut with ….
 * @throws RangeError if the width or the number of lines is not above zero.
 */
export function wrapText(words: string, maxWidthMm: number, type: Type, maxLines = 1000): string[] {
  if (!(maxWidthMm > 0)) throw new RangeError(`line width must be > 0 mm, got ${maxWidthMm}`);
  if (!(maxLines >= 1)) throw new RangeError(`number of lines must be ≥ 1, got ${maxLines}`);
  // A few hundred signs fill any line; the rest of a hostile name is never measured.
  const mostSigns = Math.ceil((maxWidthMm / (0.1 * type.sizeMm)) * maxLines) + 10;
  const cutShort = words.length > mostSigns;
  const text = printable(cutShort ? words.slice(0, mostSigns) : words)
    .replace(/ +/g, " ")
    .trim();
  const lines: string[] = [];
  let line = "";
  for (const piece of text.match(pieces) ?? []) {
    if (fits(line + piece, maxWidthMm, type)) {
      line += piece;
      continue;
    }
    if (lines.length >= maxLines) break;
    if (line.trim() !== "") lines.push(line.trimEnd());
    line = piece === " " ? "" : piece;
    while (!fits(line, maxWidthMm, type) && lines.length <= maxLines) {
      const head = longestHead(line, maxWidthMm, type);
      lines.push(head);
      line = line.slice(head.length);
    }
  }
  if (line.trim() !== "") lines.push(line.trimEnd());
  if (lines.length === 0) return [""];
  if (lines.length <= maxLines && !cutShort) return lines;
  const kept = lines.slice(0, maxLines);
  const last = (kept.at(-1) ?? "").trimEnd();
  kept[kept.length - 1] =
    `${longestHead(last, maxWidthMm - textWidthMm(ellipsis, type.sizeMm, type.weight), type)}${ellipsis}`;
  return kept;
}

function fits(line: string, maxWidthMm: number, type: Type): boolean {
  return textWidthMm(line.trimEnd(), type.sizeMm, type.weight) <= maxWidthMm;
}

/** As many signs from the start as fit, one at the least. */
function longestHead(line: string, maxWidthMm: number, type: Type): string {
  let head = "";
  let widthMm = 0;
  for (const sign of line) {
    widthMm += ((glyphWidth(sign.codePointAt(0) ?? 0, type.weight) ?? 0) / 1000) * type.sizeMm;
    if (widthMm > maxWidthMm && head !== "") break;
    head += sign;
  }
  return head;
}
