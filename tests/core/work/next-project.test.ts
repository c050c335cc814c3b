import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOut } from "../../../src/core/figures.js";
import { workOutWhole } from "../../../src/core/layout-figures.js";
import { applyEdit, applyEdits } from "../../../src/core/plan/edits/apply.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { planWork } from "../../../src/core/work/plan-work.js";
import { spareOf } from "../../../src/core/work/spare.js";
import { takeBuiltEdits } from "../../../src/core/work/take-built.js";

const tender = readFileSync("examples/tender.yaml", "utf8");
const second = readFileSync("examples/second-season.yaml", "utf8");
function planOf(text: string) {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.plan;
}

describe("the second season", () => {
  const { figures, layout, hull } = workOutWhole(planOf(second));
  const work = planWork(figures, { layout, hull }, 29_587_680);
  const left = work.order.steps.map(({ step }) => step);
  test("is little work, and takes the spare entry: nothing of the panel is drilled again", () => {
    expect(left.length).toBeLessThan(30);
    expect(left.filter((step) => step.startsWith("draw /"))).toEqual(["draw / boarding cable"]);
    expect(left.filter((step) => step.includes("box /"))).toEqual([]);
    expect(left).toContain("battery off / house");
    expect(left).toContain("open / helm");
    expect(left).toContain("close / helm");
    expect(left).not.toContain("close / fore box");
  });
  test("only what is new is proven", () => {
    expect(work.step.get("prove polarity")?.pieces).toEqual(["boarding lamp"]);
    expect(left.filter((step) => /^prove \/ /.test(step))).toEqual(["prove / helm / boarding"]);
  });
  test("the one cable that lies otherwise is said, and nothing else", () => {
    expect(work.asBuilt.differences.map(({ kind }) => kind)).toEqual(["length"]);
    expect(work.asBuilt.problems).toEqual([]);
  });
});

test("what is spare for the next project: the way left free, the entry no cable has taken, the lines of the stock", () => {
  const { figures, layout } = workOutWhole(planOf(second));
  const spare = spareOf(figures.plan);
  // the new cable has taken the one of the panel; a second way to the same count: holes that the layout gives to no cable
  const { boxes, panels } = figures.plan;
  const free = [...panels, ...boxes].flatMap(({ name, holes = [] }) => {
    const taken = layout.boxes.find(({ box }) => box === name)?.layout?.entries.length ?? 0;
    return holes.length > taken ? [{ at: name, count: holes.length - taken }] : [];
  });
  expect(spare.entries).toEqual(free);
  expect(spare.entries).toEqual([{ at: "fore box", count: 1 }]);
  expect(spare.ways).toEqual([]);
  const { figures: before } = workOutWhole(
    planOf(second.replace("from: helm / boarding", "from: helm / lamps")),
  );
  expect(spareOf(before.plan).ways).toEqual(["helm / boarding"]);
  expect(spare.stockLines).toBeGreaterThan(3);
});

test("what is in the boat is not bought again: one lamp, its cable, its ends", () => {
  const { layout } = workOutWhole(planOf(second));
  expect(layout.cuts.kinds.flatMap(({ pieces }) => pieces.map(({ run }) => run))).toEqual(["boarding cable"]);
  const needed = new Map(layout.parts.list.lines.map(({ item, needed: count }) => [item, count]));
  expect(needed.get("ring, red, M4")).toBe(2);
  expect(needed.get("sealed butt, red")).toBe(2);
  expect(needed.get("M16 gland")).toBe(1);
  expect(needed.get("boarding lamp")).toBe(1);
  expect(needed.get("wire flag")).toBe(2);
  for (const item of ["coaming lamp", "house", "helm", "large box", "blade fuse 15 A", "bolted fuse 40 A"])
    expect(needed.get(item), item).toBeUndefined();
  // without the finished project everything is still to be had
  const whole = workOutWhole(planOf(second.slice(0, second.indexOf("\nprojects:"))));
  expect(whole.layout.parts.list.lines.find(({ item }) => item === "coaming lamp")?.needed).toBe(6);
});

test("what was built goes into the plan, where the plan leaves it open", () => {
  const built = `${tender}
as built:
  lengths:
    - {run: battery lead, length: 2 ft 6 in, size: 14 AWG, measured: true}
    - {run: socket cable, length: 1 ft 6 in, size: 16 AWG}
    - {run: floor lamp cable 1, length: 3 ft 2 in, size: 18 AWG}
  ratings: [{device: thwart panel / floor / fuse, rating: 2 A}]
`;
  const { figures } = workOut(planOf(built));
  const made = applyEdits(built, takeBuiltEdits(figures));
  if (!made.ok) throw new Error(JSON.stringify(made.problem));
  const run = (name: string) => made.plan.runs.find((one) => one.name === name);
  expect(run("battery lead")?.size?.key).toBe("14 AWG");
  expect(run("battery lead")?.lengthsM[0]).toBeCloseTo(0.762, 9);
  expect(run("socket cable")?.size?.key).toBe("16 AWG");
  // only one of the two lamp cables is on record
  expect(run("floor lamp cable")?.size).toBeUndefined();
  const again = workOut(made.plan).figures;
  expect(again.protection.find(({ id }) => id === "thwart panel / floor / fuse")?.ratingA).toBe(2);
  expect(planWork(again).asBuilt.differences).toEqual([]);
});

test("a thing that gets another name keeps its records", () => {
  const text = `${tender}
work done:
  - {step: draw / socket cable}
  - {step: drill / phone socket, for: [phone socket]}
  - {step: drill / floor lamp, for: [floor lamp 1, floor lamp 2]}
readings: [{at: thwart panel +, against: phone socket -, on: [phone socket], shows: 12 V}]
as built: {ratings: [{device: thwart panel / socket / fuse, rating: 3 A}]}
`;
  const rename = (from: string, at: string, to: string) => {
    const made = applyEdit(from, { edit: "rename", at, to });
    if (!made.ok) throw new Error(JSON.stringify(made.problem));
    return made.text;
  };
  const after = rename(
    rename(
      rename(rename(text, "socket cable", "usb lead"), "phone socket", "usb socket"),
      "floor lamp",
      "sole lamp",
    ),
    "thwart panel",
    "seat panel",
  );
  const { workDone, readings, asBuilt } = planOf(after).work;
  expect(workDone.map(({ step }) => step)).toEqual([
    "draw / usb lead",
    "drill / usb socket",
    "drill / sole lamp",
  ]);
  expect(workDone[2]?.covers).toEqual(["sole lamp 1", "sole lamp 2"]);
  expect(readings[0]).toMatchObject({ at: "seat panel +", against: "usb socket -", withOn: ["usb socket"] });
  expect(asBuilt.ratings[0]?.device).toBe("seat panel / socket / fuse");
});
