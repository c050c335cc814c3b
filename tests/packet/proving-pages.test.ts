import { describe, expect, test } from "vitest";
import { workOut } from "../../src/core/figures.js";
import { benchOf } from "../../src/core/proving/bench-network.js";
import { testSheet } from "../../src/core/proving/sheet/sheet.js";
import { waterCard } from "../../src/core/proving/water/card.js";
import { boundsOf } from "../../src/drawing/bounds.js";
import { packetPages } from "../../src/packet/packet.js";
import { overlaps, planAt, renamed, textsOf } from "./pages.js";

const hostile = "<script>alert(1)</script> & =SUM(A1) très long ".repeat(3).slice(0, 80).trim();

function pagesOf(path: string, names: ReadonlyMap<string, string> = new Map()) {
  const { figures, circuit } = workOut(renamed(planAt(path), names));
  const sheet = testSheet(benchOf(figures.plan, circuit), figures, { samples: 200 });
  const card = waterCard(figures);
  const pages = packetPages(figures, figures.plan.source.shows, { proof: { sheet, card } });
  return {
    sheet,
    card,
    pages: pages.filter(({ caption }) => /^(Test sheet|Card for the water)/.test(caption)),
  };
}

describe.each([
  ["examples/tender.yaml", new Map<string, string>()],
  ["examples/utility.yaml", new Map<string, string>()],
  ["examples/launch.yaml", new Map<string, string>()],
  [
    "examples/utility.yaml",
    new Map([
      ["coaming lamp", hostile],
      ["house", `${hostile.slice(0, 60)} b`],
    ]),
  ],
])("%s %#", (path, names) => {
  const { sheet, card, pages } = pagesOf(path, names);
  const words = pages.flatMap(({ sheet: drawn }) => textsOf(drawn).map(({ text }) => text.text)).join(" ");

  test("there is a sheet and a card, within the margins, no words on others", () => {
    expect(pages.some(({ caption }) => caption.startsWith("Test sheet"))).toBe(true);
    expect(pages.some(({ caption }) => caption.startsWith("Card for the water"))).toBe(true);
    const signed = pages.findLast(({ parts }) => parts.includes("Test sheet"));
    const fields = signed === undefined ? [] : textsOf(signed.sheet).map(({ text }) => text.text);
    expect(fields).toEqual(expect.arrayContaining(["Looked through by", "Date", "Signature"]));
    for (const { sheet: drawn, caption } of pages) {
      for (const shape of drawn.shapes) {
        const { minX, minY, maxX, maxY } = boundsOf(shape);
        const inside = minX >= 8 && minY >= 5 && maxX <= drawn.widthMm - 8 && maxY <= drawn.heightMm - 8;
        expect(inside, `${caption}: ${JSON.stringify(shape).slice(0, 200)}`).toBe(true);
      }
      expect(overlaps(drawn), caption).toEqual([]);
    }
  });

  test("every test has its square to tick, every spare fuse its line", () => {
    const count = sheet.reduce((sum, { tests }) => sum + tests.length, 0);
    expect(words.replaceAll("\u00a0", " ")).toContain(`${count} tests`);
    for (const { device } of card.spareFuses) expect(words).toContain(device);
  });
});
