import { describe, expect, test } from "vitest";
import { completePlan } from "../../../src/core/plan/complete.js";
import { applyEdits } from "../../../src/core/plan/edits/apply.js";
import { readPlan } from "../../../src/core/plan/read.js";

const text = `skiffloom: 1
name: Bar-tailed   # invented
rules: us
craft:
  length: 15 ft
  beam: 5 ft
  hull: aluminium
  form:
    stations: [0 in, 40 in, 80 in, 120 in]
    lines:
      keel: {heights: [0 in, 0 in, 0 in, 2 in]}
      chine: {half-breadths: [25 in, 26 in, 25 in, none], heights: [4 in, 4 in, 5 in, none]}
      sheer: {half-breadths: [28 in, 30 in, 29 in, 20 in], heights: [24 in, 24 in, 25 in, 28 in]}
    checks: [{breadth: 60 in, line: sheer, at: 40 in}]
batteries:
  house: {chemistry: agm, capacity: 50 Ah, main: none, stands at: [10 in, -4 in, 6 in]}
references:
  rowlock: {on: sheer, along: 60 in, pair: true}
  stem: {at: [120 in, 0 in, 30 in], straight to: [side]}
faces:
  side: {strip: [chine, sheer], from: 10 in, to: 110 in, pair: true, zones: {frame: {kind: frame, from: 50 in, to: 52 in}}}
gear:
  lamp:
    count: 6
    draws: 0.9 W
    on: side
    row: {from: 30 in, to: 90 in, end margin: 2 in, below: sheer, off: 3 in}
    pair: true
    hole: {size: 16 mm, flange: 25 mm}
checked:
  lamp 2: {rowlock: 12 1/16 in, lamp 1: 28 in}
float:
  hull: {weight: 90 kg, at: [70 in, 0 in, 10 in]}
`;

const problemsOf = (changed: string) => {
  const read = readPlan(changed);
  return read.ok ? [] : read.problems.map(({ code, path }) => `${code}: ${path.join(" / ")}`);
};

describe("rows and pairs", () => {
  test("six in a row, a pair: numbers run along one side and come back along the other", () => {
    const read = readPlan(text);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const { gear } = completePlan(read.plan);
    expect(gear.map(({ name, placed }) => [name, placed?.side, placed?.twin])).toEqual([
      ["lamp 1", "port", "lamp 6"],
      ["lamp 2", "port", "lamp 5"],
      ["lamp 3", "port", "lamp 4"],
      ["lamp 4", "starboard", "lamp 3"],
      ["lamp 5", "starboard", "lamp 2"],
      ["lamp 6", "starboard", "lamp 1"],
    ]);
    const where = gear[3]?.placed?.where;
    expect(where?.kind === "row" && where.index).toBe(2);
  });
  test.each([
    ["count: 6", "count: 5", "odd pair: gear / lamp / pair"],
    ["on: side\n", "on: sides\n", "unknown face: gear / lamp / on"],
    ["below: sheer", "below: chine", "unknown line: gear / lamp / row / below"],
    ["strip: [chine, sheer]", "strip: [sheer, chine]", "unknown line: faces / side / strip / 0"],
    ["on: sheer, along", "on: shear, along", "unknown line: references / rowlock / on"],
    ["to: 110 in, pair: true", "to: 110 in", "one side only: gear / lamp / pair"],
    ["straight to: [side]", "straight to: [deck]", "unknown face: references / stem / straight to"],
    ["lamp 2: {", "lamp 7: {", "unknown gear: checked / lamp 7"],
    ["{rowlock: 12 1/16 in", "{row lock: 12 1/16 in", "unknown reference: checked / lamp 2 / row lock"],
    [
      "[28 in, 30 in, 29 in, 20 in]",
      "[28 in, 30 in]",
      "wrong count: craft / form / lines / sheer / half-breadths",
    ],
    ["stations: [0 in, 40 in, 80 in, 120 in]", "start from: canoe", "missing key: craft / form"],
    [
      "row: {from: 30 in",
      "at: {along: 2 in, off: 3 in}\n    row: {from: 30 in",
      "both keys: gear / lamp / row",
    ],
  ])("%s → %s is refused: %s", (was, is, problem) => {
    expect(problemsOf(text)).toEqual([]);
    expect(problemsOf(text.replace(was, is))).toContain(problem);
  });
});

describe("edits reach the new sections", () => {
  const edited = (...edits: Parameters<typeof applyEdits>[1]) => {
    const result = applyEdits(text, edits);
    if (!result.ok) throw new Error(JSON.stringify(result.problem));
    return result;
  };
  test("a reading, a place, a zone and a weight", () => {
    const { plan, text: after } = edited(
      { edit: "set field", at: "checked", field: "lamp 3 / rowlock", to: "20 1/4 in" },
      { edit: "set field", at: "lamp", field: "row / off", to: "4 in" },
      { edit: "set field", at: "side", field: "zones / seam", to: "{kind: seam, from: 70 in, to: 71 in}" },
      {
        edit: "set field",
        at: "float",
        field: "people / helm",
        to: "{weight: 80 kg, at: [30 in, 0 in, 20 in]}",
      },
      { edit: "set field", at: "house", field: "stands at", to: "[12 in, 0 in, 6 in]" },
      { edit: "set field", at: "marks", field: "graduation", to: "1/8 in" },
    );
    expect(after).toContain("# invented");
    expect(plan.hull.checked.at(-1)).toEqual({ mark: "lamp 3", from: "rowlock", readM: 20.25 * 0.0254 });
    expect(plan.gear[0]?.placing?.row?.offM).toBeCloseTo(0.1016, 12);
    expect(plan.hull.faces[0]?.zones.map(({ name }) => name)).toEqual(["frame", "seam"]);
    expect(plan.hull.float?.people[0]?.massKg).toBe(80);
    expect(plan.batteries[0]?.standsAtM?.[0]).toBeCloseTo(0.3048, 12);
    expect(plan.hull.marks.graduationM).toBeCloseTo(0.003175, 12);
  });
  test("a new reference point and a new face; a face may be called as a panel is", () => {
    const { plan } = edited(
      { edit: "add", kind: "reference", name: "thwart", as: "{on: sheer, station: 40 in}" },
      {
        edit: "add",
        kind: "face",
        name: "house",
        as: "{flat: [[0 in, 0 in], [9 in, 0 in], [9 in, 9 in]], at: [1 in, 0 in, 0 in], looks: aft}",
      },
      { edit: "set field", at: "faces / house", field: "thickness", to: "2 mm" },
    );
    expect(plan.hull.references.map(({ name }) => name)).toContain("thwart");
    expect(plan.hull.faces[1]).toMatchObject({ name: "house", thicknessM: 0.002 });
  });
  test("a new name goes wherever the plan speaks of the thing", () => {
    const { plan } = edited(
      { edit: "rename", at: "side", to: "coaming" },
      { edit: "rename", at: "rowlock", to: "oar pin" },
      { edit: "rename", at: "lamp", to: "light" },
    );
    expect(plan.gear[0]?.placing?.on).toBe("coaming");
    expect(plan.hull.references[1]?.straightTo).toEqual(["coaming"]);
    expect(plan.hull.checked).toEqual([
      { mark: "light 2", from: "oar pin", readM: 12.0625 * 0.0254 },
      { mark: "light 2", from: "light 1", readM: 0.7112 },
    ]);
  });
});
