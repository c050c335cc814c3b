/**
 * Three invented boats, unlike the examples, worked out apart: nodal equations written down from the plan by hand and solved by numpy, hydrostatics of
 * the lines by scipy (polygons clipped by a plane, Simpson's rule), the shortest way over the ruled side by scipy's minimiser on a chain of points. Copper:
 * IEC 60228 class 5 and FAA AC 43.13-1B table 11-9; ampacity: ISO 10133 annex A (memory); k of short circuits: IEC 60949. Resting voltages, insides of
 * batteries, contacts and slack: common practice, no source (docs/methods). None of the project's own sums are used.
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { readPlan } from "../../src/core/plan/read.js";

const boat = (name: string) => {
  const read = readPlan(readFileSync(`tests/outside/by-hand/${name}.yaml`, "utf8"));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return workOutWhole(read.plan);
};
const boats = { utility24: boat("utility24"), kayak: boat("kayak"), dinghy: boat("dinghy") };

/** Current [A], voltage [V], drop out and back [V]. */
type Row = readonly [number, number, number];

const apart = {
  utility24: {
    nominal: {
      "side lights": [0.199792, 25.02598, 0.183282],
      "stern light": [0.120488, 24.89877, 0.31049],
      "work lamp 1": [0.729872, 24.66187, 0.54739],
      "work lamp 2": [0.730552, 24.63889, 0.570376],
      "bilge pump": [2.0, 24.69643, 0.512835],
      plotter: [0.79888, 25.03506, 0.190109],
    },
    "worst drop": {
      "side lights": [0.206147, 24.25448, 0.205871],
      "stern light": [0.124372, 24.12124, 0.339109],
      "work lamp 1": [0.754297, 23.86329, 0.597066],
      "work lamp 2": [0.755155, 23.83617, 0.624178],
      "bilge pump": [2.0, 23.886, 0.574355],
      plotter: [0.823956, 24.27313, 0.212205],
    },
    "highest voltage": {
      "side lights": [0.17705, 28.24056, 0.15908],
      "stern light": [0.106549, 28.15598, 0.24366],
      "work lamp 1": [0.643439, 27.97468, 0.42496],
      "work lamp 2": [0.643867, 27.95606, 0.443579],
      "bilge pump": [2.0, 27.92646, 0.473184],
      plotter: [0.708366, 28.23401, 0.165689],
    },
  },
  kayak: {
    nominal: {
      "pole light": [0.090704, 13.22984, 0.060406],
      sounder: [0.343039, 13.11803, 0.172219],
      "glow strip 1": [0.0454, 13.21585, 0.074404],
      "glow strip 2": [0.045428, 13.20779, 0.082455],
      "glow strip 3": [0.045457, 13.19924, 0.091007],
      "glow strip 4": [0.045466, 13.19656, 0.093692],
    },
    "worst drop": {
      "pole light": [0.101189, 11.85903, 0.071274],
      sounder: [0.383664, 11.72902, 0.201291],
      "glow strip 1": [0.050662, 11.84314, 0.087167],
      "glow strip 2": [0.050705, 11.83314, 0.097162],
      "glow strip 3": [0.050751, 11.82251, 0.1078],
      "glow strip 4": [0.050765, 11.81917, 0.111133],
    },
    "highest voltage": {
      "pole light": [0.088888, 13.50019, 0.057605],
      sounder: [0.336004, 13.3927, 0.165091],
      "glow strip 1": [0.044489, 13.48658, 0.071213],
      "glow strip 2": [0.044513, 13.47911, 0.078686],
      "glow strip 3": [0.04454, 13.47118, 0.086614],
      "glow strip 4": [0.044548, 13.46869, 0.089105],
    },
  },
  dinghy: {
    nominal: {
      "masthead light": [0.206391, 12.11295, 0.255833],
      "cabin lamp": [0.807881, 12.11821, 0.250568],
      socket: [5.144144, 11.66375, 0.705034],
      "float pump": [2.5, 12.06349, 0.305291],
    },
    "worst drop": {
      "masthead light": [0.211875, 11.79939, 0.276311],
      "cabin lamp": [0.787266, 11.80899, 0.266712],
      socket: [5.317939, 11.28257, 0.793137],
      "float pump": [2.5, 11.74351, 0.332191],
    },
    "highest voltage": {
      "masthead light": [0.176487, 14.16535, 0.233857],
      "cabin lamp": [0.943497, 14.15246, 0.246746],
      socket: [4.338963, 13.82819, 0.571016],
      "float pump": [2.5, 14.11759, 0.281619],
    },
  },
} as const satisfies Readonly<Record<string, Readonly<Record<string, Readonly<Record<string, Row>>>>>>;

describe.each(Object.entries(apart))("%s", (name, corners) => {
  const { figures } = boats[name as keyof typeof apart];
  test.each(Object.entries(corners))("every piece of gear, %s", (corner, rows) => {
    const gear = figures.corners.find((one) => one.name === corner)?.gear ?? [];
    for (const [id, [currentA, voltageV, dropV]] of Object.entries<Row>(rows)) {
      const there = gear.find((one) => one.id === id);
      expect(there?.currentA).toBeCloseTo(currentA, 5);
      expect(there?.voltageV).toBeCloseTo(voltageV, 4);
      expect(there?.dropV).toBeCloseTo(dropV, 5);
    }
  });
});

test("the largest short at each fuse and the least at its far end [A]", () => {
  const shorts = (of: keyof typeof boats) =>
    Object.fromEntries(
      boats[of].figures.protection.map(({ id, shortAtDeviceA, shortAtFarEndA }) => [
        id,
        [shortAtDeviceA, shortAtFarEndA],
      ]),
    );
  const utility = shorts("utility24");
  expect(utility["drive / main"]?.[0]).toBeCloseTo(1800, 6);
  expect(utility["house / main"]?.[0]).toBeCloseTo(1139.1844, 3);
  expect(utility["helm / work / fuse"]?.[0]).toBeCloseTo(616.4437, 3);
  expect(utility["helm / work / fuse"]?.[1]).toBeCloseTo(50.04068, 4); // with the 2 A fuse that is fitted, not one sized for more
  expect(utility["helm / pump / fuse"]?.[1]).toBeCloseTo(77.30665, 4);
  expect(utility["motor cable / fuse"]?.[0]).toBeCloseTo(1664.17403, 4);
  expect(utility["motor cable / fuse"]?.[1]).toBeCloseTo(570.60958, 4);
  const dinghy = shorts("dinghy");
  expect(dinghy["cuddy panel / bilge / fuse"]?.[0]).toBeCloseTo(543.76773, 4);
  expect(dinghy["cuddy panel / lights / fuse"]?.[0]).toBeCloseTo(507.41516, 4);
  expect(dinghy["cuddy panel / bilge / fuse"]?.[1]).toBeCloseTo(98.89772, 4);
  expect(dinghy["deck lead / fuse"]?.[1]).toBeCloseTo(125.92298, 4);
});

test("ampacities: 16 mm² of 90 °C in 60 °C air 100 A · 0.82, 1 mm² beside it 18 A · 0.82", () => {
  const allowed = new Map(boats.utility24.figures.sizes.choices.map(({ id, ampacityA }) => [id, ampacityA]));
  expect(allowed.get("motor cable")).toBeCloseTo(82, 9);
  expect(allowed.get("stern trunk")).toBeCloseTo(14.76, 9);
  const motor = boats.utility24.figures.protection.find(({ id }) => id === "motor cable / fuse");
  // k = 226 √ln((234.5 + 160)/(234.5 + 90)), k²S²
  expect(motor?.conditions.find(({ condition }) => condition === "withstands-short")?.limit).toBeCloseTo(
    2_554_076,
    0,
  );
});

test("the time to fill: bulk at the charger's current, then the ampere-hour law [h]", () => {
  const hours = (of: keyof typeof boats, charger: string) =>
    boats[of].figures.charging.find((one) => one.charger === charger);
  for (const [of, name, capacityAh, chargeA, tauH, efficiency] of [
    ["dinghy", "shed charger", 35 * 0.88 * 0.94, 4, 1, 0.8],
    ["dinghy", "deck panel", 35 * 0.88 * 0.94, (20 * 0.7) / 14.4, 1, 0.8],
    ["utility24", "dock charger", 40 * 0.8 * 0.85, 8, 0.6, 0.88],
  ] as const) {
    const there = hours(of, name);
    const lackingAh = (capacityAh * (1 - (there?.fromCharge ?? Number.NaN))) / efficiency;
    const bulkH = (lackingAh - tauH * chargeA) / chargeA;
    expect(there?.hours).toBeCloseTo(bulkH + tauH * Math.log(chargeA / (0.02 * capacityAh)), 6);
  }
});

test("how the utility boat lies: 478.6 kg in sea water", () => {
  const rest = boats.utility24.hull.float?.rest;
  if (rest === undefined) throw new Error("she floats");
  expect(rest.floating.heelDeg).toBeCloseTo(0.933, 2); // to starboard, where the mate sits
  expect(rest.floating.trimDeg).toBeCloseTo(1.781, 2); // by the bow
  expect(rest.freeboardM).toBeCloseTo(0.4852, 3);
  const heights = boats.utility24.hull.holes.map(({ afloat }) => afloat?.heightM ?? Number.NaN);
  expect(heights[0]).toBeCloseTo(0.44235, 3);
  expect(heights[1]).toBeCloseTo(0.41273, 3);
});

test("where the work lamp is marked on the side, and the tapes to it over the surface [m]", () => {
  const [side] = boats.utility24.hull.faces.find(({ name }) => name === "side")?.sides ?? [];
  const mark = side?.marks[0]?.mark;
  for (const [axis, placeM] of [1.251005, 0.909085, 0.560128].entries())
    expect(mark?.at?.[axis]).toBeCloseTo(placeM, 5);
  const exactM = (from: string) => mark?.readings.find((one) => one.from === from)?.exactM;
  expect(exactM("ring")).toBeCloseTo(0.955643, 5);
  expect(exactM("chine mark")).toBeCloseTo(0.476838, 5);
  // spreads of tape, graduation and reference together, crossing at 78.44°
  const sigmaM = Math.sqrt(0.0008 ** 2 + 0.001 ** 2 / 12 + 0.0005 ** 2);
  const half = ((78.4434 / 2) * Math.PI) / 180;
  expect(mark?.ellipse?.majorM).toBeCloseTo(sigmaM / (Math.SQRT2 * Math.sin(half)), 6);
  expect(mark?.ellipse?.minorM).toBeCloseTo(sigmaM / (Math.SQRT2 * Math.cos(half)), 6);
});

test("what is cut, and what it costs: 6970 mm from the offcut of 7 m less 25 mm, 9240 mm from 10 m at 1.60", () => {
  const kind = boats.utility24.layout.cuts.kinds.find((one) => one.kind.startsWith("1 mm², 2 cores"));
  expect(kind?.price?.minor).toBe(1600);
  const used = kind?.plan?.lengths.map(({ source, cuts }) => [
    source,
    cuts.reduce((sum, { lengthMm }) => sum + lengthMm, 0),
  ]);
  expect(used).toEqual([
    ["offcut", 6970],
    ["by length", 9240],
  ]);
});
