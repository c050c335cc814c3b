import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { boundsOf } from "../../src/drawing/bounds.js";
import { dxfSheet } from "../../src/drawing/writers/dxf.js";
import { svgSheet } from "../../src/drawing/writers/svg.js";
import { packetPages, packetPdf } from "../../src/packet/packet.js";
import { fonts } from "../drawing/help.js";
import { poppler } from "../drawing/poppler.js";
import { overlaps, planAt, renamed, textsOf } from "./pages.js";

const plan = planAt("examples/utility.yaml");
const hostile: Readonly<Record<string, string>> = {
  "control signs": "a\u0000b\u0007c\u001bd\u007fe\nf",
  "right-to-left marks": "\u202elamp\u202c \u2067\u05d0\u05d1\u2069 \u200fx",
  "a PDF inside": "%PDF-1.7 endstream endobj ) Tj (",
  markup: "</text></svg><script>alert(1)</script>&amp;",
  "ten thousand signs": "W".repeat(10_000),
  "ten thousand words": "wide ".repeat(2_000).trim(),
  "signs no font has": "漢字かな😀𝔘\ud800",
  "nothing but blanks": "   ",
  escapes: "\\U+0041 %%c ^J {\\b}",
};

describe.each(Object.entries(hostile))("names of %s", (_, name) => {
  const names = new Map<string, string>();
  const things = [
    ...plan.batteries,
    ...plan.panels,
    ...plan.boxes,
    ...plan.gear,
    ...plan.runs,
    ...plan.outings,
    ...(plan.craft.form?.kind === "survey" ? plan.craft.form.lines : []),
    ...plan.hull.references,
    ...plan.hull.faces,
    ...plan.hull.faces.flatMap(({ zones, openings, holes }) => [...zones, ...openings, ...holes]),
    ...(plan.hull.float?.people ?? []),
    ...(plan.hull.float?.other ?? []),
  ];
  // Kept apart by a number, as names in a plan are.
  for (const [index, thing] of things.entries()) names.set(thing.name, `${name}${index}`);
  for (const panel of plan.panels)
    for (const [index, way] of panel.ways.entries()) names.set(way.name, `${name} w${index}`);
  names.set(plan.name, name);
  const changed = renamed(plan, names);
  const { figures, hull } = workOutWhole(changed);
  expect(figures.plan.gear.every((gear) => gear.name.includes(name))).toBe(true);
  const pages = packetPages(figures, changed.shows, { hull });

  test("change nothing of the hull but the names", () => {
    expect(hull.problems).toEqual([]);
    expect(hull.faces.every((face) => face.name.includes(name))).toBe(true);
    expect(hull.faces.flatMap(({ sides }) => sides.flatMap(({ marks }) => marks)).length).toBe(8);
    expect(pages.filter(({ caption }) => caption.startsWith("Marks")).length).toBeGreaterThanOrEqual(3);
  });

  test("keep inside the page, and off each other", () => {
    for (const { sheet, caption } of pages) {
      expect(overlaps(sheet), caption).toEqual([]);
      for (const shape of sheet.shapes) {
        const { minX, minY, maxX, maxY } = boundsOf(shape);
        expect(
          minX >= 5 && minY >= 5 && maxX <= sheet.widthMm - 5 && maxY <= sheet.heightMm - 5,
          caption,
        ).toBe(true);
      }
    }
  });

  test("stay words in every format", async () => {
    const pdf = await packetPdf(figures, changed.shows, fonts, undefined, { hull });
    expect(poppler("pdfinfo", pdf)).toMatch(new RegExp(`Pages: +${pages.length}\\n`));
    const read = poppler("pdftotext", pdf);
    expect(read).toMatch(new RegExp(`page ${pages.length} of ${pages.length}`));
    for (const mark of ["\u0000", "\u0007", "\u001b", "\u202e", "\u2067", "\u200f"])
      expect(read).not.toContain(mark);
    for (const { sheet } of pages) {
      const svg = svgSheet(sheet);
      expect(svg.split("<svg").length).toBe(2);
      expect(svg).not.toContain("<script");
      expect(dxfSheet(sheet)).toMatch(/^[\x20-\x7e\n]*$/);
    }
  });

  test("are never cut without a sign that they were", () => {
    const shown = pages.flatMap(({ sheet }) => textsOf(sheet).map(({ text }) => text.text));
    if (name.length > 1000) expect(shown.some((words) => words.endsWith("…"))).toBe(true);
    for (const words of shown) expect(words.length).toBeLessThan(600);
  });
});
