import { describe, expect, test } from "vitest";
import { solveNetwork } from "../../../../src/core/circuit/solve/solve.js";
import type { NetworkNumbers } from "../../../../src/core/circuit/solve/types.js";
import { brokenLaws } from "../../../laws/kirchhoff.js";
import { NetworkBuilder } from "../../../laws/network-builder.js";

const gear = 20000;
const eachW = 60 / gear;

function begun() {
  const builder = new NetworkBuilder();
  const minus = builder.node();
  const plus = builder.node();
  builder.source(plus, minus, 12.8, 0.01);
  return { builder, plus, minus };
}

/** One pair of legs, gear after gear. */
function chain(): NetworkNumbers {
  const { builder, plus, minus } = begun();
  let [a, b] = [plus, minus];
  for (let i = 0; i < gear; i++) {
    a = builder.along(a, 0.2 / gear);
    b = builder.along(b, 0.2 / gear);
    builder.load(a, b, "power", eachW, 9);
  }
  return builder.build();
}

/** A pair of legs for each piece of gear. */
function star(): NetworkNumbers {
  const { builder, plus, minus } = begun();
  for (let i = 0; i < gear; i++)
    builder.load(builder.along(plus, 0.5), builder.along(minus, 0.5), "power", eachW, 9);
  return builder.build();
}

/** A feed for each piece of gear, one return for all. */
function comb(): NetworkNumbers {
  const { builder, plus, minus } = begun();
  let back = minus;
  for (let i = 0; i < gear; i++) {
    back = builder.along(back, 0.2 / gear);
    builder.load(builder.along(plus, 0.5), back, "power", eachW, 9);
  }
  return builder.build();
}

/** A chain with a cross connection at every tenth piece of gear that no series or parallel step can fold. */
function ladder(): NetworkNumbers {
  const { builder, plus, minus } = begun();
  const spare = builder.along(plus, 0.001);
  let [a, b, c] = [plus, minus, spare];
  for (let i = 0; i < gear; i++) {
    a = builder.along(a, 0.2 / gear);
    b = builder.along(b, 0.2 / gear);
    builder.load(a, b, "power", eachW, 9);
    if (i % 10 !== 9) continue;
    c = builder.along(c, 2 / gear);
    builder.branch(a, c, 0.001);
    builder.load(c, b, "power", eachW, 9);
  }
  return builder.build();
}

// a quadratic method would need minutes here: past the runner's own limit for a test
describe.each([
  ["chain", chain, "radial"],
  ["star", star, "radial"],
  ["comb", comb, "radial"],
  ["chain", chain, "sparse"],
  ["star", star, "sparse"],
  ["comb", comb, "sparse"],
  ["ladder", ladder, "sparse"],
] as const)("20,000 pieces of gear as a %s", (_, make, method) => {
  test(`${method} solves it, lawfully`, () => {
    const network = make();
    const solution = solveNetwork(network, { method });
    expect(solution.status).toBe("solved");
    expect(brokenLaws(network, solution)).toEqual([]);
  });

  test(`${method} finds its collapse, lawfully`, () => {
    const network = make();
    const loads = { ...network.loads, value: network.loads.value.map((watts) => 100 * watts) };
    const solution = solveNetwork({ ...network, loads }, { method });
    expect(solution.status).toBe("collapsed");
    expect(brokenLaws({ ...network, loads }, solution)).toEqual([]);
  });
});
