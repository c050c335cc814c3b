import { expect, test } from "vitest";
import { followOuting } from "../../../src/core/energy/follow.js";
import type { OutingBattery } from "../../../src/core/energy/outing.js";
import type { BatteryTrace, OutingFigures } from "../../../src/core/energy/types.js";
import { always, house, outing, type Piece } from "./outings.js";

const trace = (figures: OutingFigures, id = "house"): BatteryTrace => {
  const found = figures.batteries.find(({ battery }) => battery === id);
  if (found === undefined) throw new Error(`no trace of ${id}`);
  return found;
};
const lamp = (amps: number, more: Partial<Piece> = {}): Piece => ({
  id: "lamp",
  law: "current",
  value: amps,
  ...more,
});

test("constant current, no rate effect: hours to reserve and to empty are capacity over current", () => {
  const figures = followOuting(outing(30, [lamp(2)]));
  const followed = trace(figures);
  expect(followed.reserveAtH).toBeCloseTo(25 / 2, 9);
  expect(followed.cutOffAtH).toBeCloseTo(25, 9);
  expect(followed.usedAh).toBeCloseTo(50, 9);
  expect(followed.chargeLeft).toBe(0);
  expect(figures.hoursToReserve).toEqual([{ battery: "house", hours: expect.closeTo(12.5, 6) }]);
});

test("twice the rated current at k = 1.2: capacity falls as Peukert's rated-hour form says", () => {
  const figures = followOuting(outing(30, [lamp(5)], [{ ...house, peukertExponent: 1.2 }]));
  // t = 20 · (50 / (5 · 20))^1.2 = 8.7055 h
  expect(trace(figures).cutOffAtH).toBeCloseTo(8.7055, 4);
});

test("what the gear used is what left the battery, and the integral of the trace", () => {
  const pieces: Piece[] = [
    {
      id: "a",
      law: "power",
      value: 12,
      wireOhm: 0.2,
      periods: [{ fromH: 0.3, toH: 4, duty: 1, level: 0.5 }],
    },
    { id: "b", law: "current", value: 3, periods: [{ fromH: 1, toH: 6, duty: 0.1, level: 1 }] },
    { id: "c", law: "power", value: 30, periods: [{ fromH: 2, toH: 3, duty: 0.5, level: 1 }] },
  ];
  const figures = followOuting(outing(6, pieces, [{ ...house, peukertExponent: 1.15 }]));
  const { usedAh, points } = trace(figures);
  const byGear = figures.uses.reduce((sum, use) => sum + use.usedAh, 0);
  expect(byGear).toBeCloseTo(usedAh, 9);
  let integral = 0;
  for (const [index, point] of points.entries()) {
    const before = points[index - 1];
    // each point carries the current that flowed up to it
    if (before) integral += point.currentA * (point.atH - before.atH);
  }
  expect(integral).toBeCloseTo(usedAh, 9);
  expect(figures.uses.map(({ gear }) => gear)).toEqual(["a", "b", "c"]);
  expect(figures.uses.find(({ gear }) => gear === "b")?.usedAh).toBeCloseTo(1.5, 9);
});

test("constant power: the stretches of charge agree with a fine integration to 0.1 %", () => {
  const watts = 60;
  const input = outing(6, [{ id: "motor", law: "power", value: watts }]);
  const { chargeLeft } = trace(followOuting(input));
  const solvesUsed = input.solves.length;
  // second method: a thousand steps, each solved at its own voltage with this battery's tables by hand
  let charge = 1;
  const rows = [12.85, 12.6, 12.3, 12.0, 11.8];
  const ohmAt = (s: number): number =>
    s >= 0.5 ? 0.008 * (1.3 - 0.6 * (s - 0.5)) : 0.008 * (1.3 + ((0.5 - s) / 0.3) * 0.7);
  for (let step = 0; step < 6000; step += 1) {
    const row = Math.min(3, Math.floor((1 - charge) * 4));
    const [high = 0, low = 0] = [rows[row], rows[row + 1]];
    const emfV = low + (charge - (0.75 - row * 0.25)) * 4 * (high - low);
    const ohm = ohmAt(charge);
    const amps = (emfV - Math.sqrt(emfV ** 2 - 4 * ohm * watts)) / (2 * ohm);
    charge -= (amps * 0.001) / 50;
  }
  expect(Math.abs((1 - chargeLeft) / (1 - charge) - 1)).toBeLessThan(0.001);
  expect(solvesUsed).toBeLessThan(25);
});

test("a pump on its float switch uses its share, and is judged while it runs", () => {
  const pump: Piece = {
    id: "pump",
    law: "current",
    value: 6,
    wireOhm: 0.3,
    minV: 11,
    periods: [{ fromH: 0, toH: 5, duty: 2 / 60, level: 1 }],
  };
  const figures = followOuting(outing(5, [lamp(1), pump]));
  expect(figures.uses.find(({ gear }) => gear === "pump")?.usedAh).toBeCloseTo(1, 9);
  // 12.85 V − 7 A · 8 mΩ − 6 A · 0.3 Ω is just under 11 V from the very start
  expect(figures.brownOuts[0]).toMatchObject({ gear: "pump", atH: 0, minV: 11 });
  expect(figures.brownOuts[0]?.voltageV).toBeCloseTo(12.85 - 7 * 0.008 - 1.8, 6);
});

test("a battery stops at the charge at which all that may come on pulls it down, whatever share of the time it is on", () => {
  const weak = { ...house, internalOhm: 0.05, cutOffV: 11.8 };
  const left = [1, 0.5, 0.1].map((duty) => {
    const periods = [{ fromH: 0, toH: 200, duty, level: 1 }];
    return trace(followOuting(outing(200, [{ id: "pump", law: "current", value: 10, periods }], [weak])));
  });
  const [always] = left;
  expect(always?.chargeLeft).toBeGreaterThan(0.1);
  // one charge, reached the later the less it is on
  for (const [index, { chargeLeft, cutOffAtH }] of left.entries()) {
    expect(chargeLeft).toBeCloseTo(always?.chargeLeft ?? 0, 9);
    expect(cutOffAtH).toBeCloseTo((always?.cutOffAtH ?? 0) * ([1, 2, 10][index] ?? 0), 9);
  }
});

test("the moment gear browns out is where its own voltage crosses its limit", () => {
  const figures = followOuting(outing(20, [lamp(2, { wireOhm: 0.25, minV: 11.8 })]));
  const [out] = figures.brownOuts;
  if (out === undefined) throw new Error("it must brown out");
  // 11.8 V at the lamp is 12.3 V at the posts: half charge, and a little before for the internal resistance
  // emf(s) = 12.3 + (s − 0.5) · 1.2; R(s) = 8 mΩ · (1.3 − 0.6 (s − 0.5)) give s where emf − 2 R = 12.3
  const share = (0.016 * 1.3) / (1.2 + 0.016 * 0.6);
  expect(out.atH).toBeCloseTo(((1 - (0.5 + share)) * 50) / 2, 6);
});

test("gear behind a converter does not follow the battery down", () => {
  const figures = followOuting(outing(20, [lamp(2, { wireOhm: 0.25, minV: 11.8, regulated: true })]));
  // the network says so at every solve; volt-for-volt shifts are left out
  expect(figures.brownOuts[0]?.atH ?? 0).toBeGreaterThan(10);
});

test("a lithium battery stops at its cut-off voltage before it is empty, and its gear with it", () => {
  const lithium: OutingBattery = { ...house, chemistry: "lifepo4", reserveShare: 0.2, cutOffV: 11.2 };
  const figures = followOuting(outing(30, [lamp(2, { minV: 9 })], [lithium]));
  const followed = trace(figures);
  expect(followed.reserveAtH).toBeCloseTo(20, 9);
  // 10.4 V + s · 16 V − 2 A · R reaches 11.2 V a little above s = 0.05
  expect(followed.chargeLeft).toBeGreaterThan(0.05);
  expect(followed.chargeLeft).toBeLessThan(0.053);
  expect(followed.points.at(-1)?.terminalV).toBeCloseTo(11.2, 6);
  expect(figures.brownOuts).toEqual([{ gear: "lamp", atH: followed.cutOffAtH, voltageV: 0, minV: 9 }]);
});

test("24 V is two blocks", () => {
  const drive: OutingBattery = { ...house, id: "drive", nominalV: 24, cutOffV: 21 };
  const figures = followOuting(outing(10, [lamp(2, { battery: "drive" })], [drive]));
  expect(trace(figures, "drive").points[0]?.terminalV).toBeCloseTo(2 * 12.85 - 2 * 0.008, 9);
});

test("two batteries go their own ways", () => {
  const drive: OutingBattery = { ...house, id: "drive", nominalV: 24, capacityAh: 20, cutOffV: 21 };
  const figures = followOuting(
    outing(10, [lamp(1), { ...lamp(4), id: "motor", battery: "drive" }], [house, drive]),
  );
  expect(trace(figures, "drive").cutOffAtH).toBeCloseTo(5, 9);
  expect(trace(figures).usedAh).toBeCloseTo(10, 9);
  expect(trace(figures).cutOffAtH).toBeUndefined();
});

test("a short outing repeated: hours until the reserve over many of them", () => {
  const periods = [{ fromH: 0, toH: 1, duty: 1, level: 1 }];
  const figures = followOuting(outing(4, [lamp(1, { periods })], [{ ...house, startCharge: 0.8 }]));
  // 25 Ah at 1 Ah an outing: 24 whole outings of 4 h, then the first hour of the next
  expect(figures.hoursToReserve[0]?.hours).toBeCloseTo(24 * 4 + 1, 6);
});

test("repeated to the reserve agrees with one outing long enough to reach it", () => {
  const motor: Piece = { id: "motor", law: "power", value: 40 };
  const battery = { ...house, peukertExponent: 1.15 };
  const long = trace(followOuting(outing(20, [motor], [battery]))).reserveAtH ?? Number.NaN;
  for (const lastsH of [0.5, 3, long * 0.95]) {
    const [repeated] = followOuting(outing(lastsH, [motor], [battery])).hoursToReserve;
    // one straight line against the bends of the resting curve
    expect(Math.abs((repeated?.hours ?? Number.NaN) / long - 1)).toBeLessThan(0.003);
  }
});

test("an outing that uses next to nothing is taken on past two hundred of them", () => {
  const periods = [{ fromH: 0, toH: 1, duty: 1, level: 1 }];
  const [repeated] = followOuting(outing(1, [lamp(0.01, { periods })])).hoursToReserve;
  expect(repeated?.hours).toBeCloseTo(25 / 0.01, 6);
});

test("nothing on: nothing used, nothing reached, no hours promised", () => {
  const figures = followOuting(outing(10, [lamp(1, { periods: [] })]));
  expect(trace(figures)).toMatchObject({ usedAh: 0, chargeLeft: 1 });
  expect(trace(figures).reserveAtH).toBeUndefined();
  expect(figures.hoursToReserve).toEqual([]);
  expect(figures.uses).toEqual([]);
});

test("an empty battery stops at once and feeds nothing", () => {
  const input = outing(10, [lamp(1, { minV: 9 })], [{ ...house, startCharge: 0 }]);
  const figures = followOuting(input);
  expect(trace(figures)).toMatchObject({ cutOffAtH: 0, reserveAtH: 0, usedAh: 0 });
  expect(figures.brownOuts).toEqual([{ gear: "lamp", atH: 0, voltageV: 0, minV: 9 }]);
});

test("a tiny battery under a great load ends in bounded steps", () => {
  const input = outing(24, [lamp(100)], [{ ...house, capacityAh: 1e-6, cutOffV: 0 }]);
  const followed = trace(followOuting(input));
  expect(followed.cutOffAtH).toBeCloseTo(1e-8, 12);
  expect(followed.points.length).toBeLessThan(200);
});

test("batteries that charge each other at a bound do not hang it", () => {
  const input = outing(10, [lamp(1)], [house]);
  let solves = 0;
  const seesaw = followOuting({
    ...input,
    draw: ({ batteries }) => {
      solves += 1;
      const amps = (batteries[0]?.emfV ?? 0) > 12.5 ? 5 : -5;
      return { batteryA: [amps], gearA: [0], gearV: [12] };
    },
  });
  expect(trace(seesaw).chargeLeft).toBeGreaterThan(0.4);
  expect(trace(seesaw).points.length).toBeLessThan(20_000);
  expect(solves).toBeLessThan(200);
});

test("charge that comes back is counted less its losses, and stops at full", () => {
  const input = outing(10, [lamp(1)], [{ ...house, startCharge: 0.9 }]);
  const charged = followOuting({ ...input, draw: () => ({ batteryA: [-1], gearA: [0], gearV: [13] }) });
  expect(trace(charged).chargeLeft).toBe(1);
  const briefly = followOuting({
    ...input,
    lastsH: 1,
    draw: () => ({ batteryA: [-1], gearA: [0], gearV: [13] }),
  });
  expect(trace(briefly).chargeLeft).toBeCloseTo(0.9 + 0.88 / 50, 9);
});

test("forty pieces of gear over ten hours cost few solves", () => {
  const pieces = Array.from({ length: 40 }, (_, index): Piece => {
    const periods =
      index % 10 === 0
        ? [{ fromH: 0, toH: 10, duty: 0.05, level: 1 }]
        : index % 3 === 0
          ? always(10)
          : [{ fromH: (index % 4) * 2, toH: (index % 4) * 2 + 3, duty: 1, level: 1 }];
    return {
      id: `gear ${index}`,
      law: "power",
      value: 3 + (index % 5),
      battery: index % 2 ? "house" : "drive",
      periods,
    };
  });
  const drive: OutingBattery = {
    ...house,
    id: "drive",
    chemistry: "lifepo4",
    nominalV: 24,
    capacityAh: 100,
    cutOffV: 22.4,
  };
  const input = outing(10, pieces, [{ ...house, capacityAh: 120 }, drive]);
  const figures = followOuting(input);
  expect(figures.batteries.every(({ usedAh }) => usedAh > 10)).toBe(true);
  expect(input.solves.length).toBeLessThan(90);
});

test("more changes than a page has lines are followed on a grid", () => {
  const periods = Array.from({ length: 5000 }, (_, index) => ({
    fromH: index / 1000,
    toH: index / 1000 + 0.0005,
    duty: 1,
    level: 1,
  }));
  const { usedAh, points } = trace(followOuting(outing(5, [lamp(2, { periods })])));
  expect(points.length).toBeLessThan(3000);
  // half of the time at 2 A, blurred by the grid to all or nothing of each step
  expect(usedAh).toBeLessThanOrEqual(10);
});

test.each<[string, Partial<OutingBattery>]>([
  ["capacity", { capacityAh: 0 }],
  ["capacity that is no number", { capacityAh: Number.NaN }],
  ["resistance", { internalOhm: 0 }],
  ["charge", { startCharge: 1.2 }],
  ["reserve", { reserveShare: -0.1 }],
  ["exponent", { peukertExponent: 0.9 }],
  ["age", { ageYears: -1 }],
  ["temperature", { temperatureC: Number.NaN }],
])("impossible %s is the caller's mistake", (_name, change) => {
  expect(() => followOuting(outing(1, [lamp(1)], [{ ...house, ...change }]))).toThrow(RangeError);
});

test("impossible outings are the caller's mistake", () => {
  expect(() => followOuting(outing(0, [lamp(1)]))).toThrow("must last");
  expect(() => followOuting(outing(1, [lamp(1, { battery: "nowhere" })]))).toThrow(RangeError);
  expect(() =>
    followOuting(outing(1, [lamp(1, { periods: [{ fromH: 1, toH: 0, duty: 1, level: 1 }] })])),
  ).toThrow("must end after");
});
