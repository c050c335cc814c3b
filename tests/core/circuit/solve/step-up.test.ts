import { expect, test } from "vitest";
import { solveNetwork } from "../../../../src/core/circuit/solve/solve.js";
import type { NetworkNumbers } from "../../../../src/core/circuit/solve/types.js";
import { seeded } from "../../../laws/generated-network.js";
import { NetworkBuilder } from "../../../laws/network-builder.js";

/** A battery, a step-up converter at the end of a feed, and up to four pieces of gear behind it; all invented. */
function stepUp(seed: number, negatives: "common" | "apart"): NetworkNumbers {
  const random = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * random();
  const builder = new NetworkBuilder();
  const minus = builder.node();
  const plus = builder.node();
  builder.source(plus, minus, between(11.5, 14), between(0.005, 0.05));
  const inPlus = builder.along(plus, between(0.002, 0.05));
  const inMinus = builder.along(minus, between(0.002, 0.05));
  builder.load(inPlus, inMinus, "power", between(0.1, 10));
  const outPlus = builder.node();
  const outMinus = negatives === "common" ? inMinus : builder.node();
  const outputV = between(15, 48);
  builder.converter({ inPlus, inMinus, outPlus, outMinus, outputV, efficiency: 0.9, standbyW: 0.3 });
  let [farPlus, farMinus] = [outPlus, outMinus];
  for (const law of ["power", "current", "resistance", "power"] as const) {
    farPlus = builder.along(farPlus, between(0.002, 0.1));
    farMinus = builder.along(farMinus, between(0.002, 0.1));
    const watts = between(0.5, 25);
    const value = { power: watts, current: watts / outputV, resistance: outputV ** 2 / watts }[law];
    builder.load(farPlus, farMinus, law, value);
  }
  return builder.build();
}

test("a step-up converter works whether its negatives are one point or two, and then does the same", () => {
  for (let seed = 1; seed <= 300; seed += 1) {
    const common = solveNetwork(stepUp(seed, "common"));
    const apart = solveNetwork(stepUp(seed, "apart"));
    expect(common.status, `seed ${seed}`).toBe("solved");
    expect([...common.convertersOff]).toEqual([]);
    const apartV = common.loadV.map((loadV, at) => Math.abs(loadV - (apart.loadV[at] ?? 0)));
    expect(Math.max(...apartV), `seed ${seed}`).toBeLessThan(1e-9);
  }
});

test("what a step-up converter draws is what it gives over its efficiency", () => {
  for (let seed = 1; seed <= 50; seed += 1) {
    const network = stepUp(seed, "common");
    const { nodeV, converterInA, converterOutA } = solveNetwork(network);
    const at = (node: number | undefined) => nodeV[node ?? -1] ?? Number.NaN;
    const { inPlus, inMinus, outputV } = network.converters;
    const drawnW = (at(inPlus[0]) - at(inMinus[0])) * (converterInA[0] ?? 0);
    const givenW = (outputV[0] ?? 0) * (converterOutA[0] ?? 0);
    expect(drawnW).toBeCloseTo(givenW / 0.9 + 0.3, 6);
    expect(at(inPlus[0]) - at(inMinus[0])).toBeLessThan(outputV[0] ?? 0);
  }
});
