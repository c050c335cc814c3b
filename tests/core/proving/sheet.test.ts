import { describe, expect, test } from "vitest";
import { benchOf } from "../../../src/core/proving/bench-network.js";
import { againstSheet } from "../../../src/core/proving/sheet/against-sheet.js";
import { testSheet } from "../../../src/core/proving/sheet/sheet.js";
import { example } from "./boats.js";

const samples = 1000;

describe.each(["tender", "utility", "launch"])("%s", (name) => {
  const { figures, bench } = example(name);
  const sheet = testSheet(bench, figures, { samples });
  const tests = sheet.flatMap((section) => section.tests);

  test("every line has an id of its own, and every band holds what is expected", () => {
    expect(new Set(tests.map(({ id }) => id)).size).toBe(tests.length);
    for (const { id, band } of tests) {
      if (!band) continue;
      expect(band.low, id).toBeLessThanOrEqual(band.expected);
      expect(band.high, id).toBeGreaterThanOrEqual(band.expected);
    }
  });

  test("what a meter shows is told against its line at once: as expected, too low, too high", () => {
    for (const one of tests) {
      const { band, ratingA, leastOhm, mostV, id } = one;
      const limits = [band?.high, ratingA, mostV].filter((limit) => limit !== undefined);
      for (const limit of limits) {
        expect(againstSheet(one, limit), id).toBe("within");
        expect(againstSheet(one, limit + Math.abs(limit) / 50 + 0.01), id).toBe("high");
      }
      if (ratingA !== undefined) expect(againstSheet(one, ratingA / 2), id).toBe("low");
      if (leastOhm !== undefined) expect(againstSheet(one, leastOhm / 2), id).toBe("low");
      if (limits.length === 0 && leastOhm === undefined) expect(againstSheet(one, 1), id).toBeUndefined();
    }
    const volts = tests.filter(({ test: kind, band }) => kind === "loaded voltage" && band);
    expect(volts.length).toBeGreaterThan(0);
    for (const one of volts) expect(againstSheet(one, 1), one.id).toBe("low");
  });

  test("every circuit with gear is proven loaded, on both legs, with its current, and every fuse is read", () => {
    const ways = sheet.filter(({ kind }) => kind === "way");
    const circuits = new Set(
      figures.plan.gear.flatMap(({ name: gear }) => figures.plan.circuitOf.get(gear) ?? []),
    );
    expect(new Set(ways.map(({ at }) => at))).toEqual(circuits);
    for (const way of ways) {
      const kinds = new Set(way.tests.map((one) => one.test));
      for (const kind of ["current", "drop out", "drop back"] as const)
        expect([...kinds], way.id).toContain(kind);
      expect(kinds.has("loaded voltage") || kinds.has("pump running"), way.id).toBe(true);
    }
    const read = tests.filter((one) => one.test === "rating").map(({ at }) => at);
    for (const { id, of } of figures.protection) if (circuits.has(of)) expect(read).toContain(id);
  });

  test("the leads of a charger aboard are looked at for polarity, and their fuses read", () => {
    const { plan, protection } = figures;
    const of = (charger: string) =>
      plan.runs
        .filter(({ from, to }) => from.place === charger || to.place === charger)
        .map((run) => run.name);
    const looked = tests.filter((one) => one.test === "colours").map(({ at }) => at);
    const read = tests.filter((one) => one.test === "rating");
    for (const { name: charger } of plan.chargers) {
      expect(looked.includes(charger), charger).toBe(of(charger).length > 0);
      for (const device of protection.filter((one) => of(charger).includes(one.of)))
        expect(read.find(({ at }) => at === device.id)?.ratingA, device.id).toBe(device.ratingA);
    }
  });

  test("what is lost on both wires and what arrives make up the supply's voltage", () => {
    for (const way of sheet.filter(({ kind }) => kind === "way")) {
      const out = way.tests.filter((one) => one.test === "drop out");
      for (const { at, probe, band } of out) {
        const same = way.tests.filter((one) => one.at === at && String(one.probe?.on) === String(probe?.on));
        const expected = (...kinds: string[]) =>
          same.find((one) => kinds.includes(one.test))?.band?.expected ?? Number.NaN;
        const sum =
          (band?.expected ?? Number.NaN) + expected("drop back") + expected("loaded voltage", "pump running");
        const supplies = [...bench.numbers.sources.emfV, ...bench.numbers.converters.outputV];
        // the battery's own inner resistance takes the rest
        expect(
          supplies.some((v) => sum <= v + 1e-3 && sum > 0.95 * v),
          way.id,
        ).toBe(true);
      }
    }
  });

  test("the same plan gives the same sheet", () => {
    expect(testSheet(bench, figures, { samples })).toEqual(sheet);
  });

  test("the order of work finds its lines by their section", () => {
    const ids = sheet.map(({ id }) => id);
    for (const battery of figures.plan.batteries) expect(ids).toContain(`battery / ${battery.name}`);
    for (const id of ["insulation", "continuity", "polarity"]) expect(ids).toContain(id);
  });
});

test("a battery that was read at rest narrows the bands of voltage", () => {
  const { figures, circuit, bench } = example("utility");
  const rested = benchOf(figures.plan, circuit, { restingV: new Map([["house", 12.8]]) });
  const width = (sheet: ReturnType<typeof testSheet>) => {
    const band = sheet.flatMap(({ tests }) => tests).find((one) => one.test === "loaded voltage")?.band;
    return (band?.high ?? 0) - (band?.low ?? 0);
  };
  const wide = width(testSheet(bench, figures, { samples }));
  const known = { resting: new Set(["house"]) };
  expect(width(testSheet(rested, figures, { samples, known }))).toBeLessThan(wide / 2);
});

test("a metal hull is proven against each pole", () => {
  const { figures, bench } = example("utility");
  const tests = testSheet(bench, figures, { samples }).flatMap((section) => section.tests);
  expect(tests.map(({ test: kind }) => kind)).toContain("insulation to hull");
  expect(figures.plan.source.craft.hullMaterial).toBe("aluminium");
});
