import type { Weight } from "../shapes.js";
import { glyphWidth } from "./glyphs.js";
import { printable } from "./printable.js";

/**
 * Width of one line of text as printed [mm], kerning left out, so never less than the truth by more than a kern pair.
 * @param sizeMm Type size [mm].
 * @throws RangeError if the size is not above zero.
 */
export function textWidthMm(words: string, sizeMm: number, weight: Weight): number {
  if (!(sizeMm > 0)) throw new RangeError(`type size must be > 0 mm, got ${sizeMm}`);
  let thousandths = 0;
  for (const sign of printable(words)) thousandths += glyphWidth(sign.codePointAt(0) ?? 0, weight) ?? 0;
  return (thousandths / 1000) * sizeMm;
}
