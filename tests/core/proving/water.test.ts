import { describe, expect, test } from "vitest";
import { batteryCurrentA, batteryLeft, modelOf } from "../../../src/core/proving/water/battery-left.js";
import { waterCard } from "../../../src/core/proving/water/card.js";
import { chargeReading } from "../../../src/core/reference/spares.js";
import { example } from "./boats.js";

const { figures, bench } = example("utility");
const { plan } = figures;
const [battery] = plan.batteries;
if (!battery) throw new Error("the example has a battery");

describe("hours left from a voltage", () => {
  const model = modelOf(battery, plan);

  test("at rest the charge is the resting curve's, and hours are charge over use by Peukert's law", () => {
    const left = batteryLeft(plan, battery, { voltageV: model.emfV(0.8), currentA: 0, useA: 2 });
    expect(left.charge).toBeCloseTo(0.8, 6);
    const byHand = (charge: number) =>
      ((charge - battery.reserveShare) * model.capacityAh) / model.effectiveA(2);
    expect(left.hoursToReserve).toBeCloseTo(byHand(0.8), 6);
    // at rest a voltage tells charge to a tenth of full (common practice, no source)
    expect(left.hoursLow).toBeCloseTo(byHand(0.7), 6);
    expect(left.hoursHigh).toBeCloseTo(byHand(0.9), 6);
  });

  test("under load the drop inside the battery is added back", () => {
    const voltageV = model.emfV(0.7) - 8 * model.ohm(0.7);
    const left = batteryLeft(plan, battery, { voltageV, currentA: 8, useA: 8 });
    expect(left.charge).toBeCloseTo(0.7, 6);
    // and under load to a fifth
    expect([left.chargeLow, left.chargeHigh].map((charge) => charge.toFixed(6))).toEqual([
      "0.500000",
      "0.900000",
    ]);
  });

  test("what was on gives the current: three lamps draw half of what six draw, nothing draws nothing", () => {
    const lamps = plan.gear.filter(({ group }) => group === "coaming lamp").map(({ name }) => name);
    const all = batteryCurrentA(bench, battery.name, lamps);
    expect(all).toBeGreaterThan(0.4);
    expect(batteryCurrentA(bench, battery.name, lamps.slice(0, 3)) / all).toBeCloseTo(0.5, 2);
    expect(batteryCurrentA(bench, battery.name, [])).toBeCloseTo(0, 6);
    expect(() => batteryCurrentA(bench, "none", [])).toThrow(RangeError);
  });

  test("a little over full, a little under empty, and nothing drawn", () => {
    const full = batteryLeft(plan, battery, { voltageV: model.emfV(1) + 0.01, currentA: 0, useA: 1 });
    expect(full.charge).toBe(1);
    const empty = batteryLeft(plan, battery, { voltageV: model.emfV(0) - 0.01, currentA: 0, useA: 1 });
    expect(empty).toMatchObject({ charge: 0, hoursToReserve: 0, hoursToEmpty: 0 });
    expect([full.beyond, empty.beyond]).toEqual([undefined, undefined]);
    const idle = batteryLeft(plan, battery, { voltageV: 12.6, currentA: 0, useA: 0 });
    expect(idle.hoursToReserve).toBe(Number.POSITIVE_INFINITY);
  });

  test.each([
    ["above full", 14.4],
    ["above full", 124],
    ["below empty", 9],
    ["below empty", 1.24],
  ])("%s: %d V at rest tells no hours", (beyond, voltageV) => {
    const left = batteryLeft(plan, battery, { voltageV, currentA: 0, useA: 1 });
    expect(left.beyond).toBe(beyond);
    const { beyond: _, ...figures } = left;
    expect(Object.values(figures).every(Number.isNaN)).toBe(true);
  });

  test.each([0, 8])(
    "with %d A on, a voltage is told as far outside the curve as it may be off, and no further",
    (currentA) => {
      const off = currentA === 0 ? chargeReading.restingShare : chargeReading.loadedShare;
      const shown = (charge: number) => model.emfV(charge) - currentA * model.ohm(charge);
      const beyondAt = (voltageV: number) =>
        batteryLeft(plan, battery, { voltageV, currentA, useA: 1 }).beyond;
      const highest = shown(1) + (shown(1) - shown(1 - off));
      const lowest = shown(0) - (shown(off) - shown(0));
      expect(beyondAt(highest - 0.001)).toBeUndefined();
      expect(beyondAt(highest + 0.001)).toBe("above full");
      expect(beyondAt(lowest + 0.001)).toBeUndefined();
      expect(beyondAt(lowest - 0.001)).toBe("below empty");
    },
  );

  test("every row of the card lies on the curve, so that its hours are told", () => {
    const rows = waterCard(figures).batteries.flatMap((one) => one.rows.flatMap(({ left }) => left));
    expect(rows.length).toBeGreaterThan(5);
    expect(rows.filter(({ beyond }) => beyond !== undefined)).toEqual([]);
  });

  test("refuses what is no number", () => {
    const ask = (voltageV: number, currentA: number, useA: number) => () =>
      batteryLeft(plan, battery, { voltageV, currentA, useA });
    expect(ask(Number.NaN, 0, 1)).toThrow(RangeError);
    expect(ask(12, -1, 1)).toThrow(RangeError);
    expect(ask(12, 0, Number.NaN)).toThrow(RangeError);
  });
});

describe("the card", () => {
  const card = waterCard(figures);

  test("names every way with gear, its fuse, and that the bilge way stays live", () => {
    const circuits = new Set(plan.gear.flatMap(({ name }) => plan.circuitOf.get(name) ?? []));
    expect(new Set(card.ways.map(({ circuit }) => circuit))).toEqual(circuits);
    expect(card.ways.every(({ fuses }) => fuses.length > 0)).toBe(true);
    const live = card.ways.filter(({ alwaysLive }) => alwaysLive).map(({ circuit }) => circuit);
    expect(live).toEqual(["helm / bilge"]);
  });

  test("as many fuses in use as there are, none on a spare way, and spares for each rating", () => {
    const fuses = figures.protection.filter(({ device, spare }) => device !== "breaker" && !spare);
    expect(card.spareFuses.reduce((sum, { inUse }) => sum + inUse, 0)).toBe(fuses.length);
    expect(card.spareFuses.every(({ carry }) => carry >= 1)).toBe(true);
  });

  test("navigation lights and the bilge pump are never told to be turned off; the heaviest comes first", () => {
    const list = card.batteries[0]?.turnOff ?? [];
    const groups = list.map(({ group }) => group);
    expect(groups).not.toContain("side lights");
    expect(groups).not.toContain("bilge pump");
    expect(groups[0]).toBe("power socket");
    const amps = list.map(({ currentA }) => currentA);
    expect(amps).toEqual([...amps].sort((a, b) => b - a));
  });

  test("hours fall with the voltage and end at the reserve", () => {
    const hours = card.batteries[0]?.rows.map(({ left }) => left[0]?.hoursToReserve ?? 0) ?? [];
    expect(hours).toEqual([...hours].sort((a, b) => b - a));
    expect(hours.length).toBeGreaterThan(3);
    expect(hours.at(-1)).toBeCloseTo(0, 6);
  });
});
