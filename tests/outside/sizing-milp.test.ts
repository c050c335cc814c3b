import { describe, expect, test } from "vitest";
import { chooseSizes } from "../../src/core/circuit/sizes/choose.js";
import { allowed } from "../../src/core/circuit/sizes/floors.js";
import { aimOf, type SizingProblem } from "../../src/core/circuit/sizes/problem.js";
import { branching } from "../core/circuit/sizing-problems.js";

/** The problem in the LP file format: one binary for each size of each group, one of them true; limits as written. */
function asLp(problem: SizingProblem): string {
  const { groups, limits } = problem;
  const open = groups.map((group) => allowed(group).indexes);
  const name = (group: number, index: number) => `x${group}_${index}`;
  const sizes = open.flatMap((indexes, group) => indexes.map((index) => ({ group, index })));
  const costs = sizes.map(({ group, index }) => {
    const own = groups[group];
    const candidate = own?.candidates[index];
    return `${own && candidate ? aimOf(problem, own, candidate) : 0} ${name(group, index)}`;
  });
  const rows = limits.map(({ maxDropV, fixedDropV, terms }, at) => {
    const sums = new Map<string, number>();
    for (const { group, ampereM } of terms) {
      for (const index of open[group] ?? []) {
        const dropV = ampereM * (groups[group]?.candidates[index]?.ohmPerM ?? 0);
        sums.set(name(group, index), (sums.get(name(group, index)) ?? 0) + dropV);
      }
    }
    return ` r${at}: ${[...sums].map(([x, dropV]) => `${dropV} ${x}`).join(" + ")} <= ${maxDropV - fixedDropV}`;
  });
  const one = open.map(
    (indexes, group) => ` g${group}: ${indexes.map((index) => name(group, index)).join(" + ")} = 1`,
  );
  const binary = sizes.map(({ group, index }) => name(group, index)).join(" ");
  return `Minimize\n obj: ${costs.join(" + ")}\nSubject To\n${[...rows, ...one].join("\n")}\nBinary\n ${binary}\nEnd\n`;
}

/** What is used of the solver; its own types describe a CommonJS module, which is not what is loaded here. */
interface Solver {
  solve(lp: string, options: Readonly<Record<string, number>>): { Status: string; ObjectiveValue: number };
}
const load: unknown = (await import("highs")).default;
if (typeof load !== "function") throw new TypeError("the solver's loader is a function");
const highs: Solver = await load();

/** HiGHS (MIT licence), a mixed-integer solver in WebAssembly; asked for no gap at all. */
function bySolver(problem: SizingProblem): { status: string; cost: number } {
  const { Status, ObjectiveValue } = highs.solve(asLp(problem), { mip_rel_gap: 0, mip_abs_gap: 1e-9 });
  return { status: Status, cost: ObjectiveValue };
}

const shapes = ["tree", "shared cables", "crossing"] as const;
const cases = Array.from({ length: 24 }, (_, at) => ({
  seed: 500 + at,
  gear: 12 + 2 * at,
  shape: shapes[at % 3] ?? "tree",
}));

describe("the same optimum as a mixed-integer solver", () => {
  let solved = 0;
  test.each(cases)("$gear pieces of gear, $shape, seed $seed", ({ seed, gear, shape }) => {
    const problem = branching(seed, gear, 9, shape);
    const got = chooseSizes(problem);
    const expected = bySolver(problem);
    if (got.proof === "none") {
      expect(expected.status).toBe("Infeasible");
      return;
    }
    solved += 1;
    expect(got.proof).toBe("proven");
    expect(expected.status).toBe("Optimal");
    // the solver takes a row as kept, and a binary as whole, to 1e-6
    expect(Math.abs(got.total / expected.cost - 1)).toBeLessThan(1e-6);
  });
  test("most of them can be solved at all", () => expect(solved).toBeGreaterThanOrEqual(20));
});
