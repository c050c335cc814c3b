import { expect, test } from "vitest";
import { type ChargingInput, chargingTime, hoursToFull } from "../../../src/core/energy/charging.js";

const shore: ChargingInput = {
  charger: "shore",
  kind: "mains",
  battery: "house",
  chemistry: "agm",
  nominalV: 12,
  capacityAh: 50,
  fromCharge: 0.5,
  outputA: 10,
  absorptionV: 14.4,
  temperatureC: 20,
};

test("bulk, then taper: the same as adding up the current in small steps", () => {
  const [lackingAh, currentA, tau, tailA] = [28.4, 10, 0.6, 1];
  let [lacks, hours] = [lackingAh, 0];
  const stepH = 1e-4;
  while (Math.min(currentA, lacks / tau) > tailA) {
    lacks -= Math.min(currentA, lacks / tau) * stepH;
    hours += stepH;
  }
  expect(Math.abs(hoursToFull(lackingAh, currentA, tau, tailA) / hours - 1)).toBeLessThan(1e-3);
});

test("losses of the chemistry are put in too", () => {
  const { hours, state } = chargingTime(shore);
  // 25 Ah / 0.88 = 28.41 Ah lacking; bulk to 6 Ah lacking, then 0.6 h · ln(10 A / 1 A)
  expect(state).toBe("works");
  expect(hours).toBeCloseTo((25 / 0.88 - 6) / 10 + 0.6 * Math.log(10), 9);
});

test("a charger weaker than the tail current never tapers", () => {
  expect(hoursToFull(20, 0.5, 1, 1)).toBeCloseTo((20 - 1) / 0.5, 9);
});

test("more current never takes longer, a fuller battery never longer", () => {
  let [slow, empty] = [Infinity, Infinity];
  for (let amps = 1; amps <= 30; amps += 1) {
    const hours = hoursToFull(30, amps, 0.6, 1);
    expect(hours).toBeLessThanOrEqual(slow);
    slow = hours;
  }
  for (let charge = 0; charge <= 1; charge += 0.05) {
    const { hours = Number.NaN } = chargingTime({ ...shore, fromCharge: charge });
    expect(hours).toBeLessThanOrEqual(empty);
    empty = hours;
  }
});

test("a full battery needs no time", () => {
  expect(chargingTime({ ...shore, fromCharge: 1 }).hours).toBe(0);
});

test("a solar panel counts in days of its sun hours", () => {
  const { outputA: _outputA, ...without } = shore;
  const sun = chargingTime({ ...without, kind: "solar", outputW: 30, sunHoursPerDay: 4 });
  expect(sun.days).toBeCloseTo((sun.hours ?? Number.NaN) / 4, 9);
  // 30 W · 0.7 / 14.4 V = 1.46 A for 28.4 Ah: about five days
  expect(sun.days).toBeGreaterThan(4.5);
  expect(sun.days).toBeLessThan(5.2);
});

test("lithium is not charged below its least temperature, whatever the charger does", () => {
  const lithium = { ...shore, chemistry: "lifepo4", stopsBelowC: -10 } as const;
  expect(chargingTime({ ...lithium, temperatureC: -1 }).state).toBe("too cold");
  expect(chargingTime({ ...lithium, temperatureC: 1 }).state).toBe("works");
  expect(chargingTime({ ...shore, temperatureC: -1 }).state).toBe("works");
  expect(chargingTime({ ...shore, temperatureC: 4, stopsBelowC: 5 }).state).toBe("too cold");
});

const { outputA: _outputA, ...unknownOutput } = shore;
test.each<[string, ChargingInput]>([
  ["output", unknownOutput],
  ["hours of sun", { ...unknownOutput, kind: "solar", outputW: 30 }],
  ["temperature", { ...shore, temperatureC: Number.NaN }],
  ["voltage that would fill it", { ...shore, absorptionV: 12.8 }],
])("without a known %s it is unchecked and no hours are shown", (_name, input) => {
  const { state, hours } = chargingTime(input);
  expect(state).toBe("unchecked");
  expect(hours).toBeUndefined();
});

test.each<Partial<ChargingInput>>([
  { capacityAh: 0 },
  { fromCharge: 2 },
  { outputA: 0 },
  { absorptionV: -1 },
])("impossible %o is the caller's mistake", (change) => {
  expect(() => chargingTime({ ...shore, ...change })).toThrow(RangeError);
});
