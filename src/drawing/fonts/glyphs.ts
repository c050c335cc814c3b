import type { Weight } from "../shapes.js";
import { widthBlocks } from "./widths.js";

const tables: Readonly<Record<Weight, ReadonlyMap<number, number>>> = {
  regular: unpack(widthBlocks.regular),
  semibold: unpack(widthBlocks.semibold),
};

/** Advance width of a glyph in thousandths of the type size; undefined where the font has none. */
export function glyphWidth(codePoint: number, weight: Weight): number | undefined {
  return tables[weight].get(codePoint);
}

function unpack(blocks: readonly string[]): Map<number, number> {
  const widths = new Map<number, number>();
  for (const block of blocks) {
    const [start = "", digits = ""] = block.split(" ");
    for (let index = 0; index * 3 < digits.length; index += 1) {
      const width = digits.slice(index * 3, index * 3 + 3);
      if (width !== "---") widths.set(Number.parseInt(start, 16) + index, Number.parseInt(width, 16));
    }
  }
  return widths;
}
