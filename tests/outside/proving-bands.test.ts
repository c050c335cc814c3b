/**
 * Bands against the law of propagation of uncertainty (JCGM 100:2008, equation 10, from memory: u² = Σ (∂f/∂x)²·u²(x)), with the
 * derivatives of a divider written out by hand: V = E·R / (R + r), where r is all there is between the battery's inside and the heater.
 * A normal spread cut at three has 99 % of itself within 2.49 standard deviations, a sum of several within nearly 2.58.
 */
import { expect, test } from "vitest";
import { bandsOf } from "../../src/core/proving/bands.js";
import { polesOf } from "../../src/core/proving/sheet/places.js";
import { tolerances } from "../../src/core/reference/tolerances.js";
import { boatOf } from "../core/proving/boats.js";

const plan = (length: string, watts: number) => `
skiffloom: 1
name: heater
rules: iso
batteries:
  b:
    chemistry: agm
    voltage: 12 V
    capacity: 80 Ah
    internal resistance: 8 mΩ
    short circuit: 1500 A
    main: {device: bolted fuse, rating: 60 A, interrupts: 2000 A, from source: 100 mm}
panels: {p: {ways: {heat: {switch: {rating: 20 A}, fuse: {rating: 15 A}}}}}
gear: {heater: {role: heating, draws: ${144 / watts} Ω, behaves as: resistance, works: 8 V to 16 V}}
runs:
  feed: {from: b, to: p, length: 1 m, size: 10 mm2, joint: crimped ring}
  lead: {from: p / heat, to: heater, length: ${length}, size: 4 mm2, joint: crimped ring}
`;

test.each([
  ["4 m", 60],
  ["12 m", 100],
  ["1 m", 20],
])("a lead of %s and a heater of %d W", (length, watts) => {
  const { bench } = boatOf(plan(length, watts));
  const [at, against] = polesOf(bench, "heater");
  const on = ["heater"];
  const [voltage, rest] = bandsOf(
    bench,
    [
      { kind: "voltage", at, against, on },
      { kind: "voltage", at: "b +", against: "b -", on: [] },
    ],
    { meter: false, seed: 5 },
  );
  const E = bench.numbers.sources.emfV[0] ?? 0;
  const inside = bench.numbers.sources.ohm[0] ?? 0;
  const parts = bench.parts.flat();
  const r = inside + parts.reduce((sum, { ohm }) => sum + ohm, 0);
  const R = 144 / watts;
  expect(voltage?.expected).toBeCloseTo((E * R) / (R + r), 6);
  const perOhm = (E * R) / (R + r) ** 2;
  const copperOhm = parts.reduce((sum, part) => sum + (part.kind === "conductor" ? part.ohm : 0), 0);
  const sigma = Math.hypot(
    (R / (R + r)) * tolerances.restingV,
    perOhm * inside * tolerances.internalOhmFactor,
    perOhm * copperOhm * 0.00393 * tolerances.copperK,
    ((E * r) / (R + r) ** 2) * R * tolerances.gearShare.resistance,
    ...parts.map((part) => {
      if (part.kind === "conductor")
        return perOhm * part.ohm * Math.hypot(tolerances.conductorShare, tolerances.lengthShare);
      return perOhm * part.ohm * (part.kind === "joint" ? tolerances.jointFactor : tolerances.contactFactor);
    }),
  );
  const half = ((voltage?.high ?? 0) - (voltage?.low ?? 0)) / 2;
  // 4 %: the scatter of a half per cent quantile of 10,000 samples, and the higher orders left out
  expect(half / sigma).toBeGreaterThan(2.49 * 0.96);
  expect(half / sigma).toBeLessThan(2.58 * 1.04);
  const restHalf = ((rest?.high ?? 0) - (rest?.low ?? 0)) / 2;
  expect(Math.abs(restHalf / (2.49 * tolerances.restingV) - 1)).toBeLessThan(0.04);
});

test("fewer than a hundred samples are refused", () => {
  const { bench } = boatOf(plan("2 m", 40));
  const probe = { kind: "voltage", at: "b +", against: "b -", on: [] } as const;
  expect(() => bandsOf(bench, [probe], { samples: 50 })).toThrow(RangeError);
});
