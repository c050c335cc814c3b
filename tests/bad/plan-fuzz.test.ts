import { expect, test } from "vitest";
import { readPlan } from "../../src/core/plan/read.js";
import { limits } from "../../src/core/plan/source/limits.js";
import { readProblemLine } from "../../src/words/read-problems.js";
import { docExample, examplePlans, smallPlan } from "../core/plan/doc-example.js";
import { judgeSpoilt, judgeSpoiltBytes } from "./judge-spoilt.js";
import { seeded, smallPiece, spoilt, spoiltBytes } from "./spoil.js";

const plans = [docExample(), smallPlan, ...examplePlans().map((plan) => plan.text)];

test.each([1, 2, 3, 4])(
  "5,000 spoilt plans, seed %i: each is read or refused with reasons",
  (seed) => {
    const next = seeded(seed);
    const seen = { sound: 0, refused: 0 };
    for (let count = 0; count < 5_000; count++) {
      const plan = plans[Math.floor(next() * plans.length)] ?? smallPlan;
      const text = spoilt(smallPiece(plan, next), plans, next);
      try {
        seen[judgeSpoilt(text)] += 1;
      } catch (error) {
        throw new Error(`seed ${seed}, plan ${count}: ${error}\n${JSON.stringify(text)}`);
      }
    }
    // the spoiling neither always kills a plan nor never
    expect(seen.sound).toBeGreaterThan(100);
    expect(seen.refused).toBeGreaterThan(2_000);
  },
  // a machine that is busy with other things
  300_000,
);

test("2,000 plans with spoilt bytes are read or refused", () => {
  const next = seeded(5);
  const seen = { sound: 0, refused: 0 };
  for (let count = 0; count < 2_000; count++) {
    const plan = plans[Math.floor(next() * plans.length)] ?? smallPlan;
    seen[judgeSpoiltBytes(spoiltBytes(smallPiece(plan, next), next))] += 1;
  }
  expect(seen.sound + seen.refused).toBe(2_000);
});

const head = "skiffloom: 1\nname: x\nrules: us\n";
/** Ten levels of ten aliases each: a thousand million values if they were followed blindly. */
const bomb = Array.from({ length: 10 }, (_, level) =>
  level === 0
    ? "  a0: &a0 {draws: 1 W}"
    : `  a${level}: &a${level} [${Array(10)
        .fill(`*a${level - 1}`)
        .join(", ")}]`,
).join("\n");
const onList = Array.from({ length: 300 }, () => "{what: x}").join(", ");
const hostile: [string, string, string | undefined][] = [
  ["nested lists", "[".repeat(200_000), "too deep"],
  ["nested sections", "{a: ".repeat(100_000), "too deep"],
  ["nested dashes", "- ".repeat(100_000), "too deep"],
  ["nested question marks", "? ".repeat(20_000), "too deep"],
  [
    "nested indents",
    Array.from({ length: 1500 }, (_, depth) => `${" ".repeat(depth)}a:`).join("\n"),
    "too deep",
  ],
  ["an alias bomb", `${head}gear:\n${bomb}\n`, "too many values"],
  [
    "an alias bomb where lists belong",
    `${head}outings:\n  a: {lasts: 1 h, on: &o [${onList}]}\n${Array.from({ length: 1500 }, (_, n) => `  b${n}: {lasts: 1 h, on: *o}`).join("\n")}\n`,
    "unknown gear",
  ],
  [
    "too many aliases",
    `${head}gear:\n  a: &a {draws: 1 W}\n${Array.from({ length: 2_100 }, (_, n) => `  b${n}: *a`).join("\n")}`,
    "too many aliases",
  ],
  [
    "too many values",
    `${head}one at a time: [${"[],".repeat(700_000)}${"[],".repeat(1_400_000)}]`,
    "too many values",
  ],
  ["too many bytes", "#".repeat(limits.maxBytes + 1), "too large"],
  ["a long line", `${head}craft: {kind: ${"a".repeat(2_000_000)}}`, "out of limits"],
  ["a long key", `${head}${"a".repeat(1_000_000)}: 1`, "yaml"],
  ["a long name", `${head}gear: {${"a".repeat(900)}: {draws: 1 W}}`, "bad name"],
  ["a long quoted text", `${head}craft: {kind: "${"\\n".repeat(500_000)}"}`, "out of limits"],
  ["many empty lines", `${head}${"\n".repeat(1_000_000)}`, undefined],
  ["many comments", `${head}${"# x\n".repeat(300_000)}`, undefined],
  ["many documents", "---\n".repeat(20_000), "several documents"],
  ["many same keys", `${head}${"craft: {}\n".repeat(20_000)}`, "duplicate key"],
  [
    "many names twice",
    `${head}gear:\n${Array.from({ length: 5_000 }, (_, n) => `  a${n}: {draws: 1 W}`).join("\n")}\nboxes:\n${Array.from({ length: 5_000 }, (_, n) => `  a${n}: {}`).join("\n")}`,
    "name used twice",
  ],
  [
    "many unknown places",
    `${head}runs:\n${Array.from({ length: 5_000 }, (_, n) => `  a${n}: {from: b${n}, to: c${n}}`).join("\n")}`,
    "unknown place",
  ],
  [
    "a hundred thousand digits",
    `${head}gear: {a: {draws: 1 W, count: ${"9".repeat(100_000)}}}`,
    "number needed",
  ],
  ["a long number with a unit", `${head}gear: {a: {draws: ${"9".repeat(100_000)} W}}`, "quantity"],
  [
    "more gear than may be",
    `${head}gear: {a: {draws: 1 W, count: 99999}, b: {draws: 1 W, count: 99999}}`,
    "too much gear",
  ],
  ["a lone half of a letter", `${head}craft: {kind: "\ud800"}`, undefined],
];
test.each(hostile)("%s", (_what, text, code) => {
  const read = readPlan(text);
  const codes = read.ok ? [] : read.problems.map((problem) => problem.code);
  if (code !== undefined) expect(codes).toContain(code);
  expect(codes.length).toBeLessThanOrEqual(limits.maxProblems + 1);
  if (!read.ok)
    for (const problem of read.problems) expect(readProblemLine(problem).length).toBeLessThan(1500);
});

// a square of the number would take minutes: past the runner's own limit for a test
test("20,000 pieces of gear with a run each are read", () => {
  const count = 20_000;
  const gear = Array.from(
    { length: count },
    (_, n) => `  lamp no. ${n}: {draws: 0.9 W, works: 9 V to 16 V, surroundings: wet}`,
  );
  const runs = Array.from(
    { length: count },
    (_, n) => `  run no. ${n}: {from: helm / a, to: lamp no. ${n}, length: 9 ft 4 in}`,
  );
  const read = readPlan(
    `${head}panels: {helm: {ways: {a: {}}}}\ngear:\n${gear.join("\n")}\nruns:\n${runs.join("\n")}\n`,
  );
  expect(read.ok ? [read.plan.gear.length, read.plan.runs.length] : read.problems).toEqual([count, count]);
});
