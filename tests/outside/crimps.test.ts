import { describe, expect, test } from "vitest";
import { awgAreaMm2 } from "../../src/core/quantity/conductor-size.js";
import { barrelColours, pullTests, studHoles, tabSizes } from "../../src/core/reference/terminations.js";
import { barrelFor } from "../../src/core/terminations/barrel.js";
import { pullTest } from "../../src/core/terminations/pull-test.js";

const awg = (gauge: number) => ({ series: "awg", key: `${gauge} AWG`, areaMm2: awgAreaMm2(gauge) }) as const;
const metric = (areaMm2: number) => ({ series: "metric", key: `${areaMm2} mm²`, areaMm2 }) as const;

// UL and commercial pull-test minima as quoted in a connector maker's application specifications (published):
// pounds and newtons as printed.
describe("pull tests", () => {
  test.each([
    [26, 3, 13.4],
    [22, 8, 35.6],
    [20, 13, 57.9],
    [18, 20, 89],
    [16, 30, 133.5],
    [14, 50, 222.5],
    [12, 70, 311.5],
    [10, 80, 356],
    [8, 90, 400.5],
    [4, 140, 623],
    [2, 180, 801],
  ])("%i AWG: %d lbf, %d N", (gauge, lbf, newtons) => {
    const value = pullTest(awg(gauge));
    expect(value).toMatchObject({ lbf, ofThisSize: true });
    // printed with 4.45 N to the pound
    expect(Math.abs((value?.minN ?? 0) / newtons - 1)).toBeLessThan(0.005);
  });
  test("the row of 2/0 AWG contradicts itself: 300 lbf is 1334 N, 1235 N is printed", () => {
    const row = pullTests.rows.find((one) => one.gauge === "2/0 AWG");
    expect(row?.n).toBe(1235);
    const value = pullTest({ series: "awg", key: "2/0 AWG", areaMm2: awgAreaMm2(-1) });
    expect(value?.minN).toBeCloseTo(1334.5, 0);
  });
  // SAE AS7928 column of the same specification (published).
  test.each([
    ["22 AWG", 15],
    ["16 AWG", 50],
    ["10 AWG", 150],
  ])("%s: the harder column prints %d lbf", (gauge, lbf) => {
    expect(pullTests.rows.find((row) => row.gauge === gauge)).toMatchObject({ hardLbf: lbf });
  });
  // NASA-STD-8739.4, 13.8.2 (published): a pull in process not above 80 % of the minimum.
  test("how it is pulled", () => {
    const value = pullTest(awg(16));
    expect(value?.inUseN).toBeCloseTo(0.8 * (value?.minN ?? 0), 9);
  });
  test("a metric size takes the next thinner gauge, and never more than its copper", () => {
    expect(pullTest(metric(2.5))).toMatchObject({ gauge: "14 AWG", ofThisSize: false });
    expect(pullTest(metric(1.5))).toMatchObject({ gauge: "16 AWG" });
    expect(pullTest(metric(0.1))).toBeUndefined();
    expect(pullTest(metric(120))).toBeUndefined();
  });
});

// Terminal makers' colour tables (published): red 22 to 16 AWG or 0.5 to 1.5 mm², blue 16 to 14 or 1.5 to 2.5, yellow 12 to 10 or 4 to 6.
describe("colours of insulated terminals", () => {
  test.each([
    [22, "red"],
    [18, "red"],
    [16, "blue"],
    [14, "blue"],
    [12, "yellow"],
    [10, "yellow"],
  ])("%i AWG: %s", (gauge, colour) => {
    expect(barrelFor([awg(gauge)])).toMatchObject({ ok: true, barrel: { kind: "insulated", colour } });
  });
  test.each([
    [0.5, "red"],
    [1, "red"],
    [1.5, "red"],
    [2.5, "blue"],
    [4, "yellow"],
    [6, "yellow"],
  ])("%d mm²: %s", (area, colour) => {
    expect(barrelFor([metric(area)])).toMatchObject({ ok: true, barrel: { kind: "insulated", colour } });
  });
  test("the rows are those of the tables", () => {
    expect(barrelColours.rows.map((row) => [row.colour, row.smallestGauge, row.largestGauge])).toEqual([
      ["red", 22, 16],
      ["blue", 16, 14],
      ["yellow", 12, 10],
    ]);
  });
});

// A terminal maker's sheet "Computing circular mil area for terminals and splices" (published): an 18 AWG of 16 strands
// (1600) and a 16 AWG of 19 strands (2426) have 4026 circular mils together, the equivalent of one 14 AWG. The limits of
// the colours (2050, 5180, 13 100) are recalled, status memory.
describe("several wires in one barrel go by their total circular mils", () => {
  const ofCircularMils = (circularMils: number) =>
    ({ series: "awg", key: "as stranded", areaMm2: (circularMils * Math.PI * 0.0254 ** 2) / 4 }) as const;
  test("18 and 16 AWG together take the barrel of 14 AWG", () => {
    const [one] = [barrelFor([awg(14)])];
    expect(barrelFor([ofCircularMils(1600), ofCircularMils(2426)])).toEqual(one);
    expect(barrelFor([awg(18), awg(16)])).toEqual(one);
  });
  test.each([
    [[16, 16], "blue"],
    [[14, 20], "blue"],
    [[14, 18], "yellow"],
    [[14, 14, 14], "yellow"],
  ])("%j AWG: %s", (gauges, colour) => {
    expect(barrelFor(gauges.map(awg))).toMatchObject({ ok: true, barrel: { colour } });
  });
});

// IEC 61210 (recalled, status memory): tabs of 2.8, 4.8, 6.3 and 9.5 mm are 0.110, 0.187, 0.250 and 0.375 in.
test.each([
  ["2.8", 0.11],
  ["4.8", 0.187],
  ["6.3", 0.25],
  ["9.5", 0.375],
])("tab %s", (series, inches) => {
  const row = tabSizes.rows.find((one) => one.series === series);
  expect(Math.abs((row?.widthMm ?? 0) - inches * 25.4)).toBeLessThan(0.06);
});

// A terminal-sizing article (published): M6 stud, 6.4 mm hole. The others are common practice, no source.
test("M6 ring", () => {
  expect(studHoles.rows.find((row) => row.stud === "M6")?.holeMm).toBe(6.4);
  for (const row of studHoles.rows) expect(row.holeMm - row.studMm).toBeLessThanOrEqual(0.51);
});
