import fc from "fast-check";
import { expect, test } from "vitest";
import { solveNetwork } from "../../src/core/circuit/solve/solve.js";
import { loadLaw, type NetworkNumbers, type Solution } from "../../src/core/circuit/solve/types.js";
import { type GeneratedShape, generatedNetwork } from "./generated-network.js";
import { brokenLaws } from "./kirchhoff.js";

const seeds = fc.integer({ min: 0, max: 2 ** 31 - 1 });
const shapes = (converters: number): fc.Arbitrary<GeneratedShape> =>
  fc.record({
    gear: fc.integer({ min: 1, max: 60 }),
    meshed: fc.boolean(),
    converters: fc.integer({ min: 0, max: converters }),
    totalW: fc.integer({ min: 5, max: 1500 }),
  });

test("Kirchhoff, Ohm, the laws of gear and energy hold on any network, collapsed and cut out ones too", () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(seeds, shapes(3), fc.boolean(), (seed, shape, cutOut) => {
      const network = generatedNetwork(seed, shape);
      const solution = solveNetwork(network, { cutOut });
      seen
        .add(solution.status)
        .add(solution.method)
        .add(solution.cutOut.length > 0 ? "cut" : "whole");
      expect(brokenLaws(network, solution)).toEqual([]);
    }),
    { numRuns: 400, seed: 1 },
  );
  expect([...seen].sort()).toEqual(["collapsed", "cut", "radial", "solved", "sparse", "whole"]);
});

test("both methods agree to 1e-9 wherever both apply", () => {
  fc.assert(
    fc.property(seeds, shapes(0), (seed, shape) => {
      const network = generatedNetwork(seed, { ...shape, meshed: false });
      const radial = solveNetwork(network, { method: "radial" });
      const sparse = solveNetwork(network, { method: "sparse" });
      expect(sparse.status).toBe(radial.status);
      expect(sparse.underVoltage).toEqual(radial.underVoltage);
      // At the point of greatest power voltages hang on the last digit of the power as its square root.
      const tolerance = radial.status === "solved" ? 1e-9 : 1e-3;
      expect(farthestV(radial, sparse) / Math.max(...network.sources.emfV)).toBeLessThan(tolerance);
      expect(Math.abs((radial.carriedShare ?? 1) - (sparse.carriedShare ?? 1))).toBeLessThan(1e-6);
    }),
    { numRuns: 300, seed: 2 },
  );
});

// Precondition: two legs without meshes, and gear of constant power or current. Resistive gear takes more when its own run
// gets better, and so may lower the voltage of its neighbours upstream; in a mesh, copper in one place may draw current into
// another. Both are physics, not faults.
test("more copper never raises a drop, a longer run never lowers one, with gear of constant power or current", () => {
  let solved = 0;
  fc.assert(
    fc.property(seeds, shapes(0), fc.double({ min: 1.05, max: 3, noNaN: true }), (seed, shape, factor) => {
      const long = withoutResistiveGear(generatedNetwork(seed, { ...shape, meshed: false, totalW: 60 }));
      const at = seed % long.branches.ohm.length;
      const ohm = long.branches.ohm.with(at, Number(long.branches.ohm[at]) / factor);
      const short = { ...long, branches: { ...long.branches, ohm } };
      const before = solveNetwork(long);
      const after = solveNetwork(short);
      if (before.status === "collapsed") return;
      solved++;
      expect(after.status).toBe("solved");
      const roundingV = 1e-9 * Number(long.sources.emfV[0]);
      // The EMF being the same, a drop is the EMF less the voltage at the gear.
      forEachOn(long, (i) => {
        expect(Number(after.loadV[i])).toBeGreaterThanOrEqual(Number(before.loadV[i]) - roundingV);
      });
    }),
    { numRuns: 300, seed: 3 },
  );
  expect(solved).toBeGreaterThan(200);
});

test("what is cut out ends with all that is left at or above its least voltage", () => {
  fc.assert(
    fc.property(seeds, shapes(2), (seed, shape) => {
      const network = generatedNetwork(seed, shape);
      const whole = solveNetwork(network);
      const held = solveNetwork(network, { cutOut: true });
      expect(held.underVoltage).toEqual(whole.underVoltage);
      const cut = new Set(held.cutOut);
      expect(cut.size).toBe(held.cutOut.length);
      forEachOn(network, (i) => {
        if (!cut.has(i)) expect(Number(held.loadV[i])).toBeGreaterThanOrEqual(Number(network.loads.minV[i]));
      });
    }),
    { numRuns: 200, seed: 4 },
  );
});

test("the same question gives the same answer, and is left as it was", () => {
  fc.assert(
    fc.property(seeds, shapes(2), (seed, shape) => {
      const network = generatedNetwork(seed, shape);
      const first = solveNetwork(network, { cutOut: true });
      expect(solveNetwork(network, { cutOut: true })).toEqual(first);
      expect(network).toEqual(generatedNetwork(seed, shape));
    }),
    { numRuns: 30, seed: 5 },
  );
});

function farthestV(a: Solution, b: Solution): number {
  return a.nodeV.reduce((most, v, node) => Math.max(most, Math.abs(v - Number(b.nodeV[node]))), 0);
}

function forEachOn({ loads }: NetworkNumbers, check: (load: number) => void): void {
  loads.value.forEach((value, i) => {
    if (loads.law[i] === loadLaw.resistance ? value < Infinity : value > 0) check(i);
  });
}

/** The same network with gear that takes the nominal current of each resistive load, whatever the voltage. */
function withoutResistiveGear(network: NetworkNumbers): NetworkNumbers {
  const { loads } = network;
  const emfV = Number(network.sources.emfV[0]);
  const value = loads.value.map((x, i) => (loads.law[i] === loadLaw.resistance ? emfV / x : x));
  const law = loads.law.map((x) => (x === loadLaw.resistance ? loadLaw.current : x));
  return { ...network, loads: { ...loads, law, value } };
}
