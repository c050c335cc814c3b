import { describe, expect, test } from "vitest";
import { edgeLengthM, edgeOf, nearestOn, shareAlong, squareOff } from "../../src/core/hull/faces/edge.js";
import { type CurvedFace, isOn, placeOn, twinOf, wayOn } from "../../src/core/hull/faces/face.js";
import { patchThrough, type Spot } from "../../src/core/hull/faces/patch.js";
import { shoot } from "../../src/core/hull/faces/shoot.js";
import { gaussCurvature, templateErrorM, unroll } from "../../src/core/hull/faces/unroll.js";
import { minus, mirrored, type Point, straightM } from "../../src/core/hull/vector.js";

// Closed forms (computed) of the cylinder, the developed cone, the sphere and a unit helicoid.
const degrees = Math.PI / 180;
const steps = (n: number, to: number) => Array.from({ length: n }, (_, i) => (to * i) / (n - 1));

function face(us: number[], vs: number[], at: (u: number, v: number) => Point): CurvedFace {
  return {
    kind: "curved",
    patch: patchThrough(
      us,
      vs,
      vs.map((v) => us.map((u) => at(u, v))),
    ),
  };
}
const cylinder = face(steps(33, 1.6), [0, 1], (phi, v) => [
  1.2 * Math.sin(phi),
  1.2 * Math.cos(phi),
  0.5 * v,
]);
const cone = face(steps(49, 120 * degrees), [0, 1], (theta, v) => {
  const s = 1 + 0.5 * v;
  return [(s / 2) * Math.cos(theta), (s / 2) * Math.sin(theta), s * Math.cos(30 * degrees)];
});
const sphere = face(steps(33, 1), steps(25, 1), (lon, lat) => [
  2 * Math.cos(0.5 * lat) * Math.cos(lon),
  2 * Math.cos(0.5 * lat) * Math.sin(lon),
  2 * Math.sin(0.5 * lat),
]);

describe("unrolling", () => {
  test("a cone of half angle 30° opens into a sector of 60° for 120° round it", () => {
    const { lower, upper, maxStrain } = unroll(cone.patch);
    const [a, b] = [lower[0], lower.at(-1)];
    const [c, d] = [upper[0], upper.at(-1)];
    if (!a || !b || !c || !d) throw new Error("no pattern");
    // chords of 60° at slant 1.0 and 1.5 m are 1.0 and 1.5 m; a tenth of a millimetre is the tape's
    expect(Math.abs(Math.hypot(b[0] - a[0], b[1] - a[1]) - 1)).toBeLessThan(1e-4);
    expect(Math.abs(Math.hypot(d[0] - c[0], d[1] - c[1]) - 1.5)).toBeLessThan(1e-4);
    expect(Math.abs(Math.hypot(d[0] - a[0], d[1] - a[1]) - 1.322876)).toBeLessThan(1e-4);
    expect(maxStrain).toBeLessThan(1e-6);
  });
  test("the straight line on the flat is the tape on the strip (second method)", () => {
    const { lower, upper } = unroll(cylinder.patch, 64);
    const [a, b] = [lower[8], upper[48]];
    if (!a || !b) throw new Error("no pattern");
    const flat = Math.hypot(b[0] - a[0], b[1] - a[1]);
    expect(Math.abs(flat - wayOn(cylinder, [0.2, 0], [1.2, 1]).lengthM)).toBeLessThan(1e-5);
  });
  test("a helicoid tells that it cannot be laid flat: K = −c²/(c² + r²)² (computed)", () => {
    const twisted = face(steps(33, 1), [0, 1], (t, v) => [t, v * Math.cos(t), v * Math.sin(t)]);
    expect(gaussCurvature(twisted.patch, [0.5, 0.5])).toBeCloseTo(-1 / (1 + 0.25) ** 2, 3);
    expect(unroll(twisted.patch).maxStrain).toBeGreaterThan(1e-5);
    expect(unroll(twisted.patch, 24).maxStretchM).toBeGreaterThan(1e-5);
  });
  test("a flat template of 0.1 m on a sphere of 2 m: the circle is 2πR·sin(r/R) long", () => {
    const lost = 2 * Math.PI * 0.1 - 2 * Math.PI * 2 * Math.sin(0.1 / 2);
    expect(templateErrorM(sphere.patch, [0.5, 0.5], 0.1)).toBeCloseTo(lost, 6);
  });
});

describe("going over a face", () => {
  test("straight ahead on a sphere is a great circle: both ways of measuring agree", () => {
    const from: Spot = [0.3, 0.3];
    const to = shoot(sphere.patch, from, [-0.2, 0.9, 0.4], 0.8);
    const chord = straightM(placeOn(sphere, from), placeOn(sphere, to));
    expect(Math.abs(2 * 2 * Math.asin(chord / 4) - 0.8)).toBeLessThan(1e-5);
    expect(Math.abs(wayOn(sphere, from, to).lengthM - 0.8)).toBeLessThan(1e-5);
  });
  test("along the edge of a cylinder by arc length, then square off it", () => {
    const upper = edgeOf(cylinder, "upper");
    expect(edgeLengthM(cylinder, upper, 0, 1)).toBeCloseTo(1.2 * 1.6, 6);
    const share = shareAlong(cylinder, upper, 0.25, 0.6);
    expect(share).toBeCloseTo(0.25 + 0.6 / (1.2 * 1.6), 6);
    const spot = squareOff(cylinder, upper, share, 0.15);
    expect(spot[0]).toBeCloseTo(1.6 * share, 6);
    expect(spot[1]).toBeCloseTo(1 - 0.15 / 0.5, 6);
    const near = nearestOn(cylinder, upper, spot);
    expect(near.share).toBeCloseTo(share, 4);
    expect(near.distanceM).toBeCloseTo(0.15, 6);
  });
  test("a twin holds mirrored places and equal distances", () => {
    const twin = twinOf(sphere);
    expect(
      minus(placeOn(twin, [0.2, 0.7]), mirrored(placeOn(sphere, [0.2, 0.7]))).every((d) => d === 0),
    ).toBe(true);
    expect(wayOn(twin, [0.1, 0.2], [0.9, 0.9]).lengthM).toBeCloseTo(
      wayOn(sphere, [0.1, 0.2], [0.9, 0.9]).lengthM,
      9,
    );
  });
  test("a spot beyond the edge is off the face, one on it is not", () => {
    expect(isOn(cylinder, [0.4, 1])).toBe(true);
    expect(isOn(cylinder, [0.4, 1.01])).toBe(false);
  });
});
