import { expect, test } from "vitest";
import { solveNetwork } from "../../../../src/core/circuit/solve/solve.js";
import type { NetworkNumbers } from "../../../../src/core/circuit/solve/types.js";
import { NetworkBuilder } from "../../../laws/network-builder.js";

function good(): NetworkNumbers {
  const builder = new NetworkBuilder();
  const minus = builder.node();
  const plus = builder.node();
  builder.source(plus, minus, 12, 0.1);
  builder.load(builder.along(plus, 0.1), minus, "power", 5, 9);
  const outPlus = builder.node();
  builder.converter({ inPlus: plus, inMinus: minus, outPlus, outMinus: minus, outputV: 5 });
  return builder.build();
}

type Spoiling = (network: NetworkNumbers) => NetworkNumbers;
const real = (x: number): Float64Array => Float64Array.of(x);
const cases: [string, Spoiling, RegExp][] = [
  ["no node count", (n) => ({ ...n, nodeCount: Number.NaN }), /node count must be a whole number/],
  ["node out of range", (n) => ({ ...n, nodeCount: 3 }), /row 0 must be a node from 0 to 2, got 3/],
  [
    "negative node",
    (n) => ({ ...n, branches: { ...n.branches, from: Int32Array.of(-1) } }),
    /branch from of row 0/,
  ],
  [
    "branch of 0 Ω",
    (n) => ({ ...n, branches: { ...n.branches, ohm: real(0) } }),
    /branch ohm of row 0 must be above zero/,
  ],
  ["branch of NaN", (n) => ({ ...n, branches: { ...n.branches, ohm: real(Number.NaN) } }), /got NaN/],
  [
    "ragged table",
    (n) => ({ ...n, branches: { ...n.branches, to: new Int32Array(0) } }),
    /branch to must have 1 rows, got 0/,
  ],
  ["EMF of NaN", (n) => ({ ...n, sources: { ...n.sources, emfV: real(Number.NaN) } }), /source emfV/],
  ["source of 0 Ω", (n) => ({ ...n, sources: { ...n.sources, ohm: real(0) } }), /source ohm/],
  [
    "unknown law",
    (n) => ({ ...n, loads: { ...n.loads, law: Uint8Array.of(3) } }),
    /load law of row 0 must be 0, 1 or 2, got 3/,
  ],
  ["negative power", (n) => ({ ...n, loads: { ...n.loads, value: real(-1) } }), /load value/],
  ["power without end", (n) => ({ ...n, loads: { ...n.loads, value: real(Infinity) } }), /load value/],
  [
    "load of 0 Ω",
    (n) => ({ ...n, loads: { ...n.loads, law: Uint8Array.of(2), value: real(0) } }),
    /load value/,
  ],
  ["least voltage of NaN", (n) => ({ ...n, loads: { ...n.loads, minV: real(Number.NaN) } }), /load minV/],
  [
    "efficiency of 0",
    (n) => ({ ...n, converters: { ...n.converters, efficiency: real(0) } }),
    /converter efficiency/,
  ],
  [
    "efficiency above 1",
    (n) => ({ ...n, converters: { ...n.converters, efficiency: real(1.1) } }),
    /above 0, at most 1, got 1.1/,
  ],
  [
    "output of 0 V",
    (n) => ({ ...n, converters: { ...n.converters, outputV: real(0) } }),
    /converter outputV/,
  ],
];

test("the question these are spoilt from is a good one", () => {
  expect(solveNetwork(good()).status).toBe("solved");
});

test.each(cases)("%s is refused with what was required and what came", (_, spoil, message) => {
  expect(() => solveNetwork(spoil(good()))).toThrow(RangeError);
  expect(() => solveNetwork(spoil(good()))).toThrow(message);
});
