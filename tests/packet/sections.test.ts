// Parts of the packet share a page where both may: nothing is lost, nothing stands on anything else, no title without what it heads.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pdfDocument } from "../../src/drawing/writers/pdf.js";
import { paperOf } from "../../src/packet/page.js";
import { type Piece, paragraph } from "../../src/packet/piece.js";
import { boundPages, firstPages, flowing, packed, type Section } from "../../src/packet/section.js";
import { table } from "../../src/packet/table.js";
import { paperInEnglish } from "../../src/words/paper/english.js";
import { fonts } from "../drawing/help.js";
import { overlaps, textsOf } from "./pages.js";

const paper = paperOf("letter");
const widthMm = paper.right - paper.left;
const plan = { name: "Dipper", rules: "US rule-set", mark: "000000" };

function rowsPart(title: string, count: number): Section {
  const rows = Array.from({ length: count }, (_, index) => ({ cells: [`${title} ${index + 1}`] }));
  const pieces: Piece[] = [
    paragraph({ text: `intro of ${title}` }, widthMm),
    ...table([{ heading: `name in ${title}`, share: 1 }], rows, widthMm),
  ];
  return flowing(title, "", pieces, paper);
}
const alone = (title: string): Section => ({
  title,
  subtitle: "",
  pages: [paragraph({ text: `only ${title}` }, widthMm).draw(paper.left, paper.top)],
});
const wordsOf = (page: ReturnType<typeof boundPages>[number]) =>
  textsOf(page.sheet).map(({ text }) => text.text);

test("whatever the lengths, every row stands once and in order, in its own part, nothing on anything else", () => {
  const parts = fc.array(fc.oneof(fc.integer({ min: 2, max: 70 }), fc.constant(0)), {
    minLength: 1,
    maxLength: 7,
  });
  fc.assert(
    fc.property(parts, (counts) => {
      const sections = counts.map((count, index) => {
        const title = `part ${String.fromCharCode(97 + index)}`;
        return count === 0 ? alone(title) : rowsPart(title, count);
      });
      const pages = boundPages(sections, paper, plan, paperInEnglish);
      const words = pages.flatMap(wordsOf);
      for (const [index, count] of counts.entries()) {
        const title = `part ${String.fromCharCode(97 + index)}`;
        const rows = words.filter((one) => one.startsWith(`${title} `));
        expect(rows).toEqual(Array.from({ length: count }, (_, row) => `${title} ${row + 1}`));
        const start = firstPages(packed(sections, paper)).get(title) ?? 0;
        expect(pages[start - 1]?.sheet.begins).toContain(title);
        if (count === 0) expect(pages[start - 1]?.parts).toEqual([title]);
      }
      expect(pages.length).toBeLessThanOrEqual(sections.reduce((sum, one) => sum + one.pages.length, 0));
      for (const page of pages) {
        expect(overlaps(page.sheet)).toEqual([]);
        // under each title there is something of its part: two rows, or all of it
        for (const title of page.parts) {
          const own = wordsOf(page).filter((one) => one.startsWith(`${title} `) || one === `only ${title}`);
          expect(own.length, `${title} on ${page.caption}`).toBeGreaterThanOrEqual(
            own[0]?.startsWith("only") ? 1 : 2,
          );
        }
        for (const { bounds, text } of textsOf(page.sheet))
          if (text.text.startsWith("part ")) expect(bounds.minY).toBeGreaterThanOrEqual(paper.bottom - 1);
      }
    }),
    { numRuns: 60 },
  );
});

describe("two short parts and one that stays alone", () => {
  const sections = [rowsPart("loads", 3), rowsPart("runs", 4), alone("diagram")];
  const pages = boundPages(sections, paper, plan, paperInEnglish);
  test("take two pages", () => {
    expect(pages.map(({ parts }) => parts)).toEqual([["loads", "runs"], ["diagram"]]);
    expect(pages.map(({ caption }) => caption)).toEqual(["loads · runs", "diagram"]);
  });
  test("the outline of the document has each by its name, on its page", async () => {
    const pdf = await pdfDocument(
      pages.map(({ sheet }) => sheet),
      { title: "Dipper", language: "en", fonts },
    );
    const text = Buffer.from(pdf).toString("latin1");
    const names = [...text.matchAll(/\/Title \(([^)]*)\)/g)].map(([, name]) => name);
    // one for each part, and none for a page that two share
    expect(names.toSorted()).toEqual(["diagram", "loads", "runs"]);
  });
});
