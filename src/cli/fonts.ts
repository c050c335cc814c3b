import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { PdfFonts } from "../drawing/writers/pdf.js";

/** The fonts of the house: they lie in the package, two folders above the built command. */
export function houseFonts(): PdfFonts {
  const read = (name: string) =>
    readFileSync(fileURLToPath(new URL(`../../assets/fonts/${name}`, import.meta.url)));
  return { regular: read("SourceSans3-Regular.ttf"), semibold: read("SourceSans3-SemiBold.ttf") };
}
