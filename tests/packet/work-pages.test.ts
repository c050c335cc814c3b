import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { readPlan } from "../../src/core/plan/read.js";
import { planWork } from "../../src/core/work/plan-work.js";
import type { Shape } from "../../src/drawing/shapes.js";
import { builtSection } from "../../src/packet/built-section.js";
import { orderSection } from "../../src/packet/order-section.js";
import { paperOf } from "../../src/packet/page.js";
import { paperInEnglish } from "../../src/words/paper/english.js";

const text = readFileSync("examples/tender.yaml", "utf8");

function pagesOf(more = "") {
  const read = readPlan(text + more);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { figures, layout, hull } = workOutWhole(read.plan);
  const work = planWork(figures, { layout, hull });
  const { shows } = read.plan;
  const paper = paperOf(shows.paper);
  return {
    work,
    order: orderSection(work, shows, paper, paperInEnglish),
    built: builtSection(figures, work, shows, paper, paperInEnglish),
  };
}

function* words(shapes: readonly Shape[]): Generator<string> {
  for (const shape of shapes) {
    if (shape.kind === "text") yield shape.text;
    if (shape.kind === "group") yield* words(shape.shapes);
  }
}
const said = (pages: readonly (readonly Shape[])[]) =>
  pages
    .flatMap((page) => [...words(page)])
    .join(" ")
    .replaceAll("\u00a0", " ");
const squares = (pages: readonly (readonly Shape[])[]) =>
  pages.flat().filter((shape) => shape.kind === "polyline" && shape.closed).length;

const plain = pagesOf();

describe("order of work", () => {
  test("a square to tick for every step, each tool put away once", () => {
    expect(squares(plain.order.pages)).toBe(plain.work.order.steps.length);
    const away = said(plain.order.pages).match(/Put away for good: [^.]*\./g) ?? [];
    expect(away.length).toBeGreaterThan(3);
    expect(new Set(away).size).toBe(away.length);
  });
  test("cautions stand at their steps, and no value is missing", () => {
    const all = said(plain.order.pages);
    expect(all).toContain("Pull on every crimp");
    expect(all).toMatch(/Main fuse in last|main fuse goes in last/);
    expect(all).not.toMatch(/undefined|NaN|\[object/);
  });
  test("where all is done there is no such page", () => {
    const ticks = plain.work.project.steps.map(({ id }) => `  - {step: ${JSON.stringify(id)}}`).join("\n");
    expect(pagesOf(`\nwork done:\n${ticks}\n`).order.pages).toEqual([]);
  });
});

describe("as built", () => {
  test("what is not on record stays empty, what is stands beside the plan", () => {
    expect(plain.built.subtitle).toBe("nothing on record yet");
    const { built } = pagesOf(`
work done: [{step: survey / boat, when: 2026-04-11}]
as built:
  lengths: [{run: battery lead, length: 2 ft 6 in, measured: true}, {run: "old =cable", length: 1 ft}]
  ratings: [{device: thwart panel / floor / fuse, rating: 2 A}]
readings: [{at: thwart panel, against: box battery, shows: -12.4 V, note: leads were crossed}]
`);
    const all = said(built.pages);
    expect(built.subtitle.replace("\u00a0", " ")).toBe("1 step on record");
    expect(all).toContain("2 ft 6 in");
    expect(all).toContain("measured");
    expect(all).toContain("battery lead lies 2 ft 6 in long; the plan says 2 ft 4 in, 2 in less.");
    expect(all).toContain("old =cable");
    expect(all).toContain("not in the plan");
    expect(all).toContain("−12.40 V");
    expect(all).toContain("leads were crossed");
  });
});
