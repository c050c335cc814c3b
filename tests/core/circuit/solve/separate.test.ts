import { expect, test } from "vitest";
import { rememberingSolver, solveNetwork } from "../../../../src/core/circuit/solve/solve.js";
import type { NetworkNumbers, Solution } from "../../../../src/core/circuit/solve/types.js";
import { generatedNetwork } from "../../../laws/generated-network.js";

type Column = Float64Array | Int32Array | Uint8Array;

/** Two networks as one, their rows and nodes by turns, so that no part lies in one piece. */
function besides(
  a: NetworkNumbers,
  b: NetworkNumbers,
): { whole: NetworkNumbers; nodes: [number[], number[]] } {
  const mixed = (one: Column, other: Column): number[] => {
    const rows: number[] = [];
    for (let at = 0; at < Math.max(one.length, other.length); at += 1) {
      if (at < one.length) rows.push(Number(one[at]));
      if (at < other.length) rows.push(Number(other[at]));
    }
    return rows;
  };
  const places = mixed(
    Int32Array.from({ length: a.nodeCount }, (_, node) => node),
    Int32Array.from({ length: b.nodeCount }, (_, node) => -1 - node),
  );
  const nodes: [number[], number[]] = [[], []];
  places.forEach((node, at) => {
    if (node >= 0) nodes[0][node] = at;
    else nodes[1][-1 - node] = at;
  });
  const ends = (one: Int32Array, other: Int32Array) =>
    Int32Array.from(
      mixed(
        one.map((node) => nodes[0][node] ?? 0),
        other.map((node) => nodes[1][node] ?? 0),
      ),
    );
  const reals = (one: Float64Array, other: Float64Array) => Float64Array.from(mixed(one, other));
  const [p, q] = [a.converters, b.converters];
  return {
    nodes,
    whole: {
      nodeCount: a.nodeCount + b.nodeCount,
      branches: {
        from: ends(a.branches.from, b.branches.from),
        to: ends(a.branches.to, b.branches.to),
        ohm: reals(a.branches.ohm, b.branches.ohm),
      },
      sources: {
        plus: ends(a.sources.plus, b.sources.plus),
        minus: ends(a.sources.minus, b.sources.minus),
        emfV: reals(a.sources.emfV, b.sources.emfV),
        ohm: reals(a.sources.ohm, b.sources.ohm),
      },
      loads: {
        plus: ends(a.loads.plus, b.loads.plus),
        minus: ends(a.loads.minus, b.loads.minus),
        law: Uint8Array.from(mixed(a.loads.law, b.loads.law)),
        value: reals(a.loads.value, b.loads.value),
        minV: reals(a.loads.minV, b.loads.minV),
      },
      converters: {
        inPlus: ends(p.inPlus, q.inPlus),
        inMinus: ends(p.inMinus, q.inMinus),
        outPlus: ends(p.outPlus, q.outPlus),
        outMinus: ends(p.outMinus, q.outMinus),
        outputV: reals(p.outputV, q.outputV),
        maxOutputA: reals(p.maxOutputA, q.maxOutputA),
        efficiency: reals(p.efficiency, q.efficiency),
        standbyW: reals(p.standbyW, q.standbyW),
        minInputV: reals(p.minInputV, q.minInputV),
      },
    },
  };
}

const light = (seed: number, meshed: boolean, converters: number) =>
  generatedNetwork(seed, { gear: 5 + seed, meshed, converters });

/** Sums of currents taken apart can't hide a mistake: every voltage is looked at. */
function far(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let most = 0;
  for (let at = 0; at < a.length; at += 1) most = Math.max(most, Math.abs(Number(a[at]) - Number(b[at])));
  return most;
}

const columns = ["nodeV", "branchA", "sourceA", "loadA", "loadV", "converterInA", "converterOutA"] as const;
const lists = ["underVoltage", "cutOut", "convertersOff", "convertersOver"] as const;
const pairs = Array.from({ length: 12 }, (_, at) => at);

test.each(pairs)("two networks side by side are each as if alone, pair %i", (seed) => {
  const one = light(seed, false, 0);
  const other = light(seed + 20, seed % 2 === 0, seed % 3);
  const { whole, nodes } = besides(one, other);
  const together = solveNetwork(whole);
  expect(together.status).toBe("solved");
  const alone = [solveNetwork(one), solveNetwork(other)] as const;
  expect(alone.map(({ status }) => status)).toEqual(["solved", "solved"]);
  alone.forEach(({ nodeV }, which) => {
    expect(Array.from(nodes[which] ?? [], (node) => together.nodeV[node])).toEqual(Array.from(nodeV));
  });
  expect(together.underVoltage.length).toBe(alone[0].underVoltage.length + alone[1].underVoltage.length);
  expect(together.convertersOff.length).toBe(alone[1].convertersOff.length);
});

test.each(pairs)("solved apart or as one matrix, the answer is the same, pair %i", (seed) => {
  const { whole } = besides(light(seed, false, 1), light(seed + 40, true, 0));
  const apart = solveNetwork(whole);
  const asOne = solveNetwork(whole, { method: "sparse" });
  expect(apart.status).toBe(asOne.status);
  for (const column of columns) expect(far(apart[column], asOne[column])).toBeLessThan(1e-7);
  for (const list of lists) expect(apart[list]).toEqual(asOne[list]);
});

test("where one collapses, what is carried is told of the whole", () => {
  const sound = light(3, false, 0);
  const heavy = light(4, false, 0);
  const value = heavy.loads.value.map((was, load) => (heavy.loads.law[load] === 0 ? was + 5_000 : was));
  const { whole } = besides(sound, { ...heavy, loads: { ...heavy.loads, value } });
  const together = solveNetwork(whole);
  expect(together.status).toBe("collapsed");
  expect(together.carriedShare).toBeGreaterThan(0);
  expect(together.carriedShare).toBeLessThan(1);
});

test("an answer that is given again is a table of its own: what a caller writes into it reaches no other", () => {
  const { whole } = besides(light(1, false, 0), light(2, true, 1));
  const solve = rememberingSolver();
  const first: Solution = solve(whole);
  const kept = structuredClone(first);
  for (const column of [first.nodeV, first.loadA, first.branchA]) column.fill(7);
  expect(solve(whole)).toEqual(kept);
  whole.branches.ohm[0] = 2 * Number(whole.branches.ohm[0]);
  expect(solve(whole)).toEqual(solveNetwork(whole));
});

test("taken apart at their converters, 300 networks answer as one matrix does, and most with a converter at work can be", () => {
  let folded = 0;
  let matrix = 0;
  for (let seed = 0; seed < 300; seed += 1) {
    const network = generatedNetwork(seed, {
      gear: 3 + (seed % 30),
      meshed: seed % 5 === 0,
      converters: 1 + (seed % 3),
    });
    const apart = solveNetwork(network);
    const asOne = solveNetwork(network, { method: "sparse" });
    expect(apart.status, `seed ${seed}`).toBe(asOne.status);
    for (const column of columns)
      expect(far(apart[column], asOne[column]), `seed ${seed}`).toBeLessThan(1e-7);
    for (const list of lists) expect(apart[list], `seed ${seed}`).toEqual(asOne[list]);
    if (!apart.converterOutA.some((currentA) => currentA > 0)) continue;
    if (apart.method === "radial") folded += 1;
    else matrix += 1;
  }
  expect(folded).toBeGreaterThan(100);
  expect(matrix).toBeGreaterThan(20);
});
