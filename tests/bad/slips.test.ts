import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { readPlan } from "../../src/core/plan/read.js";
import { findingSentence } from "../../src/words/findings.js";
import { docExample, examplePlans } from "../core/plan/doc-example.js";
import { seeded } from "./spoil.js";

const plan = docExample();
/** Every number that something is measured or counted by, and what a slip of the hand makes of it. */
const numbers = [...plan.matchAll(/(?<=[:[,{] ?|at |to )\d+(\.\d+)?(?= )/g)];
const slips = ["-1", "0", "0.000001", "99999"];

/** A plan with a slip is refused with reasons, or everything is worked out and told in figures one can read. */
function judge(text: string): "refused" | "told" {
  const read = readPlan(text);
  if (!read.ok) {
    expect(read.problems.length).toBeGreaterThan(0);
    return "refused";
  }
  for (const finding of workOutWhole(read.plan).figures.findings) {
    const said = findingSentence(finding, read.plan.shows);
    expect(said).not.toMatch(/NaN|undefined|Infinity|\de[+-]?\d|\[object/);
  }
  return "told";
}

describe("the document's own example with one number slipped", () => {
  const next = seeded(11);
  const picked = Array.from({ length: 12 }, () => numbers[Math.floor(next() * numbers.length)]);
  const cases = picked.flatMap((number, turn) => {
    const slip = slips[turn % slips.length] ?? "0";
    if (number === undefined) return [];
    const { index } = number;
    const lineStart = plan.lastIndexOf("\n", index) + 1;
    return [[`${plan.slice(lineStart, index).trim()}${slip}`, index, number[0].length, slip] as const];
  });

  test("is refused or told, whichever number it is", { timeout: 120_000 }, () => {
    const seen = cases.map(([what, at, length, slip]) => {
      try {
        return judge(plan.slice(0, at) + slip + plan.slice(at + length));
      } catch (error) {
        throw new Error(`${what}: ${error}`);
      }
    });
    expect(new Set(seen)).toEqual(new Set(["refused", "told"]));
  });
});

const launch = examplePlans().find(({ name }) => name === "examples/launch.yaml")?.text ?? "";

test.each([
  ["a working range below nothing", plan, /works: 9 V/, "works: -1 V", "refused"],
  ["a box of no size", launch, /(box 120: \{inside: \[)[^,]+,/, "$10.00001 mm,", "refused"],
  ["a sheer at its keel", launch, /(line: sheer, at: 2.1 m, [^}]*height: )[\d.]+/, "$1-1", "told"],
] as const)("%s breaks nothing", (_what, text, where, slip, seen) => {
  expect(text).toMatch(where);
  expect(judge(text.replace(where, slip))).toBe(seen);
});
