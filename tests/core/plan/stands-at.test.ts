import { expect, test } from "vitest";
import { completePlan } from "../../../src/core/plan/complete.js";
import { applyEdit } from "../../../src/core/plan/edits/apply.js";
import { readPlan } from "../../../src/core/plan/read.js";

const text = `skiffloom: 1
name: Knot   # invented
rules: iso
batteries:
  house: {chemistry: agm, capacity: 50 Ah, main: none, stands at: [0.4 m, 0 m, 0.1 m]}
boxes:
  fore box: {stands at: [3.4 m, 0 m, 0.5 m]}
gear:
  lamp: {count: 2, draws: 1 W, stands at: [[1 m, 0.5 m, 0.6 m], [1 m, -0.5 m, 0.6 m]]}
  pump: {count: 2, draws: 2 A at 12 V, stands at: [0.2 m, 0 m, 0 m]}
runs:
  trunk: {from: house, to: fore box, along: []}
  leads: {from: fore box, to: lamp, reaches: each}
legs:
  side: {from: house, to: fore box}
`;

const planOf = (written: string) => {
  const read = readPlan(written);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return completePlan(read.plan);
};

test("each piece stands where its own place says, or all where the only one does", () => {
  const { gear } = planOf(text);
  expect(gear.map(({ name, standsAtM }) => [name, standsAtM])).toEqual([
    ["lamp 1", [1, 0.5, 0.6]],
    ["lamp 2", [1, -0.5, 0.6]],
    ["pump 1", [0.2, 0, 0]],
    ["pump 2", [0.2, 0, 0]],
  ]);
});

test("a leg without a length is straight between the places at its ends, so that a moved box changes the cable", () => {
  expect(planOf(text).runs.find(({ name }) => name === "trunk")?.lengthM).toBeCloseTo(Math.hypot(3, 0.4), 9);
  const moved = applyEdit(text, {
    edit: "set field",
    at: "fore box",
    field: "stands at",
    to: "[2.4 m, 0 m, 0.1 m]",
  });
  if (!moved.ok) throw new Error(JSON.stringify(moved.problem));
  expect(planOf(moved.text).runs.find(({ name }) => name === "trunk")?.lengthM).toBeCloseTo(2, 9);
});

test("one piece of several is moved by its own item of the list", () => {
  const moved = applyEdit(text, {
    edit: "set field",
    at: "lamp",
    field: "stands at / 2",
    to: "[1.2 m, -0.5 m, 0.6 m]",
  });
  if (!moved.ok) throw new Error(JSON.stringify(moved.problem));
  expect(moved.plan.gear[0]?.standsAtM).toEqual([
    [1, 0.5, 0.6],
    [1.2, -0.5, 0.6],
  ]);
});

test("a list that is neither one nor one for each is refused", () => {
  const read = readPlan(text.replace("count: 2, draws: 1 W", "count: 3, draws: 1 W"));
  expect(read.ok ? [] : read.problems.map(({ code, path }) => `${code}: ${path.join(" / ")}`)).toEqual([
    "wrong count: gear / lamp / stands at",
  ]);
});
