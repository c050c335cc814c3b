import { describe, expect, test } from "vitest";
import { geodesic } from "../../src/core/hull/faces/geodesic.js";
import { type Patch, patchThrough, pointAt, type Spot } from "../../src/core/hull/faces/patch.js";
import { dot, type Point, unit } from "../../src/core/hull/vector.js";

// Closed forms (computed): plane, cylinder and cone developed, sphere by its great circle.
// The haversine form and the check values are those of the reference table of surface distances (status computed).
// Tolerance: 0.1 mm on a 2 m patch, as asked of the tape; reached values are far smaller.
const tapeM = 1e-4;
const degrees = Math.PI / 180;

function grid(n: number, m: number, uTo: number, at: (u: number, v: number) => Point): Patch {
  const us = Array.from({ length: n }, (_, i) => (uTo * i) / (n - 1));
  const vs = Array.from({ length: m }, (_, j) => j / (m - 1));
  return patchThrough(
    us,
    vs,
    vs.map((v) => us.map((u) => at(u, v))),
  );
}

const plane = grid(5, 2, 2, (x, v) => [x, 0.3 * v, 0.9 * v + 0.1 * x]);
const cylinder = (radius: number, span: number, height: number) =>
  grid(33, 2, span, (phi, v) => [radius * Math.cos(phi), radius * Math.sin(phi), height * v]);
const cone = (alpha: number, span: number, s1: number, s2: number) =>
  grid(33, 2, span, (theta, v) => {
    const s = s1 + (s2 - s1) * v;
    return [
      s * Math.sin(alpha) * Math.cos(theta),
      s * Math.sin(alpha) * Math.sin(theta),
      s * Math.cos(alpha),
    ];
  });
const sphere = (radius: number, lon: number, lat0: number, lat1: number) =>
  grid(33, 33, lon, (l, v) => {
    const f = lat0 + (lat1 - lat0) * v;
    return [radius * Math.cos(f) * Math.cos(l), radius * Math.cos(f) * Math.sin(l), radius * Math.sin(f)];
  });

describe("tape on a surface against closed forms", () => {
  test("plane: the straight distance", () => {
    const [a, b]: [Spot, Spot] = [
      [0.1, 0.2],
      [1.9, 0.9],
    ];
    const straight = Math.hypot(1.8, 0.3 * 0.7, 0.9 * 0.7 + 0.1 * 1.8);
    expect(Math.abs(geodesic(plane, a, b).lengthM - straight)).toBeLessThan(1e-9);
  });

  test("cylinder of 0.25 m, a quarter turn and 0.4 m up: 0.560547 m (computed)", () => {
    const way = geodesic(cylinder(0.25, 90 * degrees, 0.4), [0, 0], [90 * degrees, 1]);
    expect(Math.abs(way.lengthM - Math.hypot((0.25 * Math.PI) / 2, 0.4))).toBeLessThan(tapeM);
    expect(way.lengthM).toBeCloseTo(0.560547, 5);
  });

  test.each([
    [0.8, 2.4, 0.6],
    [1.5, 1.3, 1.0],
    [3, 0.6, 0.8],
  ])("cylinder of %d m, %d rad, %d m, 2 m patch", (radius, span, height) => {
    const patch = cylinder(radius, span, height);
    for (const [a, b] of [
      [
        [0, 0],
        [span, 1],
      ],
      [
        [0.1, 0.9],
        [span * 0.7, 0.1],
      ],
      [
        [span, 0.2],
        [0.2, 0.3],
      ],
    ] as const) {
      const exact = Math.hypot(radius * (b[0] - a[0]), height * (b[1] - a[1]));
      expect(Math.abs(geodesic(patch, a, b).lengthM - exact)).toBeLessThan(tapeM);
    }
  });

  test("cone of half angle 30°, 1.0 to 1.5 m, 120° round: 1.322876 m (computed)", () => {
    const way = geodesic(cone(30 * degrees, 120 * degrees, 1, 1.5), [0, 0], [120 * degrees, 1]);
    expect(Math.abs(way.lengthM - 1.322876)).toBeLessThan(tapeM);
  });

  test("sphere of 1 m, a quarter of the equator: 1.570796 m; of 2 m, (30°, 10°) to (45°, 70°): 1.700648 m (computed)", () => {
    const quarter = geodesic(sphere(1, 90 * degrees, -0.5, 0.5), [0, 0.5], [90 * degrees, 0.5]);
    expect(Math.abs(quarter.lengthM - Math.PI / 2)).toBeLessThan(tapeM);
    const lat = (d: number) => (d * degrees - 0.3) / 0.7;
    const far = geodesic(sphere(2, 80 * degrees, 0.3, 1), [10 * degrees, lat(30)], [70 * degrees, lat(45)]);
    expect(Math.abs(far.lengthM - 1.700648)).toBeLessThan(tapeM);
  });

  test("the path on a sphere stays in the plane of the great circle, and so do its end directions", () => {
    const patch = sphere(2, 80 * degrees, 0.3, 1);
    const way = geodesic(patch, [0.2, 0.3], [1.2, 0.5]);
    const [a, b] = [pointAt(patch, [0.2, 0.3]), pointAt(patch, [1.2, 0.5])];
    const pole = unit([a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]);
    for (const point of way.points) expect(Math.abs(dot(point, pole))).toBeLessThan(2e-5);
    expect(Math.abs(dot(way.startDirection, pole))).toBeLessThan(2e-4);
    expect(Math.abs(dot(way.endDirection, pole))).toBeLessThan(2e-4);
  });

  test("the stated error is honest: it bounds the true one on a hard cylinder", () => {
    const patch = cylinder(0.25, 170 * degrees, 1);
    const way = geodesic(patch, [0, 0], [170 * degrees, 1]);
    const exact = Math.hypot(0.25 * 170 * degrees, 1);
    // the grid itself is a spline through the cylinder, good to some micrometres
    expect(Math.abs(way.lengthM - exact)).toBeLessThan(way.errorM + 1e-5);
  });
});
