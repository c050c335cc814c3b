import PDFDocument from "pdfkit";
import { printable } from "../fonts/printable.js";
import type { palette } from "../palette.js";
import type { Shape, Sheet, Stroke, Text, Weight } from "../shapes.js";
import { PdfPen } from "./pdf-pen.js";
import { inPoints } from "./pdf-points.js";
import { PdfStructure } from "./pdf-structure.js";

/** The bytes of the two TrueType fonts of the house. */
export type PdfFonts = Readonly<Record<Weight, Uint8Array>>;

export interface PdfOptions {
  readonly title: string;
  /** BCP 47 tag of the words, `en`. */
  readonly language: string;
  readonly fonts: PdfFonts;
  /** Written into the document; left out: a fixed day, so that the same sheets give the same bytes. */
  readonly createdAt?: Date;
}

const fixedDay = new Date(Date.UTC(2000, 0, 1));

/**
 * Sheets as one PDF, a page each at true size, with the glyphs used embedded. The same input gives the same bytes, on Node and in
 * a browser: streams are left uncompressed since the two would compress them differently.
 * @throws RangeError if there is no sheet, or a number in a shape is not finite.
 */
export function pdfDocument(sheets: readonly Sheet[], options: PdfOptions): Promise<Uint8Array> {
  if (!(sheets.length > 0)) throw new RangeError("a PDF needs one sheet or more, got none");
  const document = new PDFDocument({
    autoFirstPage: false,
    font: null,
    compress: false,
    lang: options.language,
    displayTitle: true,
    tagged: true,
    pdfVersion: "1.7",
    info: {
      Title: printable(options.title),
      Creator: "Skiffloom",
      CreationDate: options.createdAt ?? fixedDay,
    },
  });
  const bytes = collect(document);
  document.registerFont("regular", options.fonts.regular).registerFont("semibold", options.fonts.semibold);
  const structure = new PdfStructure(document);
  const pen = new PdfPen(document);
  for (const sheet of sheets) {
    document
      .addPage({ size: [inPoints(sheet.widthMm), inPoints(sheet.heightMm)], margin: 0 })
      .lineJoin("round");
    for (const begins of sheet.begins ?? [sheet.title]) document.outline.addItem(printable(begins));
    pen.forget();
    structure.page(sheet, (shape, goesOn) =>
      pdfShape({ document, pen, heightMm: sheet.heightMm }, shape, goesOn),
    );
  }
  structure.end();
  document.end();
  return bytes;
}

function collect(document: PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    document.on("data", (chunk) => chunks.push(chunk));
    document.on("error", reject);
    document.on("end", () => {
      const bytes = new Uint8Array(chunks.reduce((length, chunk) => length + chunk.length, 0));
      let offset = 0;
      for (const chunk of chunks) {
        bytes.set(chunk, offset);
        offset += chunk.length;
      }
      resolve(bytes);
    });
  });
}

/** A page at hand. */
interface Canvas {
  readonly document: PDFDocument;
  readonly pen: PdfPen;
  readonly heightMm: number;
}

/** @param goesOn Words of the same part follow on another line. */
function pdfShape(canvas: Canvas, shape: Shape, goesOn = false): void {
  const { document, heightMm } = canvas;
  const across = inPoints;
  const down = (y: number) => inPoints(heightMm - y);
  switch (shape.kind) {
    case "line":
      document.moveTo(across(shape.x1), down(shape.y1)).lineTo(across(shape.x2), down(shape.y2));
      paint(canvas, shape);
      break;
    case "polyline":
      for (const [index, { x, y }] of shape.points.entries()) {
        if (index === 0) document.moveTo(across(x), down(y));
        else document.lineTo(across(x), down(y));
      }
      if (shape.closed) document.closePath();
      paint(canvas, shape);
      break;
    case "circle":
      document.circle(across(shape.cx), down(shape.cy), across(shape.r));
      paint(canvas, shape);
      break;
    case "arc":
      arc(document, shape.cx, shape.cy, shape.r, shape.startDeg, shape.endDeg, heightMm);
      paint(canvas, shape);
      break;
    case "path":
      for (const step of shape.steps) {
        if (step.to === "move") document.moveTo(across(step.x), down(step.y));
        else if (step.to === "line") document.lineTo(across(step.x), down(step.y));
        else if (step.to === "close") document.closePath();
        else {
          const [x1, y1, x2, y2] = [across(step.x1), down(step.y1), across(step.x2), down(step.y2)];
          document.bezierCurveTo(x1, y1, x2, y2, across(step.x), down(step.y));
        }
      }
      paint(canvas, shape);
      break;
    case "text":
      write(canvas, shape, goesOn);
      break;
    case "group":
      if (shape.dx === 0 && shape.dy === 0) {
        for (const inner of shape.shapes) pdfShape(canvas, inner, true);
        break;
      }
      document.save().translate(across(shape.dx), -across(shape.dy));
      for (const inner of shape.shapes) pdfShape(canvas, inner, true);
      document.restore();
      canvas.pen.forget();
      break;
    default:
      shape satisfies never;
  }
}

/** A quarter turn at a time, each as the usual cubic with 4/3·tan(θ/4) handles: off by less than 0.03 % of the radius. */
function arc(
  document: PDFDocument,
  cx: number,
  cy: number,
  r: number,
  startDeg: number,
  endDeg: number,
  heightMm: number,
): void {
  const pieces = Math.max(1, Math.ceil((endDeg - startDeg) / 90));
  const step = ((endDeg - startDeg) / pieces / 180) * Math.PI;
  const handle = (4 / 3) * Math.tan(step / 4) * r;
  const at = (x: number, y: number): [number, number] => [inPoints(x), inPoints(heightMm - y)];
  for (let index = 0; index < pieces; index += 1) {
    const a = (startDeg / 180) * Math.PI + index * step;
    const b = a + step;
    const [ax, ay, bx, by] = [
      cx + r * Math.cos(a),
      cy + r * Math.sin(a),
      cx + r * Math.cos(b),
      cy + r * Math.sin(b),
    ];
    if (index === 0) document.moveTo(...at(ax, ay));
    const leaving = at(ax - handle * Math.sin(a), ay + handle * Math.cos(a));
    const arriving = at(bx + handle * Math.sin(b), by - handle * Math.cos(b));
    document.bezierCurveTo(...leaving, ...arriving, ...at(bx, by));
  }
}

function paint(
  { document, pen }: Canvas,
  { stroke, fill }: { stroke?: Stroke; fill?: keyof typeof palette },
): void {
  if (stroke !== undefined) pen.stroke(stroke);
  if (fill !== undefined) pen.fill(fill);
  if (stroke !== undefined && fill !== undefined) document.fillAndStroke();
  else if (stroke !== undefined) document.stroke();
  else document.fill();
}

/** The anchor is taken from the width as set, kerning included, so that columns of numbers line up to the last digit. */
function write({ document, pen, heightMm }: Canvas, text: Text, goesOn: boolean): void {
  const words = printable(text.text);
  document.font(text.weight).fontSize(inPoints(text.sizeMm));
  pen.fill(text.colour);
  const widthPt =
    text.anchor === "start" ? 0 : document.widthOfString(words) * (text.anchor === "middle" ? 0.5 : 1);
  const turn = (text.turnDeg / 180) * Math.PI;
  const x = inPoints(text.x) - widthPt * Math.cos(turn);
  const y = inPoints(heightMm - text.y) + widthPt * Math.sin(turn);
  // lines of one part are words apart to whoever hears or copies them
  document.text(goesOn ? `${words} ` : words, x, y, {
    lineBreak: false,
    baseline: "alphabetic",
    rotation: text.turnDeg,
  });
}
