import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { sizeOfKey } from "../../src/core/circuit/conductor/sizes.js";
import { workOut } from "../../src/core/figures.js";
import type { Figures } from "../../src/core/figures-types.js";
import type { ConductorSize } from "../../src/core/plan/model/common.js";
import type { Plan } from "../../src/core/plan/model/plan.js";
import { readPlan } from "../../src/core/plan/read.js";
import { ruleSet } from "../../src/core/reference/rule-sets.js";
import { bigPlanText } from "../big-plan.js";

function planOf(text: string): Plan {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems.slice(0, 3)));
  return read.plan;
}

const example = (name: string) => planOf(readFileSync(`examples/${name}.yaml`, "utf8"));
const plans: readonly (readonly [string, Plan])[] = [
  ["tender", example("tender")],
  ["utility", example("utility")],
  ["launch", example("launch")],
  ["a large plan", planOf(bigPlanText(300, 12))],
];

/** The plan with every run of the size given for it. */
function fixed(plan: Plan, sizeOf: (run: string) => ConductorSize | undefined): Plan {
  const runs = plan.runs.map((run) => {
    const size = sizeOf(run.name);
    return size === undefined ? run : { ...run, size };
  });
  return { ...plan, runs };
}

const outSizes = ({ sizes }: Figures) => new Map(sizes.choices.map(({ id, size }) => [id, size]));
const ratings = ({ protection }: Figures) => protection.map(({ id, ratingA }) => [id, ratingA]);

describe.each(plans)("%s", (_name, plan) => {
  const { figures } = workOut(plan);
  const chosen = outSizes(figures);

  test("worked out twice, the same", () => {
    const again = workOut(plan).figures;
    expect(again.sizes).toEqual(figures.sizes);
    expect(again.protection).toEqual(figures.protection);
    expect(again.corners).toEqual(figures.corners);
  });

  test("what is proposed, taken as the owner's own, is kept and changes no rating and no drop", () => {
    const held = workOut(fixed(plan, (run) => chosen.get(run))).figures;
    for (const { id, size, fixedByOwner } of held.sizes.choices) {
      if (id.endsWith(" / return")) continue;
      expect(size, id).toEqual(chosen.get(id));
      expect(fixedByOwner, id).toBe(true);
    }
    expect(ratings(held)).toEqual(ratings(figures));
    expect(held.corners.map(({ gear }) => gear.map(({ dropV }) => dropV))).toEqual(
      figures.corners.map(({ gear }) => gear.map(({ dropV }) => dropV)),
    );
  });

  // gear of constant resistance takes more at a better run, and may lower its neighbours
  const rising = plan.gear.some(({ behaviour }) => behaviour === "resistance");
  test.skipIf(rising)("one size of copper more in any run raises no drop", () => {
    const { sizes } = plan.conductors;
    const offered = sizes.length > 0 ? sizes : ruleSet(plan.rules).sizeKeys.map(sizeOfKey);
    const series = offered.toSorted((a, b) => a.areaMm2 - b.areaMm2);
    const before = workOut(fixed(plan, (run) => chosen.get(run))).figures;
    for (const [run, size] of [...chosen].filter(([id]) => !id.endsWith(" / return")).slice(0, 12)) {
      const thicker = series.find(({ areaMm2 }) => areaMm2 > size.areaMm2);
      if (!thicker) continue;
      const after = workOut(fixed(plan, (name) => (name === run ? thicker : chosen.get(name)))).figures;
      after.corners.forEach((corner, at) => {
        const old = new Map(before.corners[at]?.gear.map(({ id, dropV }) => [id, dropV]));
        const raised = corner.gear.filter(({ id, dropV }) => dropV > (old.get(id) ?? 0) + 1e-9);
        expect(
          raised.map(({ id }) => id),
          `${run}, ${corner.name}`,
        ).toEqual([]);
      });
    }
  });
});
