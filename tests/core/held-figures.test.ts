import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOut } from "../../src/core/figures.js";
import { electricRules } from "../../src/core/findings/electric-rules.js";
import { factsOf } from "../../src/core/findings/facts.js";
import type { Finding } from "../../src/core/findings/finding.js";
import { heldOf, rememberingWorkOutHeld, workOutHeld } from "../../src/core/held-figures.js";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { completePlan } from "../../src/core/plan/complete.js";
import { applyEdits } from "../../src/core/plan/edits/apply.js";
import { readPlan } from "../../src/core/plan/read.js";
import { ruleSet } from "../../src/core/reference/rule-sets.js";
import { checkRecord } from "../../src/core/work/record-check.js";
import { launchWithFreeLegs } from "../free-legs.js";

function planOf(text: string) {
  const read = readPlan(text);
  if (!read.ok) throw new Error(`does not read: ${JSON.stringify(read.problems[0])}`);
  return read.plan;
}

// an invented boat whose one run lies along a leg between two places
const boat = (place: string) => `skiffloom: 1
name: Boat of the test
rules: iso
batteries:
  house: {chemistry: agm, capacity: 50 Ah, stands at: [300 mm, 0 mm, 200 mm], main: {device: bolted fuse, rating: 40 A, interrupts: 2000 A, from source: 120 mm}}
panels:
  helm: {ways: {lamps: {switch: {rating: 10 A}}}}
gear:
  lamp: {role: lighting, draws: 20 W, stands at: ${place}}
runs:
  feed: {from: house, to: helm, length: 1 m}
  lead: {from: helm / lamps, to: lamp, size: 1 mm2, length: 4 m}
  spare: {from: house, to: lamp, along: [], size: 1 mm2}
legs:
  way: {from: house, to: lamp}
`;

describe("figures with sizes, ratings and outings held", () => {
  test.each(["tender", "utility", "launch"])("%s: unmoved, they are those of the whole", (name) => {
    const plan = planOf(readFileSync(`examples/${name}.yaml`, "utf8"));
    const whole = workOut(plan).figures;
    const held = workOutHeld(plan, whole);
    expect(held?.corners).toEqual(whole.corners);
    expect(held?.findings).toEqual(whole.findings);
    expect(held?.assumptions).toEqual(whole.assumptions);
  });

  test.each(["tender", "utility", "launch", "second-season"])(
    "%s: the findings of hull, boxes and parts stay with those of the electrics",
    (name) => {
      const plan = planOf(readFileSync(`examples/${name}.yaml`, "utf8"));
      const whole = workOutWhole(plan);
      const held = workOutHeld(plan, whole.figures);
      const inOrder = (findings: readonly Finding[] = []) =>
        findings.map((one) => JSON.stringify(one)).sort();
      expect(inOrder(held?.findings)).toEqual(inOrder(whole.figures.findings));
      // what is held says it all: with it in place of the whole the answer is the same
      expect(workOutHeld(plan, { ...whole.figures, ...heldOf(whole.figures) })).toEqual(held);
      // no rule of the electrics looks at hull, boxes, parts or the record
      const { layout, hull } = whole;
      const input = { ...whole.figures, ruleSet: ruleSet(plan.rules), layout, hull };
      const facts = factsOf(input, checkRecord(input, input));
      for (const rule of electricRules) {
        let looks = false;
        const noted = new Proxy(facts, {
          get: (of, key: keyof typeof facts) => {
            looks ||= key === "layout" || key === "hull" || key === "record";
            return of[key];
          },
        });
        rule.check(noted);
        expect(looks, rule.id).toBe(false);
      }
    },
  );

  test("a helm moved forward: each drop is that of the whole worked out anew, as long as sizes stay", () => {
    const text = readFileSync("examples/launch.yaml", "utf8");
    const before = workOut(planOf(text)).figures;
    const edited = applyEdits(text, [
      { edit: "set field", at: "port stringer", field: "length", to: "2.19 m" },
      { edit: "set field", at: "keelson", field: "length", to: "3.31 m" },
    ]);
    if (!edited.ok) throw new Error("the edit should be possible");
    const after = workOut(edited.plan).figures;
    expect(after.sizes.choices.map(({ size }) => size.key)).toEqual(
      before.sizes.choices.map(({ size }) => size.key),
    );
    const held = workOutHeld(edited.plan, before);
    expect(held?.corners).toEqual(after.corners);
    expect(held?.corners).not.toEqual(before.corners);
  });

  test("a longer way is longer at once", () => {
    const [near, far] = [planOf(boat("[1.3 m, 0 mm, 200 mm]")), planOf(boat("[3.3 m, 0 mm, 200 mm]"))];
    const held = workOutHeld(far, workOut(near).figures);
    const lengthOf = (figures: typeof held) =>
      figures?.plan.runs.find(({ name }) => name === "spare")?.lengthM ?? 0;
    expect(lengthOf(held) - lengthOf(workOut(near).figures)).toBeCloseTo(2, 6);
  });

  test("step after step of a drag, what is remembered gives what the step alone gives", () => {
    const plan = planOf(launchWithFreeLegs());
    const before = workOut(plan).figures;
    const follow = rememberingWorkOutHeld();
    const drops = new Set<number>();
    for (let step = 0; step < 12; step += 1) {
      const moved = {
        ...plan,
        waypoints: plan.waypoints.map((one) =>
          one.name === "helm foot" ? { ...one, atM: [4.3 - step / 10, step / 20, 0.15] as const } : one,
        ),
      };
      const figures = follow(moved, before);
      expect(figures).toEqual(workOutHeld(moved, before));
      expect(figures?.plan).toEqual(completePlan(moved));
      drops.add(figures?.corners[1]?.branches.reduce((sumV, { dropV }) => sumV + dropV, 0) ?? 0);
    }
    expect(drops.size).toBeGreaterThan(10);
    // and in between, a plan in which something else has changed
    const warmer = { ...plan, ambient: { ...plan.ambient, airC: 33 } };
    expect(follow(warmer, before)).toEqual(workOutHeld(warmer, before));
    expect(follow(plan, before)?.corners).toEqual(before.corners);
  });

  test("other gear or other runs: there is nothing to hold", () => {
    const launch = planOf(readFileSync("examples/launch.yaml", "utf8"));
    const tender = planOf(readFileSync("examples/tender.yaml", "utf8"));
    expect(workOutHeld(launch, workOut(tender).figures)).toBeUndefined();
  });
});
