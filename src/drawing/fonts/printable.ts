import { glyphWidth } from "./glyphs.js";

/** Stands visibly for a sign that cannot be printed. */
const unprintable = "□";

const plainText = /^[\x20-\x7e]*$/;
/** Steer the direction or joining of text, or take no room: they could make printed words read otherwise than they are. */
const hidden = /^[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}\p{Zl}\p{Zp}]$/u;

/**
 * One line of words made safe to print: composed signs, tabs and line ends as blanks, and every control sign, direction mark,
 * stray surrogate or sign without a glyph replaced by `□`. Applying it twice changes nothing more.
 */
export function printable(words: string): string {
  if (plainText.test(words)) return words;
  let safe = "";
  for (const sign of words.normalize("NFC").replace(/\r\n|[\t\r\n]/g, " ")) safe += printableSign(sign);
  return safe;
}

function printableSign(sign: string): string {
  if (hidden.test(sign)) return unprintable;
  const codePoint = sign.codePointAt(0) ?? 0;
  return glyphWidth(codePoint, "regular") === undefined || glyphWidth(codePoint, "semibold") === undefined
    ? unprintable
    : sign;
}
