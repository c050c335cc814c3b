import { expect, test } from "vitest";
import { rememberingSolver, solveNetwork } from "../../../../src/core/circuit/solve/solve.js";
import { loadLaw, type NetworkNumbers, type SolveOptions } from "../../../../src/core/circuit/solve/types.js";
import { generatedNetwork, seeded } from "../../../laws/generated-network.js";
import { NetworkBuilder } from "../../../laws/network-builder.js";

/** The same joins with other numbers: resistances, EMFs, loads on and off, of other laws, heavy enough to cut out and to collapse. */
function changed(network: NetworkNumbers, random: () => number): NetworkNumbers {
  const { branches, sources, loads, converters } = network;
  const heavy = random() < 0.15 ? 20 : 1;
  const law = loads.law.map((was) => (random() < 0.9 ? was : Math.floor(3 * random())));
  return {
    ...network,
    branches: { ...branches, ohm: branches.ohm.map((ohm) => ohm * (0.5 + random())) },
    sources: {
      ...sources,
      emfV: sources.emfV.map((emfV) => emfV * (random() < 0.1 ? 0.5 : 0.9 + 0.2 * random())),
      ohm: sources.ohm.map((ohm) => (random() < 0.1 ? 1e9 : ohm)),
    },
    loads: {
      ...loads,
      law,
      value: loads.value.map((value, i) => {
        const off = random() < 0.3;
        if (law[i] === loadLaw.resistance)
          return off || !(value > 0) ? Infinity : Math.max(value, 20) / heavy;
        return off || !(value < Infinity) ? 0 : Math.min(value, 3) * heavy;
      }),
    },
    converters: { ...converters, minInputV: converters.minInputV.map(() => (random() < 0.3 ? 11 : 0)) },
  };
}

const rounds = 12;
const kinds = Array.from({ length: 60 }, (_, seed) => ({
  seed,
  shape: {
    gear: 4 + ((seed * 7) % 40),
    meshed: seed % 2 === 1,
    converters: seed % 4 === 3 ? 2 : seed % 3 === 0 ? 1 : 0,
  },
}));

test("a solver that remembers answers as one that starts anew, to the last digit", () => {
  let collapsed = 0;
  let cut = 0;
  let tripped = 0;
  const methods = new Set<string>();
  for (const { seed, shape } of kinds) {
    const random = seeded(seed + 77);
    const network = generatedNetwork(seed, shape);
    const solve = rememberingSolver();
    for (let round = 0; round < rounds; round += 1) {
      const asked = changed(network, random);
      const options: SolveOptions =
        round % 3 === 0 ? { cutOut: true } : round % 5 === 4 ? { method: "sparse" } : {};
      const remembered = solve(asked, options);
      expect(remembered, `seed ${seed}, round ${round}`).toEqual(solveNetwork(asked, options));
      methods.add(remembered.method);
      if (remembered.status === "collapsed") collapsed += 1;
      cut += remembered.cutOut.length;
      tripped += remembered.convertersOff.length;
    }
  }
  expect(methods).toEqual(new Set(["radial", "sparse"]));
  expect(Math.min(collapsed, cut, tripped)).toBeGreaterThan(20);
});

test("what the caller changes in place, and a network joined otherwise, are noticed", () => {
  const first = generatedNetwork(5, { gear: 12, meshed: true, converters: 1 });
  const second = generatedNetwork(6, { gear: 12, meshed: false, converters: 0 });
  const solve = rememberingSolver();
  for (const network of [first, second, first]) expect(solve(network)).toEqual(solveNetwork(network));
  const { from } = first.branches;
  from[from.length - 1] = Number(from[0]);
  expect(solve(first)).toEqual(solveNetwork(first));
  first.converters.outputV[0] = 7;
  expect(solve(first)).toEqual(solveNetwork(first));
});

test("a resistance that alone joins two islands joins them only while it is on", () => {
  const builder = new NetworkBuilder();
  const [minus, plus, far] = [builder.node(), builder.node(), builder.node()];
  builder.source(plus, minus, 12, 0.1);
  builder.load(plus, far, "resistance", 0.9);
  builder.load(far, minus, "resistance", 11);
  builder.load(far, minus, "power", 1, 9);
  const network = builder.build();
  const solve = rememberingSolver();
  const withFirst = (ohm: number): NetworkNumbers => {
    const value = network.loads.value.slice();
    value[0] = ohm;
    return { ...network, loads: { ...network.loads, value } };
  };
  for (const ohm of [0.9, Infinity, 2, Infinity, 0.9]) {
    const asked = withFirst(ohm);
    expect(solve(asked)).toEqual(solveNetwork(asked));
    expect(Number(solve(asked).loadV[2]) > 0).toBe(ohm < Infinity);
  }
});

test("loads that are off do not hide that the rest can be folded", () => {
  const builder = new NetworkBuilder();
  const [minus, plus] = [builder.node(), builder.node()];
  builder.source(plus, minus, 12, 0.1);
  const [a, b] = [builder.along(plus, 0.1), builder.along(plus, 0.2)];
  builder.branch(a, minus, 5);
  builder.branch(b, minus, 7);
  const bridge = builder.load(a, b, "resistance", 3);
  const on = builder.build();
  const value = on.loads.value.slice();
  value[bridge] = Infinity;
  const off = { ...on, loads: { ...on.loads, value } };
  const solve = rememberingSolver();
  expect([on, off, on].map((network) => solve(network).method)).toEqual(["sparse", "radial", "sparse"]);
  expect(solve(off, { method: "radial" })).toEqual(solveNetwork(off, { method: "radial" }));
  expect(() => solve(on, { method: "radial" })).toThrow(/got a mesh/);
});

/**
 * Closed form. Output: V = (E + √(E² − 4·R·P)) / 2 and I = P / V. Input: W = E·I/η + standby, u = (U + √(U² − 4·r·W)) / 2.
 * A converter whose output lies above its input must not be taken for a collapse.
 */
test.each([
  [12.3, 12.8],
  [9.5, 12.8],
  [12.79, 12.8],
  [12.3, 24],
  [11, 48],
])("a converter from %d V up to %d V feeds 5 W", (emfV, outputV) => {
  for (const shared of [true, false]) {
    const builder = new NetworkBuilder();
    const [minus, plus] = [builder.node(), builder.node()];
    builder.source(plus, minus, emfV, 0.02);
    const inPlus = builder.along(plus, 0.08);
    const outPlus = builder.node();
    const outMinus = shared ? minus : builder.node();
    builder.converter({
      inPlus,
      inMinus: minus,
      outPlus,
      outMinus,
      outputV,
      efficiency: 0.92,
      standbyW: 0.5,
      minInputV: 9,
      maxOutputA: 5,
    });
    builder.load(builder.along(outPlus, 0.1), builder.along(outMinus, 0.1), "power", 5, 9);
    const solution = solveNetwork(builder.build());
    const lampV = (outputV + Math.sqrt(outputV ** 2 - 4 * 0.2 * 5)) / 2;
    const inputW = (outputV * (5 / lampV)) / 0.92 + 0.5;
    const inputV = (emfV + Math.sqrt(emfV ** 2 - 4 * 0.1 * inputW)) / 2;
    expect(solution.status).toBe("solved");
    expect(solution.convertersOff).toEqual([]);
    expect(Number(solution.loadV[0])).toBeCloseTo(lampV, 9);
    expect(Number(solution.converterInA[0])).toBeCloseTo(inputW / inputV, 9);
  }
});
