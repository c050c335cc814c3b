import { describe, expect, test } from "vitest";
import { solveNetwork } from "../../../../src/core/circuit/solve/solve.js";
import { NetworkBuilder } from "../../../laws/network-builder.js";

/** 12 V behind 0.1 Ω; loads of 10 A each at the posts (constant current), with the given least voltages. */
function atThePosts(...minV: number[]) {
  const builder = new NetworkBuilder();
  const minus = builder.node();
  const plus = builder.node();
  builder.source(plus, minus, 12, 0.1);
  for (const least of minV) builder.load(plus, minus, "current", 10, least);
  return builder.build();
}

describe.each(["radial", "sparse"] as const)("%s", (method) => {
  test("what lies lowest against its least voltage goes first, until the rest holds", () => {
    // All on: 9 V. Without the one that needs 11.5 V: 10 V. Without the next: 11 V, and the last holds.
    const { cutOut, underVoltage, loadA, loadV } = solveNetwork(atThePosts(10.5, 11.5, 8), {
      cutOut: true,
      method,
    });
    expect(underVoltage).toEqual([0, 1]);
    expect(cutOut).toEqual([1, 0]);
    expect([...loadA]).toEqual([0, 0, 10]);
    expect(loadV[2]).toBeCloseTo(11, 9);
  });

  test("one that recovers once another is gone stays on", () => {
    const { cutOut, underVoltage } = solveNetwork(atThePosts(9.5, 11.5, 8), { cutOut: true, method });
    expect(underVoltage).toEqual([0, 1]);
    expect(cutOut).toEqual([1]);
  });

  test("nothing is cut unless asked for", () => {
    const { cutOut, loadA } = solveNetwork(atThePosts(10.5, 11.5, 8), { method });
    expect(cutOut).toEqual([]);
    expect([...loadA]).toEqual([10, 10, 10]);
  });

  test("cutting out can lift a collapse", () => {
    const builder = new NetworkBuilder();
    const minus = builder.node();
    const plus = builder.node();
    builder.source(plus, minus, 12, 0.1);
    builder.load(plus, minus, "power", 350, 10);
    builder.load(plus, minus, "power", 60, 6);
    const network = builder.build();
    expect(solveNetwork(network, { method }).status).toBe("collapsed");
    const held = solveNetwork(network, { cutOut: true, method });
    expect(held.status).toBe("solved");
    expect(held.cutOut).toEqual([0]);
    expect(held.carriedShare).toBeUndefined();
  });

  test("resistive gear that joined two parts may go too", () => {
    const builder = new NetworkBuilder();
    const minus = builder.node();
    const plus = builder.node();
    builder.source(plus, minus, 12, 0.1);
    const floating = builder.node();
    builder.load(plus, floating, "resistance", 10, 11);
    builder.load(floating, minus, "resistance", 10, 11);
    const { cutOut, loadA, status } = solveNetwork(builder.build(), { cutOut: true, method });
    // In series both get half; with one gone the other gets nothing, and goes as well.
    expect(status).toBe("solved");
    expect(cutOut).toEqual([0, 1]);
    expect([...loadA]).toEqual([0, 0]);
  });

  test("gear that is off is neither under voltage nor cut out", () => {
    const network = atThePosts(11.9, 8, 8);
    const value = Float64Array.of(0, 10, 10);
    const { underVoltage, cutOut } = solveNetwork(
      { ...network, loads: { ...network.loads, value } },
      { cutOut: true, method },
    );
    expect(underVoltage).toEqual([]);
    expect(cutOut).toEqual([]);
  });
});
