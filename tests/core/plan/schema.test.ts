import Ajv from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { readPlan } from "../../../src/core/plan/read.js";
import { planJsonSchema } from "../../../src/core/plan/schema/publish.js";
import { exampleOf } from "../../../src/core/quantity/kinds.js";
import { units } from "../../../src/core/quantity/units.js";
import { planKeyTables } from "../../../src/words/plan-keys.js";
import { docExample, examplePlans, projectFile, smallPlan } from "./doc-example.js";

const schema = planJsonSchema();
const validate = new Ajv.Ajv2020({ allErrors: true, allowUnionTypes: true, strict: true }).compile(schema);

test("the published schema and the key tables are in step; otherwise run node scripts/schema.js", () => {
  expect(projectFile("schema", "skiffloom-plan.schema.json")).toBe(`${JSON.stringify(schema, null, 2)}\n`);
  expect(projectFile("docs", "plan-format.md")).toContain(planKeyTables());
});

const sound = [
  { name: "the docs' own", text: docExample() },
  { name: "small", text: smallPlan },
  ...examplePlans(),
];
test.each(sound)("$name is sound for the reader and the schema alike", ({ text }) => {
  const read = readPlan(text);
  expect(read.ok ? [] : read.problems).toEqual([]);
  expect(validate(parse(text)) ? [] : validate.errors).toEqual([]);
});

const with_ = (line: string) => `skiffloom: 1\nname: x\nrules: us\n${line}\n`;
test.each([
  ["craft: {length: 5}", "a number without unit"],
  ["craft: {length: 12 V}", "a voltage for a length"],
  ["craft: {lenght: 5 m}", "an unknown key"],
  ["craft: [5 m]", "a list for a section"],
  ["craft: {hull: cheese}", "an unknown word"],
  ["craft: {petrol on board: maybe}", "a word for a flag"],
  ["batteries: {house: {capacity: 50 Ah}}", "a missing key"],
  ["batteries: {house: {chemistry: agm, capacity: 50 Ah, peukert: 3}}", "an exponent out of limits"],
  ["batteries: {a / b: {chemistry: agm, capacity: 50 Ah}}", "a name with a slash"],
  ["gear: {lamp: {draws: 3 mm}}", "a length for a draw"],
  ["gear: {lamp: {draws: 0.9 W, count: 0}}", "a count of nought"],
  ["gear: {lamp: {draws: 0.9 W, works: 9 V}}", "half a range"],
  ["gear: {lamp: {draws: 0.9 W, leads: {size: 22, length: 1 m}}}", "a gauge without its name"],
  ["outings: {o: {lasts: 3 h, start: 25:00}}", "an hour that is none"],
  ["rules: uk", "unknown rules"],
])("%s (%s) is refused by the reader and the schema alike", (line) => {
  const text = line.startsWith("rules") ? `skiffloom: 1\nname: x\n${line}\n` : with_(line);
  expect(readPlan(text).ok).toBe(false);
  expect(validate(parse(text))).toBe(false);
});

describe("patterns let through what the reader takes", () => {
  const places: readonly (readonly [string, (text: string) => string])[] = [
    ["length", (text) => `craft: {length: ${JSON.stringify(text)}}`],
    ["temperature", (text) => `ambient: {cold: ${JSON.stringify(text)}}`],
    ["mass", (text) => `batteries: {b: {chemistry: agm, capacity: 5 Ah, weight: ${JSON.stringify(text)}}}`],
    [
      "current",
      (text) => `batteries: {b: {chemistry: agm, capacity: 5 Ah, most current: ${JSON.stringify(text)}}}`,
    ],
    [
      "resistance",
      (text) =>
        `batteries: {b: {chemistry: agm, capacity: 5 Ah, internal resistance: ${JSON.stringify(text)}}}`,
    ],
    [
      "voltage",
      (text) => `batteries: {b: {chemistry: agm, capacity: 5 Ah, voltage: ${JSON.stringify(text)}}}`,
    ],
    ["share", (text) => `batteries: {b: {chemistry: agm, capacity: 5 Ah, reserve: ${JSON.stringify(text)}}}`],
    [
      "time",
      (text) => `batteries: {b: {chemistry: agm, capacity: 5 Ah, rated over: ${JSON.stringify(text)}}}`,
    ],
  ];
  test.each(places)("%s in every unit", (dimension, line) => {
    const signs = units
      .filter((unit) => unit.dimension === dimension)
      .flatMap((unit) => [unit.sign, ...unit.also]);
    for (const sign of signs)
      for (const text of [`2 ${sign}`, `2.5${sign}`, `1/2 ${sign}`]) {
        const plan = with_(line(text));
        // the value may be out of limits (2 kΩ inside a battery), but it is read
        const read = readPlan(plan);
        expect(
          read.ok ? [] : read.problems.filter((problem) => problem.code !== "out of limits"),
          text,
        ).toEqual([]);
        expect(validate(parse(plan)), text).toBe(true);
      }
  });

  test.each(["2 ft 7 1/2 in", "2' 7-1/2\"", "2′ 7½″"])("length %s", (text) => {
    expect(validate(parse(with_(`craft: {length: ${JSON.stringify(text)}}`)))).toBe(true);
  });
  test.each(["2.8 A at 12 V", "0.9 W", "4 Ω", "4 ohm", exampleOf("draw")])("draw %s", (text) => {
    expect(validate(parse(with_(`gear: {lamp: {draws: ${text}}}`)))).toBe(true);
  });
  test("work out stands wherever a value may be left out", () => {
    const text = with_("craft: {length: work out}");
    expect(readPlan(text)).toMatchObject({ ok: true, plan: { craft: {} } });
    expect(validate(parse(text))).toBe(true);
    expect(readPlan(with_("gear: {lamp: {draws: work out}}")).ok).toBe(false);
  });
});
