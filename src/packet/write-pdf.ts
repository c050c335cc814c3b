import type { Sheet } from "../drawing/shapes.js";
import type { PdfOptions } from "../drawing/writers/pdf.js";

/** Sheets as a PDF. What writes it is the largest part of the house, and is fetched with the first that is wanted: a list of what there is to print does without. */
export async function writePdf(sheets: readonly Sheet[], options: PdfOptions): Promise<Uint8Array> {
  const { pdfDocument } = await import("../drawing/writers/pdf.js");
  return pdfDocument(sheets, options);
}
