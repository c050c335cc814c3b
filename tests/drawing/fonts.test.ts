/// <reference path="../../src/drawing/writers/pdfkit.d.ts" />
import { readFileSync } from "node:fs";
import PDFDocument from "pdfkit";
import { expect, test } from "vitest";
import { glyphWidth } from "../../src/drawing/fonts/glyphs.js";
import { textWidthMm } from "../../src/drawing/fonts/measure.js";
import { printable } from "../../src/drawing/fonts/printable.js";
import { fitText, wrapText } from "../../src/drawing/fonts/wrap.js";
import { fonts } from "./help.js";

const type = { sizeMm: 3.5, weight: "regular" } as const;

test.each(["regular", "semibold"] as const)("widths of %s are those of the font file", (weight) => {
  // The horizontal metrics read straight from the file: 'hhea' gives the number of records, 'hmtx' the widths.
  const file = new DataView(fonts[weight].buffer);
  const table = (tag: string) => {
    for (let at = 12; at < 12 + 16 * file.getUint16(4); at += 16) {
      const name = String.fromCharCode(...[0, 1, 2, 3].map((index) => file.getUint8(at + index)));
      if (name === tag) return file.getUint32(at + 8);
    }
    throw new Error(`no table ${tag}`);
  };
  const cmap = table("cmap");
  const subtables = Array.from(
    { length: file.getUint16(cmap + 2) },
    (_, i) => cmap + file.getUint32(cmap + 8 + 8 * i),
  );
  const map = subtables.find((at) => file.getUint16(at) === 4) ?? 0;
  const twice = file.getUint16(map + 6);
  const records = file.getUint16(table("hhea") + 34);
  let compared = 0;
  for (let segment = 0; segment < twice; segment += 2) {
    const end = file.getUint16(map + 14 + segment);
    const start = file.getUint16(map + 16 + twice + segment);
    const delta = file.getUint16(map + 16 + 2 * twice + segment);
    const offsetAt = map + 16 + 3 * twice + segment;
    const offset = file.getUint16(offsetAt);
    for (let code = start; code <= end && code !== 0xffff; code += 1) {
      const listed = offset === 0 ? code : file.getUint16(offsetAt + offset + 2 * (code - start));
      const glyph = listed === 0 ? 0 : (listed + delta) % 65536;
      if (glyph === 0) continue;
      const width = file.getUint16(table("hmtx") + 4 * Math.min(glyph, records - 1));
      expect(glyphWidth(code, weight), `U+${code.toString(16)}`).toBe(width);
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(1000);
});

test("digits have one width, so columns of numbers line up", () => {
  for (const weight of ["regular", "semibold"] as const) {
    const widths = new Set([..."0123456789"].map((digit) => glyphWidth(digit.charCodeAt(0), weight)));
    expect(widths.size).toBe(1);
  }
});

test("the signs of the trade have glyphs", () => {
  for (const sign of "Ω½²°⅛µ×≤≥–—…·→√Δ−") expect(printable(sign)).toBe(sign);
});

test("what the printer sets is never more than a hair wider than what was measured", () => {
  const document = new PDFDocument({
    autoFirstPage: false,
    font: null,
    compress: false,
    lang: "en",
    displayTitle: true,
    tagged: true,
    pdfVersion: "1.7",
    info: {},
  });
  document.registerFont("regular", fonts.regular).font("regular").fontSize(100);
  for (const words of [
    "AVAST Tow 12 AWG, 2 ft 7 1/2 in",
    "fitting fjord office waffle",
    "11.62 V → 3.1 % of 12 V",
  ])
    expect(document.widthOfString(words)).toBeLessThanOrEqual(textWidthMm(words, 100, "regular") * 1.005);
});

test("printable shows what it cannot print, and is stable", () => {
  const words = "a\u0000b\u202ec\ud800d\u200be\tf\r\ng漢😀e\u0301";
  expect(printable(words)).toBe("a□b□c□d□e f g□□é");
  expect(printable(printable(words))).toBe(printable(words));
});

test("wrapped lines fit, lose nothing, and end with … when cut", () => {
  const words = readFileSync(new URL("../../docs/plan-format.md", import.meta.url), "utf8").slice(0, 3000);
  const lines = wrapText(words, 40, type);
  for (const line of lines)
    expect(textWidthMm(line, type.sizeMm, type.weight)).toBeLessThanOrEqual(40 + 1e-9);
  expect(lines.join("").replaceAll(" ", "")).toBe(printable(words).replaceAll(" ", ""));
  const cut = wrapText(words, 40, type, 3);
  expect(cut).toHaveLength(3);
  expect(cut[2]).toMatch(/…$/);
  expect(textWidthMm(cut[2] ?? "", type.sizeMm, type.weight)).toBeLessThanOrEqual(40);
});

test("one endless word is broken, and measured only as far as it can show", () => {
  const lines = wrapText("W".repeat(10_000_000), 20, type, 2);
  expect(lines).toHaveLength(2);
  expect(fitText("short", 20, type)).toBe("short");
  // a fraction is read as one, a path with slashes may part after each
  expect(wrapText("12 ft 11 5/16 in of helm/running", 22, type).join("|")).not.toMatch(/\d\/\||\|\/\d/);
  expect(wrapText("helm/running", 9, type)[0]).toBe("helm/");
  expect(wrapText("", 20, type)).toEqual([""]);
  expect(() => wrapText("a", Number.NaN, type)).toThrow(RangeError);
});
