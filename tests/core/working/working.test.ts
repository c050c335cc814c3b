import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { workOut } from "../../../src/core/figures.js";
import type { Figures } from "../../../src/core/figures-types.js";
import { readPlan } from "../../../src/core/plan/read.js";
import type { FigureRef } from "../../../src/core/working/figure-ref.js";
import type { Working } from "../../../src/core/working/working.js";
import { workingOf } from "../../../src/core/working/working-of.js";

const plans = ["tender", "utility", "launch"] as const;
const figuresOf = new Map<string, Figures>();
function figures(name: string): Figures {
  const known = figuresOf.get(name);
  if (known) return known;
  const read = readPlan(readFileSync(`examples/${name}.yaml`, "utf8"));
  if (!read.ok) throw new RangeError(`${name} must be a sound plan`);
  const made = workOut(read.plan).figures;
  figuresOf.set(name, made);
  return made;
}

function needed(given: Figures, ref: FigureRef): Working {
  const working = workingOf(given, ref);
  if (!working) throw new RangeError(`a working required for ${JSON.stringify(ref)}`);
  return working;
}

const number = (value: number | string | undefined) => (typeof value === "number" ? value : Number.NaN);
const given = (working: Working, term: string) =>
  number(working.given.find((each) => each.term === term)?.value);

function* everyRef({ corners, sizes, protection, outings, charging }: Figures): Generator<FigureRef> {
  for (const { name: corner, gear, branches, batteries } of corners) {
    for (const { id } of gear)
      for (const of of ["gear drop", "gear voltage", "gear current"] as const) yield { of, gear: id, corner };
    for (const { id } of branches)
      for (const of of ["branch drop", "branch current"] as const) yield { of, branch: id, corner };
    for (const { id } of batteries)
      for (const of of ["battery voltage", "battery current"] as const) yield { of, battery: id, corner };
  }
  for (const { id } of sizes.choices) {
    yield { of: "run size", choice: id };
    yield { of: "run ampacity", choice: id };
  }
  for (const { id, conditions } of protection) {
    yield { of: "rating", device: id };
    for (const { condition } of conditions) yield { of: "condition", device: id, condition };
  }
  for (const { name: outing, batteries } of outings) {
    for (const { battery } of batteries)
      for (const of of ["charge left", "charge used", "usable capacity"] as const)
        yield { of, outing, battery };
  }
  for (const { charger } of charging) yield { of: "charging time", charger };
  yield { of: "sizes total" };
}

test.each(plans)("%s: every figure has a working, and what it leans on has one too", (name) => {
  const all = figures(name);
  let count = 0;
  for (const ref of everyRef(all)) {
    const working = needed(all, ref);
    for (const { figure } of [...working.given, ...(working.table?.rows ?? [])])
      if (figure) needed(all, figure);
    for (const row of working.table?.rows ?? [])
      expect(row.cells).toHaveLength(working.table?.columns.length ?? 0);
    count += 1;
  }
  expect(count).toBeGreaterThan(60);
});

test.each(plans)("%s: the drops along the way add up to the drop of the gear", (name) => {
  const all = figures(name);
  for (const corner of all.corners) {
    for (const gear of corner.gear.filter(({ on, inTurn }) => on && !inTurn)) {
      const working = needed(all, { of: "gear drop", gear: gear.id, corner: corner.name });
      const sum = (working.table?.rows ?? []).reduce((total, { cells }) => total + number(cells[2]), 0);
      // both come from one solution; only rounding in the sums is left
      expect(Math.abs(sum - gear.dropV)).toBeLessThan(1e-6);
      expect(number(working.value) / 100).toBeCloseTo(gear.dropV / given(working, "nominal voltage"), 9);
    }
  }
});

test.each(plans)("%s: current times the parts' resistance is the drop of a branch", (name) => {
  const all = figures(name);
  const [corner] = all.corners;
  if (!corner) throw new RangeError("a corner required");
  for (const { id, dropV } of corner.branches) {
    const working = needed(all, { of: "branch drop", branch: id, corner: corner.name });
    const milliohm = (working.table?.rows ?? []).reduce((sum, { cells }) => sum + number(cells[3]), 0);
    expect((given(working, "current") * milliohm) / 1000).toBeCloseTo(Math.abs(dropV), 9);
  }
});

test.each(plans)("%s: table value times factors is the allowed current", (name) => {
  const all = figures(name);
  for (const { id, ampacityA } of all.sizes.choices) {
    const working = needed(all, { of: "run ampacity", choice: id });
    const factors = working.given.filter(({ term }) => term === "factor").map(({ value }) => number(value));
    const product = factors.reduce((soFar, factor) => soFar * factor, given(working, "table value"));
    expect(product).toBeCloseTo(ampacityA, 9);
    expect(working.sources.length).toBeGreaterThan(0);
  }
});

test("the battery's voltage is its resting voltage less what its resistance takes", () => {
  const all = figures("utility");
  for (const { name: corner, batteries } of all.corners) {
    for (const { id, terminalV } of batteries) {
      const working = needed(all, { of: "battery voltage", battery: id, corner });
      const innerV = (given(working, "current") * given(working, "internal resistance")) / 1000;
      expect(given(working, "resting voltage") - innerV).toBeCloseTo(terminalV, 9);
    }
  }
});

test("a figure that is not there has no working", () => {
  const all = figures("tender");
  expect(workingOf(all, { of: "gear drop", gear: "no such gear", corner: "worst drop" })).toBeUndefined();
  expect(workingOf(all, { of: "rating", device: "no such fuse" })).toBeUndefined();
});
