/**
 * Bands are sampled on a circuit with what nobody reads left out, many boats at a time. Each drawn boat must read as it does solved alone,
 * whole, and to the last digit; and the bands must be those of such a run.
 */
import { describe, expect, test } from "vitest";
import { loadLaw } from "../../../src/core/circuit/solve/types.js";
import { bandsOf } from "../../../src/core/proving/bands.js";
import type { Bench } from "../../../src/core/proving/bench-network.js";
import { fromScale } from "../../../src/core/proving/meter-error.js";
import type { Metered } from "../../../src/core/proving/probe.js";
import { DrawnBoats } from "../../../src/core/proving/sampling/drawn-boats.js";
import { cutNormal, Draws, factorQuantiles } from "../../../src/core/proving/sampling/draws.js";
import { SampledState } from "../../../src/core/proving/sampling/sampled-state.js";
import { polesOf } from "../../../src/core/proving/sheet/places.js";
import { testSheet } from "../../../src/core/proving/sheet/sheet.js";
import { spreadOf } from "../../../src/core/proving/spread.js";
import { StateGroup } from "../../../src/core/proving/state-group.js";
import { tolerances } from "../../../src/core/reference/tolerances.js";
import { boatOf, example } from "./boats.js";

/** One drawn boat as a change of the sound one, which the solver of whole circuits takes. */
function shownAlone(bench: Bench, probes: readonly Metered[], boats: DrawnBoats, k: number): number[] {
  const { branches, sources, converters, loads } = bench.numbers;
  const outputV = converters.outputV.map((v, c) => boats.outputV[c]?.[k] ?? v);
  const drawn = { ...bench, numbers: { ...bench.numbers, converters: { ...converters, outputV } } };
  const group = new StateGroup(drawn, probes, [...probes.keys()], []);
  const shown = new Float64Array(probes.length);
  const dead = probes[0]?.kind === "ohm";
  const each = (columns: readonly Float64Array[], of: (drawn: number, row: number) => number) =>
    new Map(
      columns.flatMap((column, row) => (column.length > 0 ? [[row, of(column[k] ?? 0, row)] as const] : [])),
    );
  group.predict(
    {
      extraOhm: each(boats.ohm, (ohm, row) => ohm - (branches.ohm[row] ?? 0)),
      emfV: each(boats.emfV, (v, s) => v - (sources.emfV[s] ?? 0)),
      sourceExtraOhm: dead
        ? new Map()
        : each(boats.sourceFactor, (by, s) => (by - 1) * (sources.ohm[s] ?? 0)),
      load: each(dead ? boats.restingFactor : boats.loadFactor, (by, row) =>
        dead || loads.law[row] === loadLaw.resistance ? 1 / by : by,
      ),
    },
    shown,
  );
  return probes.map(({ kind }, i) => fromScale(kind, shown[i] ?? 0));
}

function statesOf(bench: Bench, figures: Parameters<typeof testSheet>[1]): Metered[][] {
  const probes = testSheet(bench, figures, { samples: 100 })
    .flatMap(({ tests }) => tests)
    .flatMap(({ probe, band }) => (probe && band && probe.kind !== "marking" ? [probe] : []));
  const keys = new Map<string, Metered[]>();
  for (const probe of probes) {
    const key = JSON.stringify([probe.kind === "ohm", probe.on]);
    keys.set(key, [...(keys.get(key) ?? []), probe]);
  }
  return [...keys.values()];
}

function boatsFor(bench: Bench, groups: readonly StateGroup[], count: number, seed: number): DrawnBoats {
  return new DrawnBoats(
    bench,
    spreadOf(bench),
    {},
    count,
    new Set(groups.flatMap(({ liveRows }) => liveRows)),
    new Set(groups.flatMap(({ part }) => [...part.loads])),
    new Draws(seed),
  );
}

describe.each(["tender", "utility", "launch"])("%s", (name) => {
  const { figures, bench } = example(name);

  test("every reading of the test sheet in twelve drawn boats reads as solved whole, alone", () => {
    const states = statesOf(bench, figures);
    const groups = states.map((probes) => new StateGroup(bench, probes, [...probes.keys()], []));
    const boats = boatsFor(bench, groups, 12, 3);
    boats.draw();
    states.forEach((probes, s) => {
      const group = groups[s];
      if (!group) return;
      const columns = probes.map(() => new Float64Array(12));
      new SampledState(bench, group, 12).read(boats, columns);
      for (let k = 0; k < 12; k++)
        shownAlone(bench, probes, boats, k).forEach((alone, i) => {
          const own = columns[i]?.[k] ?? Number.NaN;
          const probe = probes[i];
          const where = `${JSON.stringify(probe)} in boat ${k}: ${own} and ${alone}`;
          // under the last digit of a pocket meter on the range it is read on
          const digit = probe?.kind === "ohm" ? 1e-6 * (1 + alone) : Math.abs(alone) < 0.2 ? 1e-5 : 2e-4;
          expect(Math.abs(own - alone), where).toBeLessThan(digit);
        });
    });
  });
});

/** A band reckoned without any of the short cuts: each boat solved whole, alone, and what it shows put in order. */
function plainBand(bench: Bench, probe: Metered, samples: number, seed: number): readonly [number, number] {
  const group = new StateGroup(bench, [probe], [0], []);
  const boats = boatsFor(bench, [group], 100, seed);
  const shown: number[] = [];
  while (shown.length < samples) {
    boats.draw();
    for (let k = 0; k < 100; k++) shown.push(shownAlone(bench, [probe], boats, k)[0] ?? Number.NaN);
  }
  shown.sort((a, b) => a - b);
  return [shown[Math.round(0.005 * samples)] ?? 0, shown[Math.round(0.995 * samples)] ?? 0];
}

test("bands of a lamp's voltage, of its drop and of its current are those of a plain run", () => {
  const { figures, bench } = example("utility");
  const on = figures.plan.gear.filter(({ group }) => group === "coaming lamp").map(({ name }) => name);
  const [lamp = ""] = on.slice(-1);
  const { topology } = bench;
  const own = topology.gear.find(({ id }) => id === lamp);
  const point = (node = 0) => topology.nodes[node] ?? "";
  const probes: Metered[] = [
    { kind: "voltage", at: point(own?.plus), against: point(own?.minus), on },
    { kind: "voltage", at: "house +", against: point(own?.plus), on },
    { kind: "current", at: `${own?.circuit} / fuse`, on },
  ];
  const bands = bandsOf(bench, probes, { meter: false, seed: 11 });
  probes.forEach((probe, i) => {
    const [low, high] = plainBand(bench, probe, 2000, 12);
    const band = bands[i];
    const width = (band?.high ?? 0) - (band?.low ?? 0);
    expect(width).toBeGreaterThan(0);
    // a half per cent quantile of 2,000 of a spread cut at three sigmas scatters by some 5 % of the half width; four of those
    expect(Math.abs((band?.low ?? 0) - low) / width).toBeLessThan(0.1);
    expect(Math.abs((band?.high ?? 0) - high) / width).toBeLessThan(0.1);
  });
});

test("a wire that is taken off stays off in every drawn boat", () => {
  const { bench } = example("utility");
  const { topology } = bench;
  const wire = topology.branches.find(({ leg, id }) => leg === "out" && id.startsWith("lamp"));
  const point = (node = 0) => topology.nodes[node] ?? "";
  const [at, against] = [point(wire?.from), point(wire?.to)];
  const about = { kind: "ohm", at, against, on: [] } as const;
  const [off, joined] = bandsOf(bench, [{ ...about, lifted: [wire?.id ?? ""] }, about]);
  expect(joined?.high).toBeLessThan(2);
  expect(off?.low).toBeGreaterThan(1e6);
});

test("gear that is under its knee in some boats is solved alone there", () => {
  const { bench } = boatOf(`
skiffloom: 1
name: thin
rules: iso
batteries:
  b: {chemistry: agm, voltage: 12 V, capacity: 80 Ah, internal resistance: 8 mΩ, short circuit: 1500 A}
panels: {p: {ways: {far: {switch: {rating: 20 A}, fuse: {rating: 15 A}}}}}
gear: {radio: {role: electronics, draws: 30 W, works: 5 V to 16 V}}
runs:
  feed: {from: b, to: p, length: 1 m, size: 10 mm2, joint: crimped ring}
  lead: {from: p / far, to: radio, length: 36 m, size: 1 mm2, joint: crimped ring}
`);
  const [at, against] = polesOf(bench, "radio");
  const probe: Metered = { kind: "voltage", at, against, on: ["radio"] };
  const group = new StateGroup(bench, [probe], [0], []);
  const boats = boatsFor(bench, [group], 400, 5);
  boats.draw();
  const column = new Float64Array(400);
  new SampledState(bench, group, 400).read(boats, [column]);
  const alone = [...column.keys()].map((k) => shownAlone(bench, [probe], boats, k)[0] ?? Number.NaN);
  const under = alone.filter((v) => v < 6).length;
  expect(under).toBeGreaterThan(5);
  expect(under).toBeLessThan(395);
  const unlike = alone.filter((v, k) => !(Math.abs(v - (column[k] ?? 0)) < 1e-3));
  // at the very knee a load may come to rest on either side of it: seen in one of 400 boats
  expect(unlike.length).toBeLessThan(5);
  for (const v of unlike) expect(Math.abs(v - 6)).toBeLessThan(0.25);
});

test("what is drawn lies as the spread does", () => {
  // Φ(1.6449) = 0.95 and Φ(2.3263) = 0.99 (tables of the normal distribution); cut at three, 0.9973 of it is left
  const share = (below: number) => (below - 0.00135) / 0.9973;
  const at = (quantiles: Float64Array, of: number) => quantiles[Math.round(share(of) * 4096)] ?? 0;
  expect(Math.abs(at(cutNormal, 0.95) - 1.6449)).toBeLessThan(2e-3);
  expect(Math.abs(at(cutNormal, 0.99) - 2.3263)).toBeLessThan(5e-3);
  expect(cutNormal[0]).toBe(-3);
  expect(cutNormal[4096]).toBeCloseTo(3, 9);
  expect(factorQuantiles(tolerances.jointFactor)[2048]).toBeCloseTo(1, 9);
  const column = new Float64Array(100_000);
  new Draws(7).add(column, cutNormal, 1);
  const mean = column.reduce((sum, z) => sum + z, 0) / column.length;
  const square = column.reduce((sum, z) => sum + z * z, 0) / column.length;
  // four standard errors of 100,000; a normal cut at three has a variance of 0.9733
  expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(100_000));
  expect(Math.abs(square - 0.9733)).toBeLessThan((4 * Math.SQRT2) / Math.sqrt(100_000));
});
