import { expect, test } from "vitest";
import { solveNetwork as solveApart } from "../../../../src/core/circuit/solve/solve.js";
import type { NetworkNumbers, Solution } from "../../../../src/core/circuit/solve/types.js";
import { brokenLaws } from "../../../laws/kirchhoff.js";
import { NetworkBuilder } from "../../../laws/network-builder.js";

/** Taken apart at the converters where that can be, and as one matrix: one answer. */
function solveNetwork(network: NetworkNumbers): Solution {
  const apart = solveApart(network);
  const { method: _, iterations: __, ...asOne } = solveApart(network, { method: "sparse" });
  for (const [name, value] of Object.entries(asOne)) {
    const own = apart[name as keyof Solution];
    if (value instanceof Float64Array && own instanceof Float64Array)
      own.forEach((number, at) => {
        expect(number, `${name} ${at}`).toBeCloseTo(value[at] ?? Number.NaN, 8);
      });
    else expect(own, name).toEqual(value);
  }
  return apart;
}

/** 24 V behind 0.1 Ω feeds a converter to 12 V at 90 %, which feeds 0.5 Ω of run and a load. */
function throughConverter(options: {
  load: "power" | "resistance";
  value: number;
  isolated?: boolean;
  minInputV?: number;
  maxOutputA?: number;
  inputOhm?: number;
}) {
  const builder = new NetworkBuilder();
  const minus = builder.node();
  const plus = builder.node();
  builder.source(plus, minus, 24, 0.1);
  const inPlus = builder.along(plus, options.inputOhm ?? 0.1);
  const inMinus = builder.along(minus, 0.05);
  const outPlus = builder.node();
  const outMinus = options.isolated === true ? builder.node() : inMinus;
  const { minInputV = 0, maxOutputA = Infinity } = options;
  builder.converter({
    inPlus,
    inMinus,
    outPlus,
    outMinus,
    outputV: 12,
    efficiency: 0.9,
    standbyW: 0.5,
    minInputV,
    maxOutputA,
  });
  builder.load(builder.along(outPlus, 0.5), outMinus, options.load, options.value);
  return builder.build();
}

test.each([true, false])(
  "isolated %s: input power is output power over efficiency, plus standby",
  (isolated) => {
    const network = throughConverter({ load: "resistance", value: 5.5, isolated });
    const { converterInA, converterOutA, method, status } = solveNetwork(network);
    expect(method).toBe("radial");
    expect(status).toBe("solved");
    expect(converterOutA[0]).toBeCloseTo(2, 9);
    const askedW = (12 * 2) / 0.9 + 0.5;
    const loopOhm = 0.25;
    const inV = (24 + Math.sqrt(24 ** 2 - 4 * loopOhm * askedW)) / 2;
    expect(converterInA[0]).toBeCloseTo(askedW / inV, 9);
  },
);

test("it is off when its input is under its least voltage, and everything behind it is dead", () => {
  const network = throughConverter({ load: "resistance", value: 5.5, minInputV: 23.9, isolated: true });
  const { convertersOff, converterInA, converterOutA, loadV, underVoltage } = solveNetwork(network);
  expect(convertersOff).toEqual([0]);
  expect(converterInA[0]).toBe(0);
  expect(converterOutA[0]).toBe(0);
  expect(loadV[0]).toBe(0);
  expect(underVoltage).toEqual([0]);
});

test("one asked for more than it gives is reported", () => {
  expect(
    solveNetwork(throughConverter({ load: "resistance", value: 5.5, maxOutputA: 1.9 })).convertersOver,
  ).toEqual([0]);
  expect(
    solveNetwork(throughConverter({ load: "resistance", value: 5.5, maxOutputA: 2 })).convertersOver,
  ).toEqual([]);
});

test("a collapse behind the converter names the load, one before it names the converter", () => {
  const behind = solveNetwork(throughConverter({ load: "power", value: 100 }));
  expect(behind).toMatchObject({ status: "collapsed", weakestLoad: 0 });
  expect(behind.carriedShare).toBeCloseTo(12 ** 2 / (4 * 0.5) / 100, 6);
  const before = solveNetwork(throughConverter({ load: "power", value: 20, inputOhm: 10 }));
  expect(before).toMatchObject({ status: "collapsed", weakestConverter: 0 });
  const resistive = throughConverter({ load: "resistance", value: 0.5, inputOhm: 10 });
  const without = solveNetwork(resistive);
  expect(without).toMatchObject({ status: "collapsed", carriedShare: 0, weakestConverter: 0 });
  expect(brokenLaws(resistive, without)).toEqual([]);
});

test("low voltage at the input lifts the collapse by turning the converter off", () => {
  const { status, convertersOff } = solveNetwork(
    throughConverter({ load: "power", value: 20, inputOhm: 10, minInputV: 18 }),
  );
  expect(status).toBe("solved");
  expect(convertersOff).toEqual([0]);
});

test("it idles where a battery holds its output higher, and wakes where it does not", () => {
  const besideBattery = (emfV: number) => {
    const builder = new NetworkBuilder();
    const minus = builder.node();
    const plus = builder.node();
    builder.source(plus, minus, 24, 0.1);
    const house = builder.node();
    builder.converter({
      inPlus: plus,
      inMinus: minus,
      outPlus: house,
      outMinus: minus,
      outputV: 13,
      standbyW: 1,
    });
    const post = builder.along(house, 0.05);
    builder.source(post, minus, emfV, 0.05);
    builder.load(post, minus, "current", 5);
    return builder.build();
  };
  const idle = solveNetwork(besideBattery(14));
  expect(idle.converterOutA[0]).toBe(0);
  expect(Number(idle.converterInA[0]) * Number(idle.nodeV[1])).toBeCloseTo(1, 9);
  expect(idle.sourceA[1]).toBeCloseTo(5, 9);
  const awake = solveNetwork(besideBattery(12.8));
  // (13 − V) / 0.05 + (12.8 − V) / 0.05 = 5
  expect(awake.converterOutA[0]).toBeCloseTo((13 - 12.775) / 0.05, 8);
  for (const network of [besideBattery(14), besideBattery(12.8)])
    expect(brokenLaws(network, solveNetwork(network))).toEqual([]);
});

test("two on the same posts: the higher one carries, the other takes over when it trips", () => {
  const builder = new NetworkBuilder();
  const minus = builder.node();
  const plus = builder.node();
  builder.source(plus, minus, 24, 0.1);
  const out = builder.node();
  const far = builder.along(plus, 3);
  builder.converter({ inPlus: plus, inMinus: minus, outPlus: out, outMinus: minus, outputV: 12 });
  builder.converter({
    inPlus: far,
    inMinus: minus,
    outPlus: out,
    outMinus: minus,
    outputV: 12.5,
    minInputV: 23,
  });
  builder.load(out, minus, "current", 3);
  const { converterOutA, convertersOff, nodeV } = solveNetwork(builder.build());
  expect(convertersOff).toEqual([1]);
  expect([...converterOutA]).toEqual([3, 0]);
  expect(nodeV[out]).toBeCloseTo(12, 12);
});

test("a ring of converters without a battery stays dead; a cascade from a battery works", () => {
  const builder = new NetworkBuilder();
  const [a, b] = [builder.node(), builder.node()];
  const [c, d] = [builder.node(), builder.node()];
  builder.converter({ inPlus: a, inMinus: b, outPlus: c, outMinus: d, outputV: 12 });
  builder.converter({ inPlus: c, inMinus: d, outPlus: a, outMinus: b, outputV: 24 });
  builder.load(c, d, "power", 5);
  const ring = solveNetwork(builder.build());
  expect(ring).toMatchObject({ status: "solved", convertersOff: [0, 1], underVoltage: [0] });
  builder.source(builder.along(a, 0.1), b, 24.5, 0.1);
  const fed = solveNetwork(builder.build());
  expect(fed.status).toBe("solved");
  expect(fed.loadV[0]).toBeCloseTo(12, 12);
});
