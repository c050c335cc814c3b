import { beforeAll, describe, expect, test } from "vitest";
import type { Figures } from "../../src/core/figures-types.js";
import { boundsOf } from "../../src/drawing/bounds.js";
import { packetPages, packetPdf } from "../../src/packet/packet.js";
import type { Page } from "../../src/packet/page.js";
import { fonts } from "../drawing/help.js";
import { poppler } from "../drawing/poppler.js";
import { figuresAt, overlaps, textsOf } from "./pages.js";

const plans = [
  "examples/tender.yaml",
  "examples/utility.yaml",
  "examples/launch.yaml",
  "tests/packet/overloaded.yaml",
];
const edgeMm = 8;

describe.each(plans)("%s", (path) => {
  let figures: Figures;
  let pages: Page[];
  let words: string;
  beforeAll(() => {
    figures = figuresAt(path);
    pages = packetPages(figures, figures.plan.source.shows);
    words = pages.flatMap(({ sheet }) => textsOf(sheet).map(({ text }) => text.text)).join("\n");
  });

  test("nothing stands outside the margins of its page", () => {
    for (const { sheet, caption } of pages) {
      for (const shape of sheet.shapes) {
        const { minX, minY, maxX, maxY } = boundsOf(shape);
        const inside =
          minX >= edgeMm && minY >= 5 && maxX <= sheet.widthMm - edgeMm && maxY <= sheet.heightMm - edgeMm;
        expect(inside, `${caption}: ${JSON.stringify(shape).slice(0, 200)}`).toBe(true);
      }
    }
  });

  test("no words stand on other words", () => {
    for (const { sheet, caption } of pages) expect(overlaps(sheet), caption).toEqual([]);
  });

  test("everything is set large enough to read", () => {
    for (const { sheet } of pages)
      for (const { text } of textsOf(sheet)) {
        // The sign inside a level's mark is part of the mark.
        if (!["!", "i", "?"].includes(text.text))
          expect(text.sizeMm / (25.4 / 72)).toBeGreaterThanOrEqual(8.5 - 1e-9);
      }
  });

  test("every piece of gear, run, device and finding is there", () => {
    const whole = words.replaceAll("\n", " ").replaceAll("\u00a0", " ");
    for (const { group } of figures.plan.gear) expect(whole).toContain(group);
    for (const { name } of figures.plan.runs) expect(whole).toContain(name);
    for (const { id } of figures.protection)
      expect(words.replaceAll("\n", "").replaceAll(" ", "")).toContain(id.replaceAll(" ", ""));
    const marks = new Set(figures.findings.map(({ rule }) => `Rule ${rule}.`));
    for (const mark of marks) expect(whole).toContain(mark);
  });

  test("the contents name the page each part begins on", () => {
    for (const title of [
      "Load list",
      "Conductor schedule",
      "Protection schedule",
      "Findings",
      "One-line diagram",
      "Cautions",
    ]) {
      const page = pages.findIndex(({ parts }) => parts.includes(title)) + 1;
      expect(page).toBeGreaterThan(1);
      const listed = textsOf(pages[0]?.sheet ?? { title: "", widthMm: 1, heightMm: 1, shapes: [] });
      const lines = listed.filter(({ text }) => text.text === title);
      const beside = (y: number) =>
        listed.some(({ text }) => text.text === String(page) && Math.abs(text.y - y) < 0.01);
      expect(
        lines.some(({ text }) => beside(text.y)),
        title,
      ).toBe(true);
    }
  });
});

describe("as PDF", () => {
  const figures = figuresAt("examples/utility.yaml");
  const write = (paper: "letter" | "a4") =>
    packetPdf(figures, { ...figures.plan.source.shows, paper }, fonts);

  test("reads back whole, fonts embedded, pages numbered, signs of the trade in place", async () => {
    const pdf = await write("letter");
    const words = poppler("pdftotext", pdf, ["-layout"]).replaceAll("\u00a0", " ");
    for (const { group } of figures.plan.gear) expect(words).toContain(group);
    for (const { name } of figures.plan.runs) expect(words).toContain(name);
    const pages = packetPages(figures, { ...figures.plan.source.shows, paper: "letter" }).length;
    expect(words).toContain(`page ${pages} of ${pages}`);
    expect(words).toContain("Planning aid.");
    for (const sign of ["°C", "AWG", "V", "%"]) expect(words).toContain(sign);
    const info = poppler("pdfinfo", pdf);
    expect(info).toMatch(new RegExp(`Pages: +${pages}\\n`));
    expect(info).toMatch(/Page size: +792(\.\d+)? x 612(\.\d+)? pts/);
    expect(info).toMatch(/Title: +.*electrical packet/);
    for (const font of poppler("pdffonts", pdf).trim().split("\n").slice(2))
      expect(font).toMatch(/yes yes yes/);
  });

  test("who hears it finds titles and headings by their level, and not the foot of every page", async () => {
    const pdf = await write("letter");
    const tree = poppler("pdfinfo", pdf, ["-struct-text"]);
    expect(poppler("pdfinfo", pdf)).toMatch(/Tagged: +yes/);
    for (const title of ["Load list", "Protection schedule", "Cautions"])
      expect(tree).toMatch(new RegExp(`H1 \\(block\\)\\n +"${title}"`));
    expect(tree).toMatch(/H2 \(block\)\n +"The boat"/);
    expect(tree).not.toMatch(/page \d+ of \d+"/);
    expect(poppler("pdftotext", pdf)).toMatch(/page 2 of \d+/);
  });

  test("A4 lies on its long side", async () => {
    expect(poppler("pdfinfo", await write("a4"))).toMatch(/Page size: +841\.\d+ x 595\.\d+ pts \(A4\)/);
  });

  test("the same figures give the same bytes", async () => {
    expect(Buffer.compare(await write("letter"), await write("letter"))).toBe(0);
  });
});
