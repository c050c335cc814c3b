import { describe, expect, test } from "vitest";
import { chooseSizes } from "../../src/core/circuit/sizes/choose.js";
import {
  aimOf,
  type DropLimit,
  type SizingGroup,
  type SizingProblem,
} from "../../src/core/circuit/sizes/problem.js";
import { candidates, group, seeded } from "../core/circuit/sizing-problems.js";

/** Constant-power gear on a feed, trunks and leads: the drops follow from the currents and the currents from the drops. */
interface Circuit {
  readonly problem: SizingProblem;
  readonly drops: (indexes: readonly number[]) => number[];
  readonly termsAt: (indexes: readonly number[]) => DropLimit["terms"][];
}

const batteryV = 11.8;

function circuit(seed: number): Circuit {
  const random = seeded(seed);
  const groups: SizingGroup[] = [];
  const add = () => groups.push(group(`g${groups.length}`, 0.5 + 3 * random(), 0, candidates(random, 5))) - 1;
  const feed = add();
  const trunks = [add(), add()];
  const gear = [0, 0, 1].map((trunk) => ({
    trunk: trunks[trunk] ?? 0,
    lead: add(),
    powerW: 8 + 50 * random(),
  }));
  const ohm = (at: number, indexes: readonly number[]) =>
    2 * (groups[at]?.lengthM ?? 0) * (groups[at]?.candidates[indexes[at] ?? 0]?.ohmPerM ?? 0);
  const solve = (indexes: readonly number[]) => {
    let gearV = gear.map(() => batteryV);
    for (let round = 0; round < 200; round += 1) {
      const currentA = gear.map(({ powerW }, at) => powerW / (gearV[at] ?? 0));
      const sumA = (keep: (trunk: number) => boolean) =>
        gear.reduce((sum, { trunk }, at) => sum + (keep(trunk) ? (currentA[at] ?? 0) : 0), 0);
      const next = gear.map(({ trunk, lead }, at) => {
        const shared =
          ohm(feed, indexes) * sumA(() => true) + ohm(trunk, indexes) * sumA((other) => other === trunk);
        return batteryV - shared - ohm(lead, indexes) * (currentA[at] ?? 0);
      });
      if (next.some((v) => !(v > 0))) return { currentA, dropV: gear.map(() => Number.POSITIVE_INFINITY) };
      const moved = Math.max(...next.map((v, at) => Math.abs(v - (gearV[at] ?? 0))));
      gearV = next;
      if (moved < 1e-13) break;
    }
    return {
      currentA: gear.map(({ powerW }, at) => powerW / (gearV[at] ?? 0)),
      dropV: gearV.map((v) => batteryV - v),
    };
  };
  const length = (at: number) => 2 * (groups[at]?.lengthM ?? 0);
  const termsAt = (indexes: readonly number[]) => {
    const { currentA } = solve(indexes);
    const total = (keep: (trunk: number) => boolean) =>
      gear.reduce((sum, { trunk }, at) => sum + (keep(trunk) ? (currentA[at] ?? 0) : 0), 0);
    return gear.map(({ trunk, lead }, at) => [
      { group: feed, ampereM: length(feed) * total(() => true) },
      { group: trunk, ampereM: length(trunk) * total((other) => other === trunk) },
      { group: lead, ampereM: length(lead) * (currentA[at] ?? 0) },
    ]);
  };
  // with the largest sizes voltages are highest and constant-power currents least: a lower bound for every choice
  const largest = termsAt(groups.map(({ candidates: sizes }) => sizes.length - 1));
  const limits = gear.map(
    (_, at): DropLimit => ({
      gear: `gear ${at}`,
      maxDropV: 12 * (0.06 + 0.14 * random()),
      nominalV: 12,
      fixedDropV: 0,
      terms: largest[at] ?? [],
    }),
  );
  const problem: SizingProblem = { aim: "cheapest", groups, limits };
  return { problem, drops: (indexes) => solve(indexes).dropV, termsAt };
}

/** Every combination, by the true drops. */
function everyCombination({ problem, drops }: Circuit): number | undefined {
  let best: number | undefined;
  const indexes = problem.groups.map(() => 0);
  const visit = (at: number, cost: number): void => {
    if (best !== undefined && cost >= best) return;
    const own = problem.groups[at];
    if (!own) {
      const dropV = drops(indexes);
      if (problem.limits.every(({ maxDropV }, limit) => (dropV[limit] ?? 0) <= maxDropV * (1 + 1e-9)))
        best = cost;
      return;
    }
    own.candidates.forEach((candidate, index) => {
      indexes[at] = index;
      visit(at + 1, cost + aimOf(problem, own, candidate));
    });
  };
  visit(0, 0);
  return best;
}

describe("sizes by the true drops of constant-power gear", () => {
  test("60 circuits cost what trying every combination finds, also where the straight-line model is wrong", () => {
    let straightLineFails = 0;
    let met = 0;
    for (let seed = 1; seed <= 60; seed += 1) {
      const made = circuit(seed);
      const expected = everyCombination(made);
      const got = chooseSizes(made.problem, made.drops);
      if (expected === undefined) {
        expect(got.proof, `seed ${seed}`).toBe("none");
        continue;
      }
      met += 1;
      expect(got.proof, `seed ${seed}`).toBe("proven");
      expect(Math.abs(got.total / expected - 1), `seed ${seed}`).toBeLessThan(1e-12);
      const sharper = chooseSizes(made.problem, made.drops, { termsAt: made.termsAt });
      expect(sharper.proof, `seed ${seed}`).toBe("proven");
      expect(Math.abs(sharper.total / expected - 1), `seed ${seed}`).toBeLessThan(1e-12);
      const straight = chooseSizes(made.problem);
      const dropV = made.drops(straight.indexes);
      if (made.problem.limits.some(({ maxDropV }, at) => (dropV[at] ?? 0) > maxDropV)) straightLineFails += 1;
    }
    expect(met).toBeGreaterThan(40);
    expect(straightLineFails).toBeGreaterThan(5);
  });

  test("with little effort the result still holds, and the optimum lies between its bounds", () => {
    let bounded = 0;
    for (let seed = 1; seed <= 60; seed += 1) {
      const made = circuit(seed);
      const best = chooseSizes(made.problem, made.drops, { termsAt: made.termsAt });
      const hurried = chooseSizes(made.problem, made.drops, { maxBoxes: 1, maxLabels: 8 });
      if (best.proof === "none") continue;
      const dropV = made.drops(hurried.indexes);
      made.problem.limits.forEach(({ maxDropV }, at) => {
        expect(dropV[at]).toBeLessThanOrEqual(maxDropV * (1 + 1e-9));
      });
      expect(hurried.lowerBound, `seed ${seed}`).toBeLessThanOrEqual(best.total * (1 + 1e-9));
      expect(hurried.total, `seed ${seed}`).toBeGreaterThanOrEqual(best.total * (1 - 1e-9));
      if (hurried.proof === "bounded") bounded += 1;
    }
    expect(bounded).toBeGreaterThan(3);
  });

  test("without monotony nothing is called proven that the relaxation does not prove", () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const made = circuit(seed);
      const got = chooseSizes(made.problem, made.drops, { monotone: false });
      if (got.proof === "proven") expect(got.total).toBeLessThanOrEqual(got.lowerBound * (1 + 1e-9));
      if (got.proof === "none") continue;
      const dropV = made.drops(got.indexes);
      made.problem.limits.forEach(({ maxDropV }, at) => {
        expect(dropV[at]).toBeLessThanOrEqual(maxDropV * (1 + 1e-9));
      });
    }
  });
});
