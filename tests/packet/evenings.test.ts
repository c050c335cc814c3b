import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { planWork } from "../../src/core/work/plan-work.js";
import type { Step } from "../../src/core/work/step.js";
import { packetPages } from "../../src/packet/packet.js";
import { sessionWords } from "../../src/words/work-times.js";
import { planAt, textsOf } from "./pages.js";

/** `12–14, 20` as the pages it says. */
const pagesIn = (ranges: string): number[] =>
  ranges.split(", ").flatMap((range) => {
    const [from = 0, to = from] = range.split("–").map(Number);
    return Array.from({ length: to - from + 1 }, (_, at) => from + at);
  });

const listedSheets =
  /(Order of work|Marks|Hole list|Box|Cut list|Run sheet|Wire flags|Terminations|Test sheet) (\d[\d–]*(?:, \d[\d–]*)*)/g;

describe.each(["tender", "utility", "launch"])("%s: which pages go along for which evening", (name) => {
  const plan = planAt(`examples/${name}.yaml`);
  const { figures, layout, hull } = workOutWhole(plan);
  const work = planWork(figures, { layout, hull });
  const pages = packetPages(figures, plan.shows, { hull, layout, work });
  const wordsOn = (page: number): string =>
    pages[page - 1] === undefined
      ? ""
      : textsOf(pages[page - 1]?.sheet ?? { title: "", widthMm: 0, heightMm: 0, shapes: [] })
          .map(({ text }) => text.text.replaceAll("\u00a0", " "))
          .join(" ");
  const own = pages.flatMap(({ parts }, at) => (parts.includes("Evening by evening") ? [at + 1] : []));
  const told = own.map(wordsOn).join(" ");

  // the same stretches by another way: the order walked through, a new one where the day is another
  const evenings: { readonly heads: string; readonly steps: Step[] }[] = [];
  for (const [at, { startMin, step }] of work.order.steps.entries()) {
    const heads = sessionWords(startMin, work.order.steps[at - 1]?.startMin, work.nowMin);
    if (heads !== "") evenings.push({ heads, steps: [] });
    const one = work.step.get(step);
    if (one) evenings.at(-1)?.steps.push(one);
  }
  const lines = told.split(/(?=\b[A-Z][a-z]+day, week \d+, from )/).slice(1);
  const sheets = lines.map(
    (line) =>
      new Map(
        [...line.matchAll(listedSheets)].map(([, title = "", ranges = ""]) => [title, pagesIn(ranges)]),
      ),
  );

  test("it stands right after page one, and has a line for each stretch of free hours", () => {
    expect(own[0]).toBe(2);
    expect(lines.length).toBe(evenings.length);
    expect(lines.map((line, at) => line.startsWith(evenings[at]?.heads ?? "?"))).not.toContain(false);
  });

  test("each page it names is of the sheet it says", () => {
    for (const of of sheets)
      for (const [title, list] of of)
        for (const page of list)
          expect(
            pages[page - 1]?.parts.some((part) => part.startsWith(title)),
            `${title} ${page}`,
          ).toBe(true);
  });

  test("the order of work of that evening is on its pages, and what is cut and joined stands on those named", () => {
    for (const [at, { heads, steps }] of evenings.entries()) {
      const of = (title: string) => (sheets[at]?.get(title) ?? []).map(wordsOn).join(" ");
      expect(of("Order of work"), heads).toContain(heads);
      for (const { task, pieces } of steps)
        for (const piece of pieces) {
          if (task === "cut wire") expect(of("Cut list"), `${heads}: ${piece}`).toContain(piece);
          if (task === "join end") expect(of("Terminations"), `${heads}: ${piece}`).toContain(piece);
        }
    }
  });
});
