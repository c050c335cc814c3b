import { expect, test } from "vitest";
import { workOut } from "../../../src/core/figures.js";
import { readPlan } from "../../../src/core/plan/read.js";

/*
 * A fuse in the lead of a piece of gear, as its maker puts it there, is in the loop: 0.1 V at its rating and 0.02 V in its holder, as of every blade
 * fuse (common practice, no source). Added up by hand: Ohm's law.
 */
const dropV = (fuse: string, draws = "0.5 A") => {
  const read = readPlan(`
skiffloom: 1
name: lead fuse
rules: us
craft: {kind: skiff, length: 14 ft, hull: wood, petrol on board: false}
batteries: {house: {chemistry: agm, voltage: 12 V, capacity: 50 Ah, fixed: strap, main: 30 A}}
panels: {helm: {ways: {sounder: {}}}}
gear: {sounder: {role: electronics, draws: ${draws}, behaves as: current, works: 8 V to 16 V, leads: {size: 18 AWG, length: 1 m, insulation: 80 °C${fuse}}}}
runs:
  feed: {from: house, to: helm, length: 1 m, size: 8 AWG}
  cable: {from: helm / sounder, to: sounder, length: 2 m, size: 16 AWG}
`);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { corners, protection, findings } = workOut(read.plan).figures;
  return { dropV: corners[0]?.gear[0]?.dropV ?? Number.NaN, devices: protection.length, findings };
};

test("a fuse in the lead drops its share, once, and a lead without one does not", () => {
  const [without, one, two] = [dropV(""), dropV(", fuse: 1 A"), dropV(", fuse: 2 A")];
  expect(one.dropV - without.dropV).toBeCloseTo(0.5 * 0.12, 9);
  expect(two.dropV - without.dropV).toBeCloseTo((0.5 * 0.12) / 2, 9);
  // it is its maker's, not one of the plan's to be rated and bought
  expect(one.devices).toBe(without.devices);
});

test("gear that keeps its limit but for that fuse is found", () => {
  const rules = (fuse: string) => dropV(fuse, "1.3 A").findings.map(({ rule }) => rule);
  expect(rules(", fuse: 1 A")).toContain("voltage-drop");
  expect(rules("")).not.toContain("voltage-drop");
});
