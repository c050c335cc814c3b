// Page one tells the boat, what stands in the way and what to do first; every page says of which plan it is.
import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import type { Plan } from "../../src/core/plan/model/plan.js";
import { planMark } from "../../src/core/plan/plan-mark.js";
import { planWork } from "../../src/core/work/plan-work.js";
import { boundsOf } from "../../src/drawing/bounds.js";
import { packetPages } from "../../src/packet/packet.js";
import type { Page } from "../../src/packet/page.js";
import { findingSentence } from "../../src/words/findings.js";
import { stepTitles } from "../../src/words/work-words.js";
import { overlaps, planAt, textsOf } from "./pages.js";

function workedOut(plan: Plan) {
  const { figures, layout, hull } = workOutWhole(plan);
  const work = planWork(figures, { layout, hull });
  const pagesOn = (paper: "letter" | "a4") =>
    packetPages(figures, { ...plan.shows, paper }, { hull, layout, work });
  return { figures, work, pagesOn };
}
const said = ({ sheet }: Page) =>
  textsOf(sheet)
    .map(({ text }) => text.text)
    .join(" ")
    .replaceAll("\u00a0", " ");

describe.each(["examples/utility.yaml", "examples/second-season.yaml", "tests/packet/overloaded.yaml"])(
  "%s",
  (path) => {
    const plan = planAt(path);
    const { figures, work, pagesOn } = workedOut(plan);
    test.each(["letter", "a4"] as const)(
      "has all of it on one page of %s, nothing on anything else",
      (paper) => {
        const [first, second] = pagesOn(paper);
        if (first === undefined || second === undefined) throw new Error("a packet has pages");
        expect(first.caption).toBe(plan.name);
        expect(second.caption).not.toContain(plan.name);
        expect(overlaps(first.sheet)).toEqual([]);
        for (const shape of first.sheet.shapes) {
          const { minX, minY, maxX, maxY } = boundsOf(shape);
          expect(minX >= 8 && minY >= 5 && maxX <= first.sheet.widthMm - 8).toBe(true);
          expect(maxY).toBeLessThanOrEqual(first.sheet.heightMm - 8);
        }
        const words = said(first);
        const gravest = figures.findings.find(({ level }) => level === "stop");
        const unchecked = figures.findings.filter(({ level }) => level === "unchecked").length;
        expect(unchecked).toBeGreaterThan(0);
        if (figures.findings.every(({ level }) => level !== "stop" && level !== "mend")) {
          expect(words).toContain("No rule stops the work");
          expect(words).toContain(`${unchecked} matters could not be checked`);
        } else expect(words).not.toContain("No rule stops the work");
        if (gravest !== undefined) {
          expect(words).not.toContain("No rule stops the work");
          expect(words).toContain("Mend in the plan what stops the work");
          expect(words).toContain(
            findingSentence(gravest, plan.shows).replaceAll("\u00a0", " ").slice(0, 30),
          );
        }
        const title = stepTitles(work.step.values());
        for (const { step } of work.order.steps.slice(0, 1)) expect(words).toContain(title(step));
        for (const field of ["Looked through by", "Date", "Signature", "Before you begin"])
          expect(words).toContain(field);
      },
    );
  },
);

test("every page says of which boat and plan it is; another plan has another mark, the same one the same", () => {
  const plan = planAt("examples/tender.yaml");
  const pages = workedOut(plan).pagesOn("letter");
  const mark = planMark(plan);
  expect(mark).toMatch(/^[0-9A-HJKMNP-TV-Z]{6}$/);
  for (const [index, page] of pages.entries()) {
    expect(said(page)).toContain(`${plan.name} · plan ${mark}`);
    expect(said(page)).toContain(`page ${index + 1} of ${pages.length}`);
  }
  expect(planMark(planAt("examples/tender.yaml"))).toBe(mark);
  // a section of a later format that the plan does not use
  expect(planMark(Object.assign({}, plan, { later: [] }))).toBe(mark);
  const marks = new Set(
    Array.from({ length: 400 }, (_, index) =>
      planMark({ ...plan, craft: { ...plan.craft, lengthM: 2.5 + index / 1000 } }),
    ),
  );
  expect(marks.size).toBe(400);
});
