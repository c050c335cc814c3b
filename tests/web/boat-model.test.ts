import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { applyEdits } from "../../src/core/plan/edits/apply.js";
import { readPlan } from "../../src/core/plan/read.js";
import { broughtAboard, freeAmidships } from "../../src/web/views/boat/model/arrange.js";
import { movedPlan } from "../../src/web/views/boat/model/moved-plan.js";
import { placeEdits } from "../../src/web/views/boat/model/place-edits.js";
import { sceneOf } from "../../src/web/views/boat/model/scene.js";
import { curlew } from "./boat-plan.js";

const shows = { lengths: "millimetres" } as const;

test.each([
  ["Curlew", curlew],
  ["launch", readFileSync("examples/launch.yaml", "utf8")],
])("%s: a plan with a thing moved is the plan that its edit would give", (_, text) => {
  const read = readPlan(text);
  if (!read.ok) throw new Error("the plan should read");
  const scene = sceneOf(read.plan);
  const free = scene.things.filter(({ at, face }) => at !== undefined && face === undefined);
  expect(free.length).toBeGreaterThan(3);
  for (const { name, at } of free) {
    if (!at) continue;
    const moves = new Map([[name, [at[0] + 0.1234, at[1] - 0.05, at[2]] as const]]);
    const edited = applyEdits(text, placeEdits(scene, moves, shows));
    const moved = movedPlan(scene, moves, shows);
    expect(edited.ok && edited.plan, name).toEqual(moved);
  }
});

test("what stands on a face is left to its edit", () => {
  const read = readPlan(curlew);
  if (!read.ok) throw new Error("the plan should read");
  const scene = sceneOf(read.plan);
  const at = scene.byName.get("coaming lamp 1")?.at;
  if (!at) throw new Error("the lamp should stand");
  expect(movedPlan(scene, new Map([["coaming lamp 1", at]]), shows)).toBeUndefined();
});

test("things placed amidships one after the other do not come to lie on one another", () => {
  let text = curlew.replaceAll(/stands at: \[[^\]]*\], /g, "").replaceAll(/, stands at: \[[^\]]*\]/g, "");
  const scene = () => {
    const read = readPlan(text);
    if (!read.ok) throw new Error("the plan should read");
    return sceneOf(read.plan);
  };
  const groups = scene().things.filter(({ at, count }) => at === undefined && count === 1);
  expect(groups.length).toBeGreaterThan(3);
  const stations: number[] = [];
  for (const { name } of groups) {
    const now = scene();
    const thing = now.byName.get(name);
    if (!thing) throw new Error("the thing should be there");
    const moves = broughtAboard(now, [thing], [freeAmidships(now), 0, 0], false);
    const edited = applyEdits(text, placeEdits(now, moves, shows));
    if (!edited.ok) throw new Error("it should be placed");
    text = edited.text;
    stations.push(moves.get(name)?.[0] ?? Number.NaN);
  }
  const { form } = scene().drawn;
  for (const [i, x] of stations.entries()) {
    expect(x).toBeGreaterThan(form.fromM);
    expect(x).toBeLessThan(form.toM);
    for (const other of stations.slice(0, i)) expect(Math.abs(x - other)).toBeGreaterThan(0.29);
  }
});
