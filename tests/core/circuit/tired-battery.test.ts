import { expect, test } from "vitest";
import { workOut } from "../../../src/core/figures.js";
import { readPlan } from "../../../src/core/plan/read.js";

/*
 * The battery in the worst corner, by hand: V = E − I·R round the loop. Resting voltage, and how its inside grows with age, charge and heat:
 * docs/methods/energy.md, core/reference/batteries.ts and battery-charging.ts (common practice, no source).
 */
const cornerOf = (name: string, age: string, reserve: string) => {
  const read = readPlan(`
skiffloom: 1
name: tired
rules: us
craft: {kind: skiff, length: 14 ft, hull: wood, petrol on board: false}
ambient: {cold: 0 °C, air: 25 °C, hot: 25 °C}
batteries:
  house: {chemistry: agm, voltage: 12 V, capacity: 50 Ah, age: ${age}, internal resistance: 20 mΩ, reserve: ${reserve}, fixed: strap, main: {device: bolted fuse, rating: 50 A, from source: 4 in}}
gear:
  motor: {role: propulsion, draws: 30 A, behaves as: current, works: 11.5 V to 16 V, joint: crimped ring}
runs:
  cable: {from: house, to: motor, length: 2 m, size: 6 AWG, fuse: {device: bolted fuse, rating: 40 A, from source: 4 in}}
`);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { corners, findings } = workOut(read.plan).figures;
  const corner = corners.find((one) => one.name === name);
  return { postV: corner?.batteries[0]?.terminalV, findings: findings.map(({ rule }) => rule) };
};

test("four years old and half down, it gives way more than new", () => {
  // half: 12.3 V and 1.3 times; four years: 1.32 times
  expect(cornerOf("worst drop", "4 years", "50 %").postV).toBeCloseTo(12.3 - 30 * 0.02 * 1.3 * 1.32, 9);
  // new, and used to three quarters: halfway from 1 to 1.3
  expect(cornerOf("worst drop", "0 years", "75 %").postV).toBeCloseTo(12.6 - 30 * 0.02 * 1.15, 9);
});

test("the usual corner is that of the battery as its maker has it", () => {
  expect(cornerOf("nominal", "4 years", "50 %").postV).toBeCloseTo(12.65 - 30 * 0.02, 9);
});

test("gear that a new battery would serve and a tired one does not is found", () => {
  expect(cornerOf("worst drop", "4 years", "50 %").findings).toContain("under-voltage");
  expect(cornerOf("worst drop", "0 years", "75 %").findings).not.toContain("under-voltage");
});
