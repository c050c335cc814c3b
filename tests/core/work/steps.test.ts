import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOut } from "../../../src/core/figures.js";
import { workOutWhole } from "../../../src/core/layout-figures.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { benchOf } from "../../../src/core/proving/bench-network.js";
import { testSheet } from "../../../src/core/proving/sheet/sheet.js";
import { orderOf } from "../../../src/core/work/order.js";
import { LoopError, orderProblemOf } from "../../../src/core/work/order-problem.js";
import { planWork } from "../../../src/core/work/plan-work.js";
import { workSteps } from "../../../src/core/work/steps.js";
import { english } from "../../../src/words/steps/english.js";
import { spanish } from "../../../src/words/steps/spanish.js";
import { namesText, stepTitles } from "../../../src/words/work-words.js";
import { evenings, madeUpGraph } from "../../outside/work-graphs.js";

const figuresOf = (text: string) => {
  const read = readPlan(text);
  if (!read.ok) throw new Error("does not read");
  return workOut(read.plan).figures;
};
const text = (name: string) => readFileSync(`examples/${name}.yaml`, "utf8");

describe.each(["tender", "utility", "launch"])("%s", (name) => {
  const figures = figuresOf(text(name));
  const graph = workSteps(figures);
  const order = orderOf(graph, { windows: evenings });
  const place = new Map(order.steps.map(({ step }, at) => [step, at]));
  const timeOf = new Map(order.steps.map((step) => [step.step, step]));

  test("every step once, every precedence kept, every cure waited for", () => {
    expect(new Set(order.steps.map(({ step }) => step)).size).toBe(graph.steps.length);
    for (const { before, after, cure } of graph.precedences) {
      expect(place.get(before) ?? 0, `${before} before ${after}`).toBeLessThan(place.get(after) ?? -1);
      const rested = (timeOf.get(after)?.startMin ?? 0) - (timeOf.get(before)?.endMin ?? 0);
      if (cure) expect(rested).toBeGreaterThanOrEqual(cure.hours * 60 - 1e-9);
    }
  });
  test("the battery is connected after everything else, and no lid closes before the proofs", () => {
    const on = Math.min(
      ...figures.plan.batteries.map((battery) => place.get(`battery on / ${battery.name}`) ?? -1),
    );
    for (const { id, kind } of graph.steps) {
      if (kind === "connect" || kind === "prove dead") expect(place.get(id) ?? 1e9, id).toBeLessThan(on);
      if (kind === "close up")
        for (const proof of graph.steps)
          if (proof.id.startsWith("prove /"))
            expect(place.get(proof.id) ?? 1e9).toBeLessThan(place.get(id) ?? -1);
    }
  });
  test("a tool is put away after its true last use and never used again", () => {
    const away = new Map<string, number>();
    order.steps.forEach(({ lastUseOf }, at) => {
      for (const tool of lastUseOf) {
        expect(away.has(tool)).toBe(false);
        away.set(tool, at);
      }
    });
    for (const { id, tools } of graph.steps)
      for (const tool of tools) expect(place.get(id) ?? 1e9).toBeLessThanOrEqual(away.get(tool) ?? -1);
  });
  test("no two steps read alike, with boxes and routes known", () => {
    const read = readPlan(text(name));
    if (!read.ok) throw new Error("does not read");
    const whole = workOutWhole(read.plan);
    const { step } = planWork(whole.figures, whole);
    const titles = [...step.keys()].map(stepTitles(step.values()));
    expect(new Set(titles).size).toBe(step.size);
  });
  test("cost is at least the bound, the gap is stated", () => {
    expect(order.cost).toBeGreaterThanOrEqual(order.lowerBound);
  });
  test("nothing recorded is lost whatever the plan", () => {
    const ticked = graph.steps.map(({ id }) => `  - {step: ${JSON.stringify(id)}}`).join("\n");
    const more = `work done:
${ticked}
  - {step: draw / gone, when: 2026-04-11 19:20}
work notes:
  - {step: drill / gone too, note: "a knot, here", photos: [knot.jpg]}
as built:
  lengths: [{run: gone, length: 2 m}]
  holes: [{hole: h, on: side, at: {along: 1 m, off: 200 mm}, size: 20 mm}]
`;
    const later = figuresOf(`${text(name)}\n${more}`);
    const { asBuilt: view, order: left } = planWork(later);
    expect(left.steps).toEqual([]);
    expect(view.record).toBe(later.plan.source.work);
    expect(view.steps.flatMap(({ done }) => done)).toHaveLength(graph.steps.length + 1);
    expect(view.steps.flatMap(({ notes }) => notes)).toHaveLength(1);
    expect(view.differences.map(({ kind }) => kind)).toEqual(["hole not wanted", "run not wanted"]);
    expect(view.problems).toEqual([
      { problem: "not in the plan", step: "draw / gone" },
      { problem: "not in the plan", step: "drill / gone too" },
    ]);
  });
});

test("a step ticked before what it waits for, twice, or of no plan is said", () => {
  const ticks = ["drill / floor lamp", "drill / floor lamp", "nothing"];
  const lines = ticks.map((step) => `  - {step: ${step}}`).join("\n");
  const { asBuilt } = planWork(figuresOf(`${text("tender")}\nwork done:\n${lines}\n`));
  expect(asBuilt.problems.map(({ problem, step }) => `${step}: ${problem}`).sort()).toEqual([
    "drill / floor lamp: out of order",
    "drill / floor lamp: ticked twice",
    "nothing: not in the plan",
  ]);
});

test("steps that wait for each other in a ring are refused by name", () => {
  const graph = madeUpGraph(1, 4);
  const ring = [
    ["s0", "s1"],
    ["s1", "s2"],
    ["s2", "s0"],
  ].map(([before = "", after = ""]) => ({ before, after, reason: "wire before joint" as const }));
  expect(() => orderProblemOf({ ...graph, precedences: ring })).toThrow(LoopError);
});

test("steps that would read alike are told apart by what their names add; an unknown one is called by its id", () => {
  const graph = workSteps(figuresOf(text("tender")));
  const secure = graph.steps.find(({ task }) => task === "secure run");
  if (secure === undefined) throw new Error("the tender secures no run");
  const title = stepTitles([
    { ...secure, id: "secure / leg port side" },
    { ...secure, id: "secure / leg under the thwart" },
    ...graph.steps.filter(({ task }) => task === "label run"),
  ]);
  expect(title("secure / leg port side")).toMatch(/^Secure .* \(leg port side\)$/);
  expect(title("secure / leg under the thwart")).toMatch(/ \(leg under the thwart\)$/);
  expect(title(`label / ${secure.pieces[0]}`)).toBe(`Label both ends of ${secure.pieces[0]}`);
  expect(title("no such step")).toBe("no such step");
});

describe("the steps in Spanish", () => {
  const read = readPlan(text("utility"));
  if (!read.ok) throw new Error("does not read");
  const whole = workOutWhole(read.plan);
  const { step } = planWork(whole.figures, whole);
  test("every title is another than in English, has the same names in it, and no two read alike", () => {
    const [inEnglish, inSpanish] = [stepTitles(step.values()), stepTitles(step.values(), spanish)];
    const titles = [...step.keys()].map(inSpanish);
    expect(new Set(titles).size).toBe(step.size);
    for (const { id, pieces, at } of step.values()) {
      expect(inSpanish(id)).not.toBe(inEnglish(id));
      for (const name of [...pieces, ...at])
        expect(inSpanish(id).includes(name), `${name} in ${inSpanish(id)}`).toBe(
          inEnglish(id).includes(name),
        );
      expect(inSpanish(id)).not.toMatch(/undefined| (and|from|to|at|for|the) /);
    }
  });
  test("every caution, tool and thing that is used up has words of its own", () => {
    for (const list of ["cautions", "tools", "kinds", "cures"] as const)
      for (const [key, words] of Object.entries<string>(spanish[list]))
        expect(words, key).not.toBe(new Map(Object.entries<string>(english[list])).get(key));
  });
  test("names are joined as the language does", () => {
    expect(namesText(["bomba 1", "bomba 2", "sonda"], spanish)).toBe("bomba 1 a 2 y sonda");
    expect(namesText(["sonda", "interruptor"], spanish)).toBe("sonda e interruptor");
    expect(namesText(["agua", "hielo"], spanish)).toBe("agua y hielo");
  });
});

describe.each(["tender", "utility", "launch"])("the order and the test sheet of %s", (name) => {
  const read = readPlan(text(name));
  if (!read.ok) throw new Error("does not read");
  const { figures, circuit } = workOut(read.plan);
  const { steps } = workSteps(figures);
  const sheet = testSheet(benchOf(figures.plan, circuit), figures, { samples: 100 }).filter(
    ({ tests }) => tests.length > 0,
  );

  test("what the sheet proves has a step, and what a step proves is on the sheet", () => {
    const asked = new Set(steps.flatMap(({ readings }) => readings));
    expect([...asked].sort()).toEqual(sheet.map(({ id }) => id).sort());
  });

  test("everything a line is about is named by the step that proves it", () => {
    for (const section of sheet) {
      const own = steps.filter(({ readings }) => readings.includes(section.id));
      const named = own.flatMap(({ at, pieces }) => [...at, ...pieces]);
      if (section.kind === "insulation" || section.kind === "battery" || section.kind === "seen") continue;
      for (const { at, test: kind } of section.tests)
        if (kind !== "rating") expect(named, `${section.id}: ${kind} at ${at}`).toContain(at);
    }
  });

  // common practice, no source: a panel is live in any light; makers of regulators differ in their order, which the cautions say
  test("a solar panel is covered before hands go to it, and sees light only when the battery is on and all is proven", () => {
    const { precedences } = workSteps(figures);
    const place = new Map(
      orderOf({ steps, precedences }, { windows: evenings }).steps.map(({ step }, at) => [step, at]),
    );
    for (const { name, kind } of figures.plan.chargers) {
      const cover = place.get(`cover / ${name}`);
      const uncover = place.get(`uncover / ${name}`);
      const leads = figures.plan.runs.filter(({ from, to }) => [from.place, to.place].includes(name));
      expect(cover !== undefined, name).toBe(kind === "solar" && leads.length > 0);
      expect(uncover !== undefined, name).toBe(cover !== undefined);
      if (cover === undefined || uncover === undefined) continue;
      const ends = leads.flatMap((lead) => [`${lead.name} / start`, `${lead.name} / end`]);
      for (const id of [
        `mount / ${name}`,
        `prove polarity / ${name}`,
        ...ends.flatMap((end) => [`join / ${end}`, `connect / ${end}`]),
      ])
        expect(place.get(id), id).toBeGreaterThan(cover);
      for (const step of steps)
        if (step.task === "battery on" || (step.kind === "prove live" && step.task !== "leak test"))
          expect(place.get(step.id), step.id).toBeLessThan(uncover);
      const cautions = steps.flatMap(({ id, caution }) =>
        id === `cover / ${name}` || id === `uncover / ${name}` ? [caution] : [],
      );
      expect(cautions).toEqual(["panel covered", "panel last"]);
    }
  });

  test("no charger's lead meets the charger or the battery before its poles are proven", () => {
    const { precedences } = workSteps(figures);
    const place = new Map(
      orderOf({ steps, precedences }, { windows: evenings }).steps.map(({ step }, at) => [step, at]),
    );
    for (const charger of figures.plan.chargers) {
      const leads = figures.plan.runs.filter(({ from, to }) => [from.place, to.place].includes(charger.name));
      const proof = steps.find(({ id }) => id === `prove polarity / ${charger.name}`);
      expect(proof === undefined, charger.name).toBe(leads.length === 0);
      if (!proof) continue;
      expect(proof.caution).toBe(charger.kind === "solar" ? "solar panel" : "charger lead");
      for (const lead of leads)
        for (const end of ["start", "end"]) {
          expect(place.get(`join / ${lead.name} / ${end}`)).toBeLessThan(place.get(proof.id) ?? -1);
          expect(place.get(proof.id)).toBeLessThan(place.get(`connect / ${lead.name} / ${end}`) ?? -1);
        }
      for (const battery of figures.plan.batteries)
        expect(place.get(proof.id)).toBeLessThan(place.get(`battery on / ${battery.name}`) ?? -1);
    }
  });
});
