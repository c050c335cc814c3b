import { describe, expect, test } from "vitest";
import { chooseSizes } from "../../src/core/circuit/sizes/choose.js";
import { aimOf, type SizingProblem } from "../../src/core/circuit/sizes/problem.js";
import { branching } from "../core/circuit/sizing-problems.js";

/** Second method: every combination, by the rules as a person would write them down. */
function everyCombination(problem: SizingProblem): { cost: number } | undefined {
  const { groups, limits } = problem;
  let best: number | undefined;
  const indexes = groups.map(() => 0);
  const visit = (at: number, cost: number): void => {
    if (best !== undefined && cost >= best) return;
    const group = groups[at];
    if (!group) {
      const holds = limits.every(({ maxDropV, fixedDropV, terms }) => {
        let dropV = fixedDropV;
        for (const term of terms)
          dropV += term.ampereM * (groups[term.group]?.candidates[indexes[term.group] ?? 0]?.ohmPerM ?? 0);
        return dropV <= maxDropV * (1 + 1e-9);
      });
      if (holds) best = cost;
      return;
    }
    group.candidates.forEach((candidate, index) => {
      if (group.fixed !== undefined ? group.fixed !== index : !(group.currentA <= (candidate.ampacityA ?? 0)))
        return;
      indexes[at] = index;
      visit(at + 1, cost + aimOf(problem, group, candidate));
    });
  };
  visit(0, 0);
  return best === undefined ? undefined : { cost: best };
}

describe.each(["tree", "shared cables", "crossing"] as const)("%s", (shape) => {
  test("120 small circuits cost what trying every combination finds", () => {
    let met = 0;
    let notFirst = 0;
    for (let seed = 1; seed <= 120; seed += 1) {
      const problem = branching(seed, 2 + (seed % 3), 5 + (seed % 2), shape);
      const expected = everyCombination(problem);
      const got = chooseSizes(problem);
      if (!expected) {
        expect(got.proof, `seed ${seed}`).toBe("none");
        continue;
      }
      met += 1;
      expect(got.proof, `seed ${seed}`).toBe("proven");
      // both add the same few numbers in another order
      expect(Math.abs(got.total / expected.cost - 1), `seed ${seed}`).toBeLessThan(1e-12);
      if (got.choices.some(({ reason }) => reason.rule === "drop")) notFirst += 1;
    }
    expect(met).toBeGreaterThan(70); // the problems are not all impossible …
    expect(notFirst).toBeGreaterThan(50); // … nor all trivial
  });
});
