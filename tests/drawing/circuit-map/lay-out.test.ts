// A small change of the plan moves little on the map: nothing across, and only what follows, by the height of what came in.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { completePlan } from "../../../src/core/plan/complete.js";
import { applyEdits } from "../../../src/core/plan/edits/apply.js";
import type { Edit } from "../../../src/core/plan/edits/edit.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { layOutCircuits, type MapShape, mapMm } from "../../../src/drawing/circuit-map/lay-out.js";
import { plantTrees } from "../../../src/drawing/one-line/tree.js";

const textOf = (name: string) => readFileSync(`examples/${name}.yaml`, "utf8");

function mapOf(text: string, shape: MapShape, roomMm = 86) {
  const read = readPlan(text);
  if (!read.ok) throw new RangeError(JSON.stringify(read.problems));
  return layOutCircuits(plantTrees(completePlan(read.plan)), shape, roomMm);
}

function edited(text: string, edits: readonly Edit[]): string {
  const result = applyEdits(text, edits);
  if (!result.ok) throw new RangeError(JSON.stringify(result.problem));
  return result.text;
}

/** How far each thing that is in both maps has moved. */
function moves(before: ReturnType<typeof mapOf>, after: ReturnType<typeof mapOf>) {
  const was = new Map(before.spots.map((spot) => [spot.id, spot]));
  return after.spots.flatMap((spot) => {
    const old = was.get(spot.id);
    return old ? [{ id: spot.id, across: spot.x - old.x, down: spot.down - old.down }] : [];
  });
}

const examples = ["tender", "utility", "launch"] as const;
const shapes = ["wide", "narrow"] as const;
const cases = examples.flatMap((name) => shapes.map((shape) => [name, shape] as const));

describe.each(cases)("%s, %s", (name, shape) => {
  const text = textOf(name);
  const map = mapOf(text, shape);

  test("no two things lie on each other, and all lie on the map", () => {
    for (const [index, one] of map.spots.entries()) {
      expect(one.x).toBeGreaterThan(0);
      expect(one.x + one.widthMm).toBeLessThan(map.widthMm);
      for (const other of map.spots.slice(index + 1)) {
        const sameLine = Math.abs(one.down - other.down) < mapMm.spare - 0.01;
        const apart = one.x + one.widthMm <= other.x || other.x + other.widthMm <= one.x;
        expect(sameLine && !apart, `${one.id} on ${other.id}`).toBe(false);
      }
    }
  });

  test("every id is there once", () => {
    expect(new Set(map.spots.map(({ id }) => id)).size).toBe(map.spots.length);
  });

  test("one more lamp on any way: nothing moves across, what is above stays, what is below goes down one line", () => {
    const read = readPlan(text);
    if (!read.ok) throw new RangeError(name);
    for (const panel of read.plan.panels)
      for (const way of panel.ways) {
        const after = mapOf(
          edited(text, [
            { edit: "add", kind: "gear", name: "one more lamp", as: "{draws: 1 W}" },
            {
              edit: "add",
              kind: "run",
              name: "one more cable",
              as: `{from: ${panel.name} / ${way.name}, to: one more lamp, length: 1 m}`,
            },
          ]),
          shape,
        );
        expect(after.spots).toHaveLength(map.spots.length + 1);
        const moved = moves(map, after);
        expect(moved).toHaveLength(map.spots.length);
        expect(new Set(moved.map(({ across }) => across))).toEqual(new Set([0]));
        const steps = moved.map(({ down }) => Math.round(down * 100) / 100);
        // In the order of the map: a number of things that stay, then only things that go down by the same.
        expect(steps).toEqual(steps.toSorted((a, b) => a - b));
        expect(Math.max(...steps)).toBeLessThanOrEqual(mapMm.row);
      }
  });

  test("other names, sizes, fuses and draws move nothing", () => {
    const read = readPlan(text);
    if (!read.ok) throw new RangeError(name);
    const [gear] = read.plan.gear;
    const [run] = read.plan.runs;
    if (!gear || !run) throw new RangeError(name);
    const after = mapOf(
      edited(text, [
        { edit: "set field", at: gear.name, field: "draws", to: "2 W" },
        { edit: "set run size", at: run.name, to: "4 mm2" },
        { edit: "rename", at: gear.name, to: "a name that is very much longer than it was before" },
      ]),
      shape,
    );
    expect(after.spots.map(({ x, down }) => [x, down])).toEqual(map.spots.map(({ x, down }) => [x, down]));
  });
});

test("a narrow map keeps within the room it is given", () => {
  for (const name of examples) expect(mapOf(textOf(name), "narrow", 86).widthMm).toBeLessThanOrEqual(86.01);
});

test("a room that is no number is refused", () => {
  expect(() => layOutCircuits([], "wide", Number.NaN)).toThrow(RangeError);
});
