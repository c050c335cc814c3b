import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import type { HullFigures } from "../../src/core/hull/figures.js";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { readPlan } from "../../src/core/plan/read.js";
import { boundsOf } from "../../src/drawing/bounds.js";
import { referenceLetters } from "../../src/drawing/hull/marks-labels.js";
import { packetPages } from "../../src/packet/packet.js";
import type { Page } from "../../src/packet/page.js";
import { readingWords } from "../../src/words/hull-words.js";
import { overlaps, textsOf } from "./pages.js";

const textAt = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");
const long = "a name as long as names may be and that is a good deal longer than any label";
const plans: readonly (readonly [string, string])[] = [
  ["tender", textAt("examples/tender.yaml")],
  ["utility", textAt("examples/utility.yaml")],
  ["launch", textAt("examples/launch.yaml")],
  [
    "utility with long names",
    textAt("examples/utility.yaml")
      .replaceAll("coaming lamp", `${long} x`)
      .replaceAll("seat bracket", `${long} y`)
      .replaceAll("lining", `${long} z`)
      .replaceAll("frame at 98", `${long} w`),
  ],
  [
    "utility, every mark measured, one of them wrong",
    textAt("examples/utility.yaml").replace(
      "\nfloat:\n",
      `\nchecked:\n  coaming lamp 2: { seat bracket: 10 7/8 in, step bracket: 18 5/8 in, well bracket: 26 1/4 in }\nfloat:\n`,
    ),
  ],
];
const edgeMm = 8;
const ours = /^(Survey|Marks|Hole list|How she floats)/;

describe.each(plans)("%s", (_name, text) => {
  let hull: HullFigures;
  let all: Page[];
  let pages: Page[];
  let shows: Parameters<typeof packetPages>[1];
  beforeAll(() => {
    const read = readPlan(text);
    if (!read.ok) throw new Error(JSON.stringify(read.problems[0]));
    const whole = workOutWhole(read.plan);
    ({ hull } = whole);
    ({ shows } = read.plan);
    all = packetPages(whole.figures, shows, { hull });
    pages = all.filter(({ caption }) => ours.test(caption));
    // everything of a whole boat, on a machine that may be busy
  }, 60_000);

  test("there is a survey, a sheet for each side of each face with marks, the holes and the float", () => {
    const sides = hull.faces.flatMap(({ sides: of }) => of.filter(({ marks }) => marks.length > 0));
    const count = (start: string) => pages.filter(({ caption }) => caption.startsWith(start)).length;
    expect(count("Marks")).toBeGreaterThanOrEqual(sides.length);
    expect([count("Survey") > 0, count("Hole list") > 0, count("How she floats") > 0]).toEqual([
      true,
      true,
      true,
    ]);
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

  test("every reading is on its sheet, in letters for an arm's length, with a box to write what one reads", () => {
    const { graduationM } = hull.plan.marks;
    for (const { sides } of hull.faces)
      for (const { marks } of sides)
        for (const { mark } of marks)
          for (const { roundedM } of [...mark.readings, ...(mark.check ? [mark.check] : [])]) {
            const words = readingWords(Math.abs(roundedM), graduationM, shows);
            const found = pages.some(
              ({ caption, sheet }) =>
                caption.startsWith("Marks") &&
                textsOf(sheet).some(({ text: one }) => one.text === words && one.sizeMm >= 5.9),
            );
            expect(found, `${mark.name}: ${words}`).toBe(true);
          }
    const boxes = pages
      .filter(({ caption }) => caption.startsWith("Marks"))
      .flatMap(({ sheet }) => sheet.shapes)
      .filter(
        (shape) => shape.kind === "polyline" && shape.closed && shape.points.length === 4 && !shape.fill,
      );
    const marks = hull.faces.flatMap(({ sides }) => sides.flatMap((side) => side.marks));
    expect(boxes.length).toBeGreaterThanOrEqual(marks.length);
  });

  test("every point a tape is put to stands on the sheet with its letter, its name and where it is", () => {
    for (const { plan, sides } of hull.faces)
      for (const side of sides.filter(({ marks }) => marks.length > 0)) {
        const name = plan.pair ? `Marks: ${plan.name}, ${side.side}` : `Marks: ${plan.name}`;
        const sheets = pages.filter(({ caption }) => caption.startsWith(name));
        expect(sheets.length, name).toBeGreaterThan(0);
        const words = sheets.flatMap(({ sheet }) => textsOf(sheet).map(({ text: one }) => one.text));
        for (const [point, letter] of referenceLetters(side)) {
          expect(words.filter((one) => one === letter).length, `${name}: ${letter}`).toBeGreaterThanOrEqual(
            2,
          );
          // a long name may be cut, with a sign that it was
          const found = words.some(
            (one) => one === point || (one.endsWith("…") && point.startsWith(one.slice(0, -1))),
          );
          expect(found, `${name}: ${point}`).toBe(true);
        }
        expect(words.some((one) => /along, .* below|to the right, .* up/.test(one))).toBe(true);
      }
  });

  test("a mark is called on the drawing what the gear is called, and what the readings say stands whole under it", () => {
    for (const { plan, sides } of hull.faces)
      for (const side of sides.filter(({ marks }) => marks.length > 0)) {
        const name = plan.pair ? `Marks: ${plan.name}, ${side.side}` : `Marks: ${plan.name}`;
        const words = pages
          .filter(({ caption }) => caption.startsWith(name))
          .flatMap(({ sheet }) => textsOf(sheet).map(({ text: one }) => one.text));
        const numbers = side.marks.map(({ mark }) => / (\d+)$/.exec(mark.name)?.[1]);
        const clear = !numbers.includes(undefined) && new Set(numbers).size === numbers.length;
        for (const [index, { mark }] of side.marks.entries()) {
          // by its number where that is plain, else by its name: on the drawing and in the table
          const times = words.filter((one) => one === (clear ? numbers[index] : mark.name)).length;
          if (clear || mark.name.length < 27)
            expect(times, `${name}: ${mark.name}`).toBeGreaterThanOrEqual(clear ? 1 : 2);
        }
        const verdicts = (side.checked?.verdicts ?? []).filter(({ verdict }) => verdict === "misplaced");
        const said = words.filter((one) => one.startsWith("Your readings say: misplaced: move "));
        expect(said.length).toBe(verdicts.length);
        for (const one of said) expect(one).not.toContain("…");
      }
  });

  test("what to measure next has a box beside it, and a starting form says how unsure each place is", () => {
    const survey = pages.filter(({ caption }) => caption.startsWith("Survey"));
    const words = survey.flatMap(({ sheet }) => textsOf(sheet).map(({ text: one }) => one.text));
    expect(words).toContain("Measure next, most useful first");
    expect(words.some((one) => / at station /.test(one))).toBe(true);
    if (hull.form?.source === "starting form") expect(words.some((one) => /unsure by/.test(one))).toBe(true);
  });

  test("the survey names each line at its own end, in the order they lie", () => {
    const [first] = pages.filter(({ caption }) => caption.startsWith("Survey"));
    if (first === undefined || hull.form?.form === undefined) throw new Error("a survey is drawn");
    const texts = textsOf(first.sheet).filter(({ text: one }) => one.anchor === "end");
    for (const { name } of hull.form.form.lines)
      expect(texts.filter(({ text: one }) => one.text === name).length, name).toBeGreaterThanOrEqual(1);
    // the profile's heights rise from the keel to the sheer
    const heights = hull.form.form.lines.map(
      ({ name }) => texts.findLast(({ text: one }) => one.text === name)?.text.y ?? Number.NaN,
    );
    expect(heights).toEqual(heights.toSorted((a, b) => a - b));
    for (const [index, y] of heights.entries())
      if (index > 0) expect(y - (heights[index - 1] ?? y)).toBeGreaterThan(3.7);
  });

  test("the pages of the electrics stay as they are without the hull", () => {
    const others = new Set(all.flatMap(({ parts }) => parts).filter((title) => !ours.test(title)));
    expect(others.size).toBeGreaterThan(7);
  });
});
