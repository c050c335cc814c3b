import { expect, test } from "vitest";
import { priceBasis } from "../../../src/core/circuit/sizing/prices.js";
import { workOut } from "../../../src/core/figures.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { ruleSet } from "../../../src/core/reference/rule-sets.js";
import { relativePrice } from "../../../src/core/reference/wire-make.js";
import { sizesTotalWorking } from "../../../src/core/working/of-run.js";

const worked = (wire: string, aim = "cheapest", size = "") => {
  const read = readPlan(`
skiffloom: 1
name: priced
rules: us
craft: {kind: skiff, length: 14 ft, hull: wood, petrol on board: false}
conductors: {aim: ${aim}, sizes: [16 AWG, 14 AWG]}
batteries: {house: {chemistry: agm, voltage: 12 V, capacity: 50 Ah, fixed: strap, main: 30 A}}
panels: {helm: {ways: {lamps: {}}}}
gear: {lamp: {draws: 5 W}}
runs:
  feed: {from: house, to: helm, length: 1 m, size: 8 AWG}
  cable: {from: helm / lamps, to: lamp, length: 3 m${size}}
prices: {currency: USD, wire: [${wire}]}
`);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { figures } = workOut(read.plan);
  return { basis: priceBasis(figures.plan, ruleSet("us"), figures.sizes), figures };
};
const both = "{size: 16 AWG, cores: 2, per metre: 2.00}, {size: 14 AWG, cores: 2, per metre: 3.00}";

test("what is cheapest rests on the plan's prices only where every size weighed has one in so many cores", () => {
  expect(worked(both).basis).toBe("prices");
  expect(worked("{size: 16 AWG, cores: 2, per metre: 2.00}").basis).toBe("both");
  expect(worked(both.replace("16 AWG, cores: 2", "16 AWG, cores: 1")).basis).toBe("both");
  expect(worked("").basis).toBe("model");
});

test("nothing rests on prices where no size was weighed by them", () => {
  expect(worked("", "lightest").basis).toBeUndefined();
  expect(worked("", "cheapest", ", size: 16 AWG").basis).toBeUndefined();
});

test("the working of the total names the model where it was used, and not where it was not", () => {
  const sources = (wire: string) => sizesTotalWorking(worked(wire).figures).sources;
  expect(sources("{size: 16 AWG, cores: 2, per metre: 2.00}")).toContain(relativePrice.source);
  expect(sources(both)).toEqual([]);
});
