import { readFileSync } from "node:fs";
import type { PdfFonts } from "../../src/drawing/writers/pdf.js";

const bytes = (file: string) =>
  new Uint8Array(readFileSync(new URL(`../../assets/fonts/${file}`, import.meta.url)));

export const fonts: PdfFonts = {
  regular: bytes("SourceSans3-Regular.ttf"),
  semibold: bytes("SourceSans3-SemiBold.ttf"),
};
