import { describe, expect, test } from "vitest";
import { solveNetwork } from "../../../../src/core/circuit/solve/solve.js";
import { NetworkBuilder } from "../../../laws/network-builder.js";

describe.each(["radial", "sparse"] as const)("%s", (method) => {
  test("each island is measured from the minus of its own battery", () => {
    const builder = new NetworkBuilder();
    for (const emfV of [12, 24]) {
      const plus = builder.node();
      const minus = builder.node();
      builder.source(plus, minus, emfV, 0.1);
      builder.load(plus, minus, "current", 10);
    }
    const { nodeV } = solveNetwork(builder.build(), { method });
    expect(nodeV[0]).toBeCloseTo(11, 9);
    expect(nodeV[1]).toBe(0);
    expect(nodeV[2]).toBeCloseTo(23, 9);
    expect(nodeV[3]).toBe(0);
  });

  test("gear in an island without a source gets 0 V, by whatever law it works", () => {
    const builder = new NetworkBuilder();
    const plus = builder.node();
    const minus = builder.node();
    builder.source(plus, minus, 12, 0.1);
    const [a, b] = [builder.node(), builder.node()];
    const far = builder.along(a, 1);
    builder.load(a, b, "power", 5);
    builder.load(far, b, "current", 1, 9);
    builder.load(far, a, "resistance", 10);
    const { status, loadV, loadA, underVoltage, branchA } = solveNetwork(builder.build(), { method });
    expect(status).toBe("solved");
    expect([...loadV]).toEqual([0, 0, 0]);
    expect([...loadA]).toEqual([0, 0, 0]);
    expect([...branchA]).toEqual([0]);
    expect(underVoltage).toEqual([0, 1, 2]);
  });

  test("gear with a leg that goes nowhere takes nothing, and the rest works", () => {
    const builder = new NetworkBuilder();
    const plus = builder.node();
    const minus = builder.node();
    builder.source(plus, minus, 12, 0.1);
    builder.load(plus, builder.node(), "power", 5);
    builder.load(plus, minus, "current", 10);
    builder.load(plus, plus, "power", 5);
    const { status, loadA, underVoltage } = solveNetwork(builder.build(), { method });
    expect(status).toBe("solved");
    expect([...loadA]).toEqual([0, 10, 0]);
    expect(underVoltage).toContain(2);
  });

  test("nothing at all, and things that are only half there", () => {
    expect(solveNetwork(new NetworkBuilder().build(), { method }).status).toBe("solved");
    const builder = new NetworkBuilder();
    builder.branch(builder.node(), builder.node(), 1);
    expect([...solveNetwork(builder.build(), { method }).nodeV]).toEqual([0, 0]);
    const shorted = new NetworkBuilder();
    const node = shorted.node();
    shorted.source(node, node, 12, 0.1);
    shorted.branch(node, node, 1);
    const { sourceA, branchA } = solveNetwork(shorted.build(), { method });
    expect(sourceA[0]).toBeCloseTo(120, 9);
    expect(branchA[0]).toBe(0);
  });

  test("batteries side by side share, and a fuller one charges an emptier one", () => {
    const builder = new NetworkBuilder();
    const plus = builder.node();
    const minus = builder.node();
    builder.source(plus, minus, 13, 0.1);
    builder.source(plus, minus, 12, 0.1);
    const { sourceA, nodeV } = solveNetwork(builder.build(), { method });
    expect(sourceA[0]).toBeCloseTo(5, 9);
    expect(sourceA[1]).toBeCloseTo(-5, 9);
    expect(Math.abs(Number(nodeV[plus]) - Number(nodeV[minus]))).toBeCloseTo(12.5, 9);
  });
});

test("radial is refused where there is a mesh", () => {
  const builder = new NetworkBuilder();
  const [a, b, c, d] = [builder.node(), builder.node(), builder.node(), builder.node()];
  builder.source(a, b, 12, 0.1);
  for (const [from, to] of [
    [a, c],
    [a, d],
    [b, c],
    [b, d],
    [c, d],
  ] as const)
    builder.branch(from, to, 1);
  const network = builder.build();
  expect(() => solveNetwork(network, { method: "radial" })).toThrow(
    /method radial needs a network without meshes/,
  );
  expect(solveNetwork(network).method).toBe("sparse");
});
