import { expect, test } from "vitest";
import { StateSolver } from "../../../src/core/proving/state-solver.js";
import { NetworkBuilder } from "../../laws/network-builder.js";

const kneeV = 6;

/**
 * Voltages at one load on a supply behind a resistance, which is another at each solve [Ω]; each begins where the one before ended.
 * @param soundV At the load while the boat was sound.
 */
function voltagesAt(
  law: "power" | "current",
  value: number,
  soundV: number,
  ohms: readonly number[],
  emfV = 12,
) {
  const build = new NetworkBuilder();
  const [minus, post] = [build.node(), build.node()];
  const sourceOhm = 1e-3;
  build.source(post, minus, emfV, sourceOhm);
  const plus = build.along(post, 1);
  build.load(plus, minus, law, value);
  const network = build.build();
  const solver = new StateSolver(network, Float64Array.of(kneeV));
  const start = new Float64Array(network.nodeCount);
  start[post] = emfV;
  start[plus] = soundV;
  solver.restart(start);
  return ohms.map((ohm) => {
    solver.solve({
      ohm: Float64Array.of(ohm - sourceOhm),
      emfV: network.sources.emfV,
      sourceOhm: network.sources.ohm,
      loadValue: network.loads.value,
      outputV: network.converters.outputV,
    });
    expect(solver.settled).toBe(true);
    return (solver.nodeV[plus] ?? Number.NaN) - (solver.nodeV[minus] ?? Number.NaN);
  });
}

// all in closed form (computed): one load of P or I on E behind R
const upperV = (watts: number, ohm: number) => (12 + Math.sqrt(144 - 4 * watts * ohm)) / 2;

test("24 W behind 0.5 Ω: the upper of the two solutions", () =>
  expect(voltagesAt("power", 24, 11, [0.5])[0]).toBeCloseTo(upperV(24, 0.5), 6));
test("more than the supply can give is a resistance of knee²/P; mended, the load works as before, and again", () => {
  const found = voltagesAt("power", 24, 11, [6, 0.5, 6, 0.5]);
  const pulledV = (12 * 1.5) / (1.5 + 6);
  for (const [at, expectedV] of [pulledV, upperV(24, 0.5), pulledV, upperV(24, 0.5)].entries())
    expect(found[at]).toBeCloseTo(expectedV, 6);
});
test("a current that would need less than no volts: a resistance of knee/I", () =>
  expect(voltagesAt("current", 8, 11, [2])[0]).toBeCloseTo((12 * 0.75) / (0.75 + 2), 6));
test("a voltage far over the sound boat's is none of the load's own making: it draws like a resistance", () =>
  expect(voltagesAt("power", 24, 8, [0.5])[0]).toBeCloseTo((12 * 1.5) / (1.5 + 0.5), 6));
test("backwards it takes nothing", () =>
  expect(voltagesAt("power", 24, -12, [0.5], -12)[0]).toBeCloseTo(-12, 6));
