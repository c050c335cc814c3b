import { describe, expect, test } from "vitest";
import { immersedUnder } from "../../src/core/hull/float/immersed.js";
import { simpsonWeight } from "../../src/core/hull/float/simpson.js";
import { type CutHull, cutHull } from "../../src/core/hull/float/stations.js";
import { formFrom, type LinePoints } from "../../src/core/hull/form/form.js";
import { sectionAt } from "../../src/core/hull/form/section.js";
import type { Point } from "../../src/core/hull/vector.js";

/*
 * A hull that was built and towed, with its offsets and its form coefficients in one public report: F. H. Todd, "Series 60:
 * Methodical Experiments with Models of Single-Screw Merchant Ships", David Taylor Model Basin, US Navy, Report 1712 (July 1963,
 * published), table of offsets and coefficients of the parent with block coefficient 0.60 (model 4210).
 * The report's scan was not read itself: the table was read in two transcriptions made apart (public repositories
 * `binoyp/BSRA_Series60`, `andreacoraddu/series60`). They agree in all figures under the waterline but two: station 0 at 0.5 of the
 * draught, where one has a plain misprint, and station 8 at the base (0.831 against 0.810; the former is taken, of no weight here).
 * No small open boat with offsets and hydrostatics in a public document was found.
 */
const heights = [0, 0.075, 0.25, 0.5, 0.75, 1, 1.25, 1.5];
/** Half-breadth of each waterline at its widest, as a share of the ship's. */
const widest = [0.71, 0.866, 0.985, 1, 1, 1, 1, 1];
/** Station from the bow, half-breadths as shares of the waterline's widest, and the section's area under water as a share of the largest. */
const table = `
0    0     0     0     0     0     0     0.020 0.042  0
0.5  0.009 0.032 0.042 0.041 0.043 0.051 0.076 0.120  0.042
1    0.013 0.064 0.082 0.087 0.090 0.102 0.133 0.198  0.085
1.5  0.019 0.095 0.126 0.141 0.148 0.160 0.195 0.278  0.135
2    0.024 0.127 0.178 0.204 0.213 0.228 0.270 0.360  0.192
3    0.055 0.196 0.294 0.346 0.368 0.391 0.440 0.531  0.323
4    0.134 0.314 0.436 0.502 0.535 0.562 0.607 0.683  0.475
5    0.275 0.466 0.589 0.660 0.691 0.718 0.754 0.804  0.630
6    0.469 0.630 0.733 0.802 0.824 0.841 0.862 0.889  0.771
7    0.666 0.779 0.854 0.906 0.917 0.926 0.936 0.946  0.880
8    0.831 0.898 0.935 0.971 0.977 0.979 0.981 0.982  0.955
9    0.945 0.964 0.979 0.996 1     1     1     1      0.990
10   1     1     1     1     1     1     1     1      1
11   0.965 0.982 0.990 1     1     1     1     1      0.996
12   0.882 0.922 0.958 0.994 1     1     1     1      0.977
13   0.767 0.826 0.892 0.962 0.987 0.994 0.997 1      0.938
14   0.622 0.701 0.781 0.884 0.943 0.975 0.990 0.999  0.863
15   0.463 0.560 0.639 0.754 0.857 0.937 0.977 0.994  0.750
16   0.309 0.413 0.483 0.592 0.728 0.857 0.933 0.975  0.609
17   0.168 0.267 0.330 0.413 0.541 0.725 0.844 0.924  0.445
18   0.065 0.152 0.193 0.236 0.321 0.536 0.709 0.834  0.268
18.5 0.032 0.102 0.130 0.156 0.216 0.425 0.626 0.769  0.187
19   0.014 0.058 0.076 0.085 0.116 0.308 0.530 0.686  0.109
19.5 0.010 0.020 0.020 0.022 0.033 0.193 0.418 0.579  0.040
20   0     0     0     0     0     0.082 0.270 0.420  0.004`;
const stations = table
  .trim()
  .split("\n")
  .map((row) => row.trim().split(/\s+/).map(Number));

// As a boat of 7.5 m: length over beam 7.5, beam over draught 2.5, as the parents have it. Forward is towards larger x.
const [lengthM, beamM, draughtM] = [7.5, 1, 0.4];
const xOf = (station: number) => lengthM * (1 - station / 20);
const aftFirst = stations.toReversed();
const line = (name: string, points: Point[], knuckle: boolean, above: "flat" | "round"): LinePoints => ({
  name,
  points,
  knuckle,
  above,
});
const { form, problems } = formFrom([
  line(
    "keel",
    aftFirst.map(([station = 0]): Point => [xOf(station), 0, 0]),
    true,
    "flat",
  ),
  ...heights.map((height, j) =>
    line(
      `waterline ${height}`,
      aftFirst.map(
        (row): Point => [
          xOf(row[0] ?? 0),
          ((row[j + 1] ?? 0) * (widest[j] ?? 0) * beamM) / 2,
          height * draughtM,
        ],
      ),
      j === 0,
      j < heights.length - 1 ? "round" : "flat",
    ),
  ),
]);
if (!form) throw new Error(JSON.stringify(problems));
const hull = cutHull(form, false, 121);
const floating = { up: [0, 0, 1] as Point, levelM: draughtM };

/** A part of the hull, from one of its sections to another. */
function part(from: number, to: number): CutHull {
  const count = to - from + 1;
  const spacing = (hull.xM[1] ?? 0) - (hull.xM[0] ?? 0);
  return {
    ...hull,
    xM: hull.xM.slice(from, to + 1),
    weightM: Float64Array.from({ length: count }, (_, i) => simpsonWeight(count, i) * spacing),
    sections: hull.sections.slice(from, to + 1),
  };
}

/** Area of one section under water [m²]: the hull as thick as 1 m of it. */
function sectionM2(station: number): number {
  if (form === undefined) return Number.NaN;
  const half = sectionAt(form, xOf(station), 12);
  const around = Float64Array.from([...half.flat(), ...half.toReversed().flatMap(([y, z]) => [-y, z])]);
  const slice = { ...hull, xM: Float64Array.of(0), weightM: Float64Array.of(1), sections: [around] };
  return immersedUnder(slice, floating).volumeM3;
}

const under = immersedUnder(hull, floating);
const [aft, fore] = [immersedUnder(part(0, 60), floating), immersedUnder(part(60, 120), floating)];
const largestM2 = sectionM2(10);

describe("Series 60, block coefficient 0.60, against the report's own coefficients", () => {
  // Three digits are given, and eight waterlines leave the turn of the bilge to whoever draws it: 0.5 %.
  test.each([
    ["block coefficient", under.volumeM3 / (lengthM * beamM * draughtM), 0.6],
    ["prismatic coefficient", under.volumeM3 / (largestM2 * lengthM), 0.614],
    ["largest section", largestM2 / (beamM * draughtM), 0.977],
    ["waterplane", under.planeAreaM2 / (lengthM * beamM), 0.706],
    ["prismatic coefficient of the fore body", fore.volumeM3 / ((largestM2 * lengthM) / 2), 0.581],
    ["prismatic coefficient of the after body", aft.volumeM3 / ((largestM2 * lengthM) / 2), 0.646],
    ["waterplane of the fore body", fore.planeAreaM2 / ((lengthM * beamM) / 2), 0.624],
    ["waterplane of the after body", aft.planeAreaM2 / ((lengthM * beamM) / 2), 0.788],
  ])("%s", (_, ours, published) => expect(Math.abs(ours / published - 1)).toBeLessThan(0.005));

  test.each(stations.map((row) => [row[0] ?? 0, row[9] ?? 0]))(
    "station %d: its section is %d of the largest",
    (station, share) => expect(Math.abs(sectionM2(station) / largestM2 - share)).toBeLessThan(0.004),
  );

  test("centre of buoyancy: where the report's column of section areas has it, to 0.2 % of the length", () => {
    // whole stations, Simpson's rule: 0, 1, 2 … 20
    const whole = stations.filter(([station = 0]) => Number.isInteger(station));
    const areas = whole.map((row) => row[9] ?? 0);
    const moments = whole.map((row) => (row[9] ?? 0) * xOf(row[0] ?? 0));
    const published = simpsonBySums(moments) / simpsonBySums(areas);
    expect(Math.abs(under.centre[0] - published) / lengthM).toBeLessThan(0.002);
  });
});

/** h/3·(1, 4, 2, …) in numbers of its own, the spacing left out. */
function simpsonBySums(ordinates: readonly number[]): number {
  return ordinates.reduce((sum, one, i) => sum + one * (i % 20 === 0 ? 1 : i % 2 === 1 ? 4 : 2), 0);
}

test("waterplane by Simpson's rule over the table's own half-breadths, whole stations: the same area to 0.3 %", () => {
  const whole = stations.filter(([station = 0]) => Number.isInteger(station)).map((row) => row[6] ?? 0);
  const areaM2 = (simpsonBySums(whole) * (lengthM / 20)) / 3;
  expect(Math.abs(areaM2 / under.planeAreaM2 - 1)).toBeLessThan(0.003);
});
