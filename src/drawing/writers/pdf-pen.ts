import type PDFDocument from "pdfkit";
import { type Colour, palette } from "../palette.js";
import type { Stroke } from "../shapes.js";
import { inPoints } from "./pdf-points.js";

/** Colours and lines as they are set on a page: what is set already is not written again, which is a third of a packet. */
export class PdfPen {
  private fillColour: Colour | undefined;
  private strokeColour: Colour | undefined;
  private widthMm: number | undefined;
  private dash: string | undefined;

  constructor(private readonly document: PDFDocument) {}

  /** On a new page, or after what was saved is restored, nothing is known to be set. */
  forget(): void {
    this.fillColour = undefined;
    this.strokeColour = undefined;
    this.widthMm = undefined;
    this.dash = undefined;
  }

  fill(colour: Colour): void {
    if (this.fillColour !== colour) this.document.fillColor(palette[colour]);
    this.fillColour = colour;
  }

  stroke({ colour, widthMm, dashMm = [] }: Stroke): void {
    if (this.widthMm !== widthMm) this.document.lineWidth(inPoints(widthMm));
    if (this.strokeColour !== colour) this.document.strokeColor(palette[colour]);
    const dash = dashMm.join(" ");
    if (this.dash !== dash) {
      if (dash === "") this.document.undash();
      else this.document.dash(dashMm.map(inPoints), {});
    }
    this.widthMm = widthMm;
    this.strokeColour = colour;
    this.dash = dash;
  }
}
