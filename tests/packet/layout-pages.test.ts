import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import type { LayoutFigures } from "../../src/core/parts/layout-types.js";
import { pricesWanting } from "../../src/core/parts/prices-wanting.js";
import { readPlan } from "../../src/core/plan/read.js";
import { boundsOf } from "../../src/drawing/bounds.js";
import type { Shape } from "../../src/drawing/shapes.js";
import { packetPages } from "../../src/packet/packet.js";
import type { Page } from "../../src/packet/page.js";
import { overlaps, textsOf } from "./pages.js";

const textAt = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");
const long = "a name as long as names may be and longer than any label";
const utility = textAt("examples/utility.yaml");
const plans: readonly (readonly [string, string])[] = [
  ["tender", textAt("examples/tender.yaml")],
  ["utility", utility],
  ["launch", textAt("examples/launch.yaml")],
  [
    "utility with long names",
    utility
      .replaceAll("fore box", `${long} b`)
      .replaceAll("lamp trunk", `${long} t`)
      .replaceAll("coaming lamp", `${long} l`)
      .replaceAll("console foot", `${long} w`),
  ],
  [
    "a box no box of the catalogue can be",
    utility.replaceAll("tie bar: {size: [3 1/2 in", "tie bar: {size: [30 in"),
  ],
  ["nothing on hand, no prices", utility.replace(/\nstock:[\s\S]*$/, "\n")],
];
const edgeMm = 8;
const shopped = `${utility}
bought:
  parts: {M16 gland: 1, M20 gland: 1, "blade fuse 3 A": 9, "${long}": 3, "<img src=x onerror=alert(1)>": 2}
  wire: [{size: 18 AWG, cores: 2, length: 10 ft}, {size: 4 AWG, colour: red, length: 6 ft}]
`;
const ours = /^(Shopping list|Box|Run sheet|Cut list|Terminations|Wire flags)/;
const cases = [...plans, ["utility with things bought", shopped] as const].flatMap(([name, text]) =>
  (["letter", "a4"] as const).map((paper) => [name, paper, text] as const),
);

describe.each(cases)("%s on %s", (name, paper, text) => {
  let layout: LayoutFigures;
  let pages: Page[];
  let whole: string;
  beforeAll(() => {
    const read = readPlan(text);
    if (!read.ok) throw new Error(JSON.stringify(read.problems[0]));
    const worked = workOutWhole(read.plan);
    ({ layout } = worked);
    const all = packetPages(worked.figures, { ...read.plan.shows, paper }, { layout });
    pages = all.filter(({ caption }) => ours.test(caption));
    whole = pages
      .flatMap(({ sheet }) => textsOf(sheet).map(({ text: one }) => one.text))
      .join(" ")
      .replaceAll("\u00a0", " ");
  });

  test("nothing stands outside the margins, no words stand on others, all is large enough to read", () => {
    for (const { sheet, caption } of pages) {
      for (const shape of sheet.shapes) {
        const { minX, minY, maxX, maxY } = boundsOf(shape);
        const inside =
          minX >= edgeMm && minY >= 5 && maxX <= sheet.widthMm - edgeMm && maxY <= sheet.heightMm - edgeMm;
        expect(inside, `${caption}: ${JSON.stringify(shape).slice(0, 200)}`).toBe(true);
      }
      expect(overlaps(sheet), caption).toEqual([]);
      for (const { text: one } of textsOf(sheet))
        expect(one.sizeMm / (25.4 / 72)).toBeGreaterThanOrEqual(8.5 - 1e-9);
    }
  });

  test("what is stripped, pulled and cut of a sleeve stands whole, each figure with its unit", () => {
    const ends = pages.filter(({ parts }) => parts.includes("Terminations"));
    const lines = ends.flatMap(({ sheet }) => textsOf(sheet).map(({ text: one }) => one.text.trim()));
    const strips = new Set(layout.terminations.ends.map(({ stripMm }) => stripMm).filter((mm) => mm > 0));
    for (const mm of strips)
      expect(
        lines.some((one) => one.startsWith(`${mm}\u00a0mm`)),
        `${mm} mm`,
      ).toBe(true);
    // a unit broken off its figure, or in two
    expect(lines.filter((one) => /^(m|mm|f|bf|lbf)$/.test(one) || /\d\s(m|l|lb)$/.test(one))).toEqual([]);
    expect(lines.filter((one) => /\d.*…$/.test(one) && !one.includes(long.slice(0, 10)))).toEqual([]);
  });

  test("every box, run, piece, terminal and thing to buy is there", () => {
    const short = (name: string) => name.length < 60;
    for (const { box } of layout.boxes) if (short(box)) expect(whole).toContain(box);
    for (const { run } of layout.routes.runs) if (short(run)) expect(whole).toContain(run);
    for (const { item, toBuy } of layout.parts.list.lines)
      if (toBuy > 0 && short(item)) expect(whole).toContain(item);
    const count = (start: string) =>
      pages.filter(({ parts }) => parts.some((title) => title.startsWith(start))).length;
    expect([count("Run sheet"), count("Cut list"), count("Terminations"), count("Wire flags")]).not.toContain(
      0,
    );
    expect(count("Box")).toBeGreaterThanOrEqual(layout.boxes.length);
  });

  test("what has no price is told on its line, or once over a list of which most have none", () => {
    const once = pricesWanting(layout.parts) !== undefined;
    expect(once).toBe(name === "nothing on hand, no prices");
    expect(whole.includes("have no price yet")).toBe(once);
    const list = pages
      .filter(({ caption }) => caption.startsWith("Shopping list"))
      .flatMap(({ sheet }) => textsOf(sheet).map(({ text: one }) => one.text.replaceAll("\u00a0", " ")))
      .join(" ");
    if (once) expect(list).not.toMatch(/not on any price list|not known/);
    const left = layout.parts.withoutPrice.length;
    const leavesOut = /Not in it, for want of a price: (\d+ items\.)?/.exec(list);
    expect(leavesOut !== null).toBe(left > 0);
    if (once) expect(list).not.toMatch(/items · [\d.]+ USD/);
    if (once) expect(leavesOut?.[1]).toBe(`${left} items.`);
  });

  test("a flag says which conductor of a run it is, whatever is cut off its name", () => {
    const words = pages
      .filter(({ caption }) => caption.startsWith("Wire flags"))
      .flatMap(({ sheet }) => textsOf(sheet).map(({ text: one }) => one.text));
    for (const leg of ["out", "return"]) {
      const ends = layout.cuts.labels.filter(({ piece }) => piece.endsWith(` / ${leg}`)).length;
      // on both halves of each
      expect(words.filter((one) => one.endsWith(`, ${leg}`)).length, leg).toBe(2 * ends);
    }
    expect(words.filter((one) => /…$/.test(one) && /feed|lead/.test(one))).toEqual([]);
  });

  test("no heading of the run sheet stands without a row under it", () => {
    for (const { sheet } of pages.filter(({ parts }) => parts.includes("Run sheet"))) {
      const texts = textsOf(sheet).map(({ text: one }) => one);
      for (const heading of texts.filter(({ role }) => role === "heading")) {
        const below = texts.filter(({ y, role }) => y < heading.y && role !== "foot");
        // the headings of the columns and a row of the table at the least
        expect(below.length, heading.text).toBeGreaterThanOrEqual(8);
      }
    }
  });

  test("a page of the cut list that begins within a kind of wire says which", () => {
    expect(pages.some(({ parts }) => parts.includes("Cut list"))).toBe(true);
    const sheets = pages.filter(({ caption }) => /^Cut list, sheet (?!1 )/.test(caption));
    for (const { sheet } of sheets) {
      const texts = textsOf(sheet).map(({ text: one }) => one.text);
      const heading = texts.indexOf("Length");
      // right under the headings of the columns: a kind, new or going on
      expect(texts[heading + 1]).toMatch(/AWG|mm²/);
    }
  });

  test("there are two flags a piece, and each template's holes at their own distances", () => {
    const inFigures = (shape: Shape): readonly Shape[] =>
      shape.kind === "group" ? shape.shapes.flatMap(inFigures) : [shape];
    const circles = pages.flatMap(({ sheet }) => sheet.shapes.flatMap(inFigures));
    for (const { holes } of layout.boxes.flatMap(({ templates }) => templates))
      for (const { holeMm } of holes)
        expect(circles.some((one) => one.kind === "circle" && Math.abs(2 * one.r - holeMm) < 1e-9)).toBe(
          true,
        );
    const flags = pages.filter(({ caption }) => caption.startsWith("Wire flags"));
    const frames = flags.flatMap(({ sheet }) => sheet.shapes.filter((shape) => shape.kind === "polyline"));
    expect(frames.length).toBe(layout.cuts.labels.length);
    expect(layout.cuts.labels.length).toBe(
      2 * layout.cuts.kinds.reduce((sum, { pieces }) => sum + pieces.length, 0),
    );
  });
});

/** Ticks drawn in the squares of the shopping list, and all that is written there. */
function shoppingOf(text: string): { ticks: number; words: string } {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems[0]));
  const worked = workOutWhole(read.plan);
  const pages = packetPages(worked.figures, read.plan.shows, { layout: worked.layout });
  const sheets = pages.filter(({ caption }) => caption.startsWith("Shopping list")).map(({ sheet }) => sheet);
  return {
    ticks: sheets.flatMap(({ shapes }) =>
      shapes.filter((shape) => shape.kind === "polyline" && !shape.closed && shape.points.length === 3),
    ).length,
    words: sheets
      .flatMap((sheet) => textsOf(sheet).map(({ text: one }) => one.text))
      .join(" ")
      .replaceAll("\u00a0", " "),
  };
}

test("the shopping list has a tick where enough was bought, and tells what is short, over, or no longer wanted", () => {
  expect(shoppingOf(utility).ticks).toBe(0);
  const { ticks, words } = shoppingOf(shopped);
  // the M20 gland and the fuses; of M16 glands and of wire more is wanted
  expect(ticks).toBe(2);
  expect(words).toContain("1 bought, 10 more wanted");
  expect(words).toContain("9 bought, 4 more than the list asks for");
  expect(words).toMatch(/10 ft bought, \d+ ft.* more wanted/);
  expect(words).toMatch(
    /Bought, and no longer on the list 4 AWG, red: 6 ft;.*<img src=x onerror=alert\(1\)>: 2/,
  );
});
