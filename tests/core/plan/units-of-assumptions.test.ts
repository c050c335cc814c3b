import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { grommetName } from "../../../src/core/parts/item-names.js";
import { completePlan } from "../../../src/core/plan/complete.js";
import { readPlan } from "../../../src/core/plan/read.js";

const assumed = (text: string) => {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return completePlan(read.plan).assumptions;
};
/** The examples without the lengths and the tape they tell: more is assumed. */
const example = (name: string) =>
  readFileSync(`examples/${name}.yaml`, "utf8")
    .replaceAll(/^marks:.*$/gm, "")
    .replaceAll(/^ {4}length: .*\n/gm, "");
const assumedOf = (text: string, field: string) => assumed(text).find((one) => one.field === field)?.value;

describe("what is assumed is told in the plan's own units", () => {
  test.each(["tender", "utility"])(
    "%s: nothing in metres or millimetres but the wall of a box, as all of boxes",
    (name) => {
      const list = assumed(example(name)).filter(({ field }) => field !== "wall");
      expect(list.filter(({ value }) => /\d (mm|cm|m)$/.test(value))).toEqual([]);
      expect(list.some(({ value }) => /\d in$/.test(value))).toBe(true);
    },
  );

  test("launch: nothing in inches or feet", () => {
    const list = assumed(example("launch"));
    expect(list.filter(({ value }) => /\d (in|ft)\b/.test(value))).toEqual([]);
    expect(list.some(({ value }) => /\d mm$/.test(value))).toBe(true);
  });

  test("an inch is 25.4 mm exactly (1959): 8 ft 6 in of boat and 1 m, 2 mm of a mark", () => {
    expect(assumedOf(example("tender"), "length")).toBe("11 ft 9 3/8 in"); // 3.5908 m
    expect(assumedOf(example("tender"), "tolerance of a mark")).toBe("5/64 in");
  });
});

test("a grommet goes by the plan's unit, or by the name that stock and prices have for it already", () => {
  expect(grommetName(0.0381, "inches", new Set())).toBe("grommet for a 1 1/2 in hole");
  expect(grommetName(0.04, "millimetres", new Set())).toBe("grommet for a 40 mm hole");
  expect(grommetName(0.0381, "inches", new Set(["grommet for a 38.1 mm hole"]))).toBe(
    "grommet for a 38.1 mm hole",
  );
  expect(
    grommetName(0.0381, "inches", new Set(["grommet for a 38.1 mm hole", "grommet for a 1 1/2 in hole"])),
  ).toBe("grommet for a 1 1/2 in hole");
});
