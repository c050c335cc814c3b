import { describe, expect, test } from "vitest";
import { solveNetwork } from "../../../../src/core/circuit/solve/solve.js";
import { NetworkBuilder } from "../../../laws/network-builder.js";

/** Battery of 12 V behind 0.1 Ω in all, one load across its posts. */
function oneLoad(law: "power" | "current" | "resistance", value: number) {
  const builder = new NetworkBuilder();
  const minus = builder.node();
  const plus = builder.node();
  builder.source(plus, minus, 12, 0.04);
  const far = builder.along(plus, 0.06);
  builder.load(far, minus, law, value, 9);
  return builder.build();
}
const mostW = 12 ** 2 / (4 * 0.1); // E² / 4R = 360 W, at half the EMF

describe.each(["radial", "sparse"] as const)("%s", (method) => {
  test.each([1, 100, 300, 359.99])("one constant-power load of %d W: V = (E + √(E² − 4RP)) / 2", (watts) => {
    const { status, loadV, loadA } = solveNetwork(oneLoad("power", watts), { method });
    const exactV = (12 + Math.sqrt(144 - 4 * 0.1 * watts)) / 2;
    expect(status).toBe("solved");
    expect(Math.abs(Number(loadV[0]) - exactV)).toBeLessThan(1e-9);
    expect(Number(loadA[0]) * Number(loadV[0])).toBeCloseTo(watts, 9);
  });

  test.each([360.01, 400, 720, 36000])(
    "%d W has no solution: the carried share is that of the greatest power",
    (watts) => {
      const { status, carriedShare, weakestLoad, loadV, underVoltage } = solveNetwork(
        oneLoad("power", watts),
        { method },
      );
      expect(status).toBe("collapsed");
      expect(carriedShare).toBeCloseTo(mostW / watts, 7);
      expect(weakestLoad).toBe(0);
      // The square root of the last step of the share.
      expect(Math.abs(Number(loadV[0]) - 6)).toBeLessThan(0.02);
      expect(underVoltage).toEqual([0]);
    },
  );

  test("a constant current holds as long as the voltage stays above zero", () => {
    const held = solveNetwork(oneLoad("current", 119), { method });
    expect(held.status).toBe("solved");
    expect(held.loadV[0]).toBeCloseTo(0.1, 9);
    const collapsed = solveNetwork(oneLoad("current", 121), { method });
    expect(collapsed).toMatchObject({
      status: "collapsed",
      carriedShare: 0,
      weakestLoad: 0,
      underVoltage: [0],
    });
  });

  test("the weakest load is the one whose voltage falls deepest, not the largest", () => {
    const builder = new NetworkBuilder();
    const minus = builder.node();
    const plus = builder.node();
    builder.source(plus, minus, 12, 0.01);
    builder.load(plus, minus, "power", 500);
    builder.load(builder.along(plus, 4), builder.along(minus, 4), "power", 5);
    const { status, weakestLoad, carriedShare } = solveNetwork(builder.build(), { method });
    expect(status).toBe("collapsed");
    expect(weakestLoad).toBe(1);
    expect(carriedShare).toBeGreaterThan(0.8);
    expect(carriedShare).toBeLessThan(12 ** 2 / (4 * 8) / 5);
  });

  test("one load less than the last share that exists, and the network solves", () => {
    const network = oneLoad("power", 720);
    const { carriedShare } = solveNetwork(network, { method });
    const scaled = (share: number) => ({
      ...network,
      loads: { ...network.loads, value: Float64Array.of(720 * share) },
    });
    expect(solveNetwork(scaled(Number(carriedShare) * (1 - 1e-7)), { method }).status).toBe("solved");
    expect(solveNetwork(scaled(Number(carriedShare) * (1 + 1e-7)), { method }).status).toBe("collapsed");
  });
});
