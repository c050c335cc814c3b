import { describe, expect, test } from "vitest";
import { boundsOf } from "../../src/drawing/bounds.js";
import { text } from "../../src/drawing/make.js";
import type { Sheet } from "../../src/drawing/shapes.js";
import { dxfSheet } from "../../src/drawing/writers/dxf.js";
import { pdfDocument } from "../../src/drawing/writers/pdf.js";
import { svgSheet } from "../../src/drawing/writers/svg.js";
import { fonts } from "./help.js";
import { expectPicture } from "./picture.js";
import { poppler } from "./poppler.js";
import { everyShape, sample } from "./sample.js";

const hostile = "</svg><script>%PDF-1.7\n\u0000\u202eabc%%d\\U+0041^J";
const of = (words: string): Sheet => ({
  title: words,
  widthMm: 100,
  heightMm: 20,
  shapes: [text(5, 5, words)],
});

describe("svg", () => {
  test("every shape as saved", () => expectPicture("every-shape.svg", svgSheet(sample)));
  test("words are data", () => {
    const svg = svgSheet(of(hostile));
    expect(svg.match(/<\/svg>/g)).toHaveLength(1);
    for (const sign of ["<script", "\u202e", "\u0000"]) expect(svg).not.toContain(sign);
  });
  test("refuses a number that is none", () =>
    expect(() => svgSheet({ ...sample, shapes: [text(Number.NaN, 0, "a")] })).toThrow(RangeError));
});

describe("dxf", () => {
  const pairs = (dxf: string) => {
    const lines = dxf.trimEnd().split("\n");
    expect(lines.length % 2).toBe(0);
    return lines.flatMap((value, index) => (index % 2 ? [[Number(lines[index - 1]), value] as const] : []));
  };
  test("every shape as saved", () => expectPicture("every-shape.dxf", dxfSheet(sample)));
  test("one entity for each shape, each on a layer of the table, whole sections, plain ASCII", () => {
    const dxf = dxfSheet(sample);
    const codes = pairs(dxf);
    const count = (kind: string) => codes.filter(([code, value]) => code === 0 && value === kind).length;
    expect([count("LINE"), count("POLYLINE"), count("CIRCLE"), count("ARC"), count("TEXT")]).toEqual([
      1, 4, 2, 1, 4,
    ]);
    expect(count("SECTION")).toBe(count("ENDSEC"));
    expect(count("POLYLINE")).toBe(count("SEQEND"));
    const start = codes.findIndex(([code, value]) => code === 2 && value === "ENTITIES");
    const named = new Set(codes.slice(0, start).flatMap(([code, value]) => (code === 2 ? [value] : [])));
    for (const [code, value] of codes.slice(start)) if (code === 8) expect(named).toContain(value);
    expect(dxf).toMatch(/^[\x20-\x7e\n]*$/);
    expect(dxf).toContain("4 mm\\U+00B2 at 35 \\U+00B0C");
  });
  test("words are data", () => {
    const written = pairs(dxfSheet(of(hostile))).filter(([code]) => code === 1)[1]?.[1];
    expect(written).toBe("</svg><script>%PDF-1.7 \\U+25A1\\U+25A1abc%%%%%%d\\U+005CU+0041^ J");
  });
  test("a text moved by its group", () => {
    const codes = pairs(dxfSheet(sample));
    const at = codes.findIndex(([code, value]) => code === 1 && value === "lamp <6> & mast");
    const place = codes
      .slice(at - 5, at)
      .flatMap(([code, value]) => (code === 10 || code === 20 ? [Number(value)] : []));
    expect(place).toEqual([15, 83.8]);
  });
});

describe("pdf", () => {
  const write = (sheets: readonly Sheet[], title = "Sample") =>
    pdfDocument(sheets, { title, language: "en", fonts });
  test("reads back: size, title, words, embedded fonts", async () => {
    const pdf = await write([sample]);
    const info = poppler("pdfinfo", pdf);
    expect(info).toMatch(/Title: +Sample/);
    expect(info).toMatch(/Tagged: +yes/);
    expect(info).toMatch(/Page size: +283\.46\d* x 269\.29\d* pts/);
    const words = poppler("pdftotext", pdf, ["-layout"]);
    for (const shape of everyShape)
      if (shape.kind === "text") expect(words).toContain(shape.text === "upright" ? "u" : shape.text);
    expect(words).toContain("lamp <6> & mast");
    const list = poppler("pdffonts", pdf).trim().split("\n").slice(2);
    expect(list).toHaveLength(2);
    for (const font of list) expect(font).toMatch(/SourceSans3-\w+ +CID TrueType +Identity-H +yes yes yes/);
  });
  test("the same sheets give the same bytes", async () =>
    expect(Buffer.compare(await write([sample, sample]), await write([sample, sample]))).toBe(0));
  test("words are data", async () => {
    const pdf = await write([of(hostile)], hostile);
    expect(poppler("pdfinfo", pdf)).toMatch(/Pages: +1\n/);
    expect(poppler("pdftotext", pdf)).toContain("</svg><script>%PDF-1.7 □□abc%%d\\U+0041^J");
  });
  test("no sheet, no document", () => expect(() => write([])).toThrow(RangeError));
});

test("bounds hold what a group moves and what an arc bulges", () => {
  const arc = boundsOf({
    kind: "arc",
    cx: 0,
    cy: 0,
    r: 10,
    startDeg: 45,
    endDeg: 135,
    stroke: { colour: "ink", widthMm: 1 },
  });
  expect(arc.maxY).toBeCloseTo(10, 9);
  expect(arc.minY).toBeCloseTo(10 * Math.SQRT1_2, 9);
  const all = everyShape.map(boundsOf);
  for (const { minX, minY, maxX, maxY } of all) {
    expect(minX >= 0 && minY >= 0 && maxX <= 100 && maxY <= 95).toBe(true);
    expect(minX <= maxX && minY <= maxY).toBe(true);
  }
});
