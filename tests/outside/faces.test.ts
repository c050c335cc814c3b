import { describe, expect, test } from "vitest";
import { edgeLengthM, edgeOf, nearestOn, shareAlong, squareOff } from "../../src/core/hull/faces/edge.js";
import { type CurvedFace, isOn, placeOn, twinOf, wayOn } from "../../src/core/hull/faces/face.js";
import { patchThrough, type Spot } from "../../src/core/hull/faces/patch.js";
import { shoot } from "../../src/core/hull/faces/shoot.js";
import { minus, mirrored, type Point, straightM } from "../../src/core/hull/vector.js";

// Closed forms (computed) of the cylinder and the sphere.
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
const sphere = face(steps(33, 1), steps(25, 1), (lon, lat) => [
  2 * Math.cos(0.5 * lat) * Math.cos(lon),
  2 * Math.cos(0.5 * lat) * Math.sin(lon),
  2 * Math.sin(0.5 * lat),
]);

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
