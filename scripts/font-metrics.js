// Writes src/drawing/fonts/widths.ts from the fonts in assets/fonts: the advance width of every glyph a font has.
import { readFileSync, writeFileSync } from "node:fs";
import PDFDocument from "pdfkit";

const files = { regular: "SourceSans3-Regular.ttf", semibold: "SourceSans3-SemiBold.ttf" };
const blockLength = 30;
/** Missing code points written as `---` before a new block is begun. */
const longestGap = 24;

function blocksOf(file) {
  const document = new PDFDocument({ font: null });
  document.font(readFileSync(new URL(`../assets/fonts/${file}`, import.meta.url)));
  const font = document._font.font;
  if (font.unitsPerEm !== 1000)
    throw new Error(`${file}: widths are kept in thousandths, found ${font.unitsPerEm} units per em`);
  const blocks = [];
  let next = -1;
  for (const codePoint of [...new Set(font.characterSet)].sort((a, b) => a - b)) {
    const width = Math.round(font.glyphForCodePoint(codePoint).advanceWidth);
    const gap = codePoint - next;
    if (next < 0 || gap > longestGap || blocks.at(-1).widths.length + gap >= blockLength)
      blocks.push({ start: codePoint, widths: [] });
    else blocks.at(-1).widths.push(...Array(gap).fill("---"));
    blocks.at(-1).widths.push(width.toString(16).padStart(3, "0"));
    next = codePoint + 1;
  }
  return blocks.map(({ start, widths }) => `    "${start.toString(16)} ${widths.join("")}",`).join("\n");
}

const tables = Object.entries(files).map(([weight, file]) => `  ${weight}: [\n${blocksOf(file)}\n  ],`);
writeFileSync(
  new URL("../src/drawing/fonts/widths.ts", import.meta.url),
  `// Written by scripts/font-metrics.js from assets/fonts; do not edit by hand.

/** Advance widths in thousandths of the type size. A block: first code point (hex), then three hex digits for each code point from there on, --- where there is no glyph. */
export const widthBlocks = {
${tables.join("\n")}
} as const;
`,
);
