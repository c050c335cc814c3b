import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";

import type { Figures } from "../../../src/core/figures-types.js";
import type { Finding } from "../../../src/core/findings/finding.js";
import { ruleOf } from "../../../src/core/findings/rules.js";
import { workOutWhole } from "../../../src/core/layout-figures.js";
import { applyEdit } from "../../../src/core/plan/edits/apply.js";
import type { Plan } from "../../../src/core/plan/model/plan.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { findingSentence } from "../../../src/words/findings.js";

const folder = (path: string) => fileURLToPath(new URL(`../../../examples/${path}`, import.meta.url));
const namesIn = (path: string) =>
  readdirSync(folder(path))
    .filter((name) => name.endsWith(".yaml"))
    .map((name) => name.slice(0, -".yaml".length));
const textOf = (name: string) => readFileSync(folder(`${name}.yaml`), "utf8");

const known = new Map<string, { plan: Plan; figures: Figures }>();
function figuresOf(name: string): { plan: Plan; figures: Figures } {
  const found = known.get(name) ?? figuresOfText(textOf(name));
  known.set(name, found);
  return found;
}

function figuresOfText(text: string): { plan: Plan; figures: Figures } {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems.slice(0, 3)));
  return { plan: read.plan, figures: workOutWhole(read.plan).figures };
}

const stops = (findings: readonly Finding[]) => findings.filter(({ level }) => level === "stop");
const faults = (findings: readonly Finding[]) =>
  findings.filter(({ level }) => level === "stop" || level === "mend");

describe("the examples", () => {
  test.each(namesIn("."))("%s: nothing to stop for and nothing to mend", (name) => {
    const { plan, figures } = figuresOf(name);
    // of the boat with a fault to find, the readings that show it are all there is to mend
    const found = faults(figures.findings).filter(
      ({ rule }) => name !== "second-season" || rule !== "reading-outside",
    );
    expect(found.map((one) => findingSentence(one, plan.shows))).toEqual([]);
    expect(figures.sizes.proof).toBe("proven");
  });

  test.each(namesIn("."))("%s: everything is fed and every corner has a solution", (name) => {
    const { figures } = figuresOf(name);
    expect(figures.plan.looseEnds).toEqual([]);
    expect(figures.corners.map(({ status }) => status)).toEqual(figures.corners.map(() => "solved"));
    expect(figures.outings.length).toBeGreaterThan(0);
    expect(figures.charging.length).toBeGreaterThan(0);
  });

  test("the second season shows its fault by its readings", () => {
    const { figures } = figuresOf("second-season");
    expect(faults(figures.findings).map(({ rule }) => rule)).toEqual(["reading-outside", "reading-outside"]);
  });

  test("the launch has what its comment promises", () => {
    const { plan } = figuresOf("launch");
    expect(plan.gear.reduce((sum, { count }) => sum + count, 0)).toBe(40);
    expect([plan.panels.length, plan.boxes.length, plan.batteries.length, plan.outings.length]).toEqual([
      2, 4, 2, 2,
    ]);
  });
});

describe("the wrong plans", () => {
  const names = namesIn("wrong");
  const wrong = names.filter((name) => !name.endsWith(".mended"));

  test("each has its mended plan beside it, and there are many", () => {
    expect(names.filter((name) => name.endsWith(".mended"))).toEqual(
      wrong.map((name) => `${name}.mended`).toSorted(),
    );
    expect(wrong.length).toBeGreaterThanOrEqual(30);
  });

  test.each(wrong)("%s raises its finding and no other stop; mended, it does not", (name) => {
    const text = textOf(`wrong/${name}`);
    expect(text).toMatch(/^# [A-Z0-9].*\.\n# raises: [\w-]+\n/);
    const rule = /^# raises: ([\w-]+)$/m.exec(text)?.[1] ?? "";
    expect(ruleOf(rule)).toBeDefined();

    const asItIs = figuresOf(`wrong/${name}`);
    const raised = asItIs.figures.findings.filter((one) => one.rule === rule);
    expect(raised).not.toEqual([]);
    expect(stops(asItIs.figures.findings).filter((one) => one.rule !== rule)).toEqual([]);
    for (const one of asItIs.figures.findings)
      expect(findingSentence(one, asItIs.plan.shows)).not.toMatch(/undefined|NaN/);

    const mended = figuresOf(`wrong/${name}.mended`);
    expect(mended.figures.findings.filter((one) => one.rule === rule)).toEqual([]);
    expect(faults(mended.figures.findings).map((one) => findingSentence(one, mended.plan.shows))).toEqual([]);
  });

  test.each(wrong)("%s: each remedy of its finding can be applied, and the first one answers it", (name) => {
    const text = textOf(`wrong/${name}`);
    const rule = /^# raises: ([\w-]+)$/m.exec(text)?.[1] ?? "";
    for (const { at, remedies = [], level } of figuresOf(`wrong/${name}`).figures.findings.filter(
      (one) => one.rule === rule,
    )) {
      const edited = remedies.map((remedy) => applyEdit(text, remedy));
      expect(edited.filter(({ ok }) => !ok)).toEqual([]);
      const [first] = edited;
      if (!first?.ok) continue;
      const after = figuresOfText(first.text).figures.findings;
      expect(after.filter((one) => one.rule === rule && one.at === at && one.level === level)).toEqual([]);
    }
  });

  test.each(wrong)("%s differs from its mended plan in a line or two", (name) => {
    const body = (text: string) => text.split("\n").slice(2);
    const [bad, good] = [body(textOf(`wrong/${name}`)), body(textOf(`wrong/${name}.mended`))];
    const inBad = bad.filter((line) => !good.includes(line));
    const inGood = good.filter((line) => !bad.includes(line));
    expect(inBad.length + inGood.length).toBeGreaterThan(0);
    expect(Math.max(inBad.length, inGood.length)).toBeLessThanOrEqual(2);
  });
});
