import { describe, expect, test } from "vitest";
import { workOut } from "../../../src/core/figures.js";
import { workOutWhole } from "../../../src/core/layout-figures.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { branchDropWorking } from "../../../src/core/working/of-branch.js";
import { runSizeWorking } from "../../../src/core/working/of-run.js";

/*
 * The slack that lets a box be drawn out stays in the circuit. Added up by hand: Ohm's law round the loop, FAA AC 43.13-1B table 11-9
 * for tinned 16 AWG (4.81 Ω/1000 ft at 20 °C), 0.393 %/K (IEC 60028), copper at 40 °C and 10 K. Joints and the fuse: common practice, no source.
 */
const boat = ({ lamp, feed = "", box = "" }: { lamp: string; feed?: string; box?: string }) => `
skiffloom: 1
name: slack
rules: us
craft: {kind: skiff, length: 14 ft, hull: wood, petrol on board: false}
ambient: {cold: 0 °C, air: 20 °C, hot: 40 °C}
batteries:
  house: {chemistry: agm, voltage: 12 V, capacity: 50 Ah, fixed: strap, main: {device: bolted fuse, rating: 30 A, from source: 4 in}}
panels:
  helm: {${box}ways: {lamps: {switch: none, fuse: 5 A}}}
gear:
  lamp: {role: lighting, draws: 2 A, behaves as: current, works: 8 V to 16 V, joint: crimped butt}
runs:
  feed: {from: house, to: helm, length: 1 m, size: 8 AWG${feed}}
  cable: {from: helm / lamps, to: lamp, ${lamp}}
`;
const worked = (text: string) => {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return workOut(read.plan);
};
const worst = (text: string) => {
  const corner = worked(text).figures.corners.find(({ name }) => name === "worst drop");
  if (!corner) throw new Error("no such corner");
  return corner;
};
const cableOhm = (text: string) =>
  worst(text)
    .branches.filter(({ of }) => of === "cable")
    .flatMap(({ parts }) => parts)
    .reduce((sum, part) => sum + (part.kind === "conductor" ? part.ohm : 0), 0);

describe("what is pulled is what the current goes through", () => {
  const perM = (4.81 / 304.8) * (1 + 0.00393 * (40 + 10 - 20));

  test("the way, 15 cm at the panel, 20 cm off the hole of the lamp, and 3 cm at each end to make it again", () => {
    expect(cableOhm(boat({ lamp: "length: 3 m, size: 16 AWG" }))).toBeCloseTo(2 * 3.41 * perM, 9);
  });

  test("a panel that is drawn out takes that much more; the owner's own slack stands as it is", () => {
    expect(cableOhm(boat({ lamp: "length: 3 m, size: 16 AWG", box: "drawn out: 25 cm, " }))).toBeCloseTo(
      2 * 3.66 * perM,
      9,
    );
    expect(
      cableOhm(boat({ lamp: "length: 3 m, size: 16 AWG, slack: {start: 0 cm, end: 5 cm}" })),
    ).toBeCloseTo(2 * 3.05 * perM, 9);
  });

  test("slack by rule and the same length without slack give the same drops", () => {
    const [byRule, asLength] = [
      boat({ lamp: "length: 3 m, size: 16 AWG" }),
      boat({
        lamp: "length: 3.41 m, size: 16 AWG, slack: {start: 0 m, end: 0 m}",
        feed: ", slack: {start: 13 cm, end: 18 cm}",
      }),
    ].map((text) => worst(text).gear[0]?.dropV ?? Number.NaN);
    expect(byRule).toBeCloseTo(asLength ?? 0, 12);
    expect(byRule).toBeGreaterThan(0.1);
  });
});

test("a size that keeps the limit along the way alone and not as it is pulled is not chosen", () => {
  // 3 % of 12 V; along the way alone 18 AWG would do
  const size = (slack: string) =>
    worked(
      boat({ lamp: `length: 2.5 m${slack}` }).replace("works:", "drop: 3 %, works:"),
    ).figures.sizes.choices.find(({ id }) => id === "cable")?.size.key;
  expect(size(", slack: {start: 0 m, end: 0 m}")).toBe("18 AWG");
  expect(size("")).toBe("16 AWG");
});

test("the slack is said in the working, and the length cut is that which was reckoned, rounded up", () => {
  const read = readPlan(boat({ lamp: "length: 3 m" }));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { figures, layout } = workOutWhole(read.plan);
  const corner = figures.corners[0];
  const branch = corner?.branches.find(({ of }) => of === "cable");
  const choice = figures.sizes.choices.find(({ id }) => id === "cable");
  if (!corner || !branch || !choice) throw new Error("not there");
  const slack = { term: "slack", value: expect.closeTo(0.41, 9) as number, unit: "m" };
  expect(branchDropWorking(figures, corner, branch).given).toContainEqual(slack);
  expect(runSizeWorking(figures, choice).given).toContainEqual(slack);
  expect(choice.lengthM).toBeCloseTo(3.41, 9);
  const cut = layout.routes.runs.find(({ run }) => run === "cable")?.cut;
  expect(cut?.cutM).toBeGreaterThanOrEqual(choice.lengthM);
  expect((cut?.cutM ?? 0) - choice.lengthM).toBeLessThan(0.0254);
});
