import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { edgeOf, spotOnEdge, squareOff } from "../../src/core/hull/faces/edge.js";
import { type Face, flatFace, isOn, placeOn, twinOf } from "../../src/core/hull/faces/face.js";
import { geodesic } from "../../src/core/hull/faces/geodesic.js";
import { patchThrough, type Spot } from "../../src/core/hull/faces/patch.js";
import { stripFace } from "../../src/core/hull/faces/strip.js";
import { restOf } from "../../src/core/hull/float/stability.js";
import { cutHull } from "../../src/core/hull/float/stations.js";
import { heightOver } from "../../src/core/hull/float/waterplane.js";
import { formFrom } from "../../src/core/hull/form/form.js";
import { startingLines } from "../../src/core/hull/form/starting-form.js";
import { markSheet } from "../../src/core/hull/marks/sheet.js";
import type { ReferencePoint, Tape } from "../../src/core/hull/marks/tape.js";
import type { Point } from "../../src/core/hull/vector.js";
import { type StartingKind, startingForms } from "../../src/core/reference/starting-forms.js";

const kinds = Object.keys(startingForms.kinds) as StartingKind[];
const boat = fc.record({
  kind: fc.constantFrom(...kinds),
  lengthM: fc.double({ min: 2.5, max: 8, noNaN: true }),
  slim: fc.double({ min: 2.2, max: 4, noNaN: true }),
  deep: fc.double({ min: 0.25, max: 0.45, noNaN: true }),
});
function formOf(one: { kind: StartingKind; lengthM: number; slim: number; deep: number }) {
  const beamM = one.lengthM / one.slim;
  const { form } = formFrom(
    startingLines(one.kind, { lengthM: one.lengthM, beamM, depthM: beamM * one.deep }),
  );
  if (!form) throw new Error("no form");
  return form;
}
const tape: Tape = { sigmaM: 0.001, graduationM: 0.001, longestM: 6, lies: "on the surface", side: "inside" };
const share = fc.double({ min: 0.05, max: 0.95, noNaN: true });

describe("laws of faces and marks", () => {
  test("mirrored boats give mirrored marks with equal numbers", () => {
    fc.assert(
      fc.property(boat, fc.array(share, { minLength: 2, maxLength: 2 }), (one, [a = 0.3, b = 0.6]) => {
        const form = formOf(one);
        const names = form.lines.map(({ name }) => name);
        const face = stripFace(form, {
          lower: names.at(-2) ?? "",
          upper: "sheer",
          fromM: 0.2 * one.lengthM,
          toM: 0.8 * one.lengthM,
        });
        const spot = squareOff(face, edgeOf(face, "upper"), a, 0.3 * b * (one.lengthM / one.slim) * one.deep);
        fc.pre(isOn(face, spot));
        const at = (s: number, edge: "upper" | "lower"): Spot => spotOnEdge(edgeOf(face, edge), s);
        const spots: Spot[] = [at(0.1, "upper"), at(0.9, "upper"), at(0.4, "lower")];
        const refs = (f: Face): ReferencePoint[] =>
          spots.map((s, i) => ({ name: `r${i}`, at: placeOn(f, s), spot: s, sigmaM: 0 }));
        const twin = twinOf(face);
        const [left, right] = [
          markSheet(face, [{ name: "h", spot }], refs(face), tape),
          markSheet(twin, [{ name: "h", spot }], refs(twin), tape),
        ];
        const [m, n] = [left.marks[0], right.marks[0]];
        expect(n?.method).toBe(m?.method);
        expect(n?.readings.map((r) => r.from)).toEqual(m?.readings.map((r) => r.from));
        for (const [i, r] of (m?.readings ?? []).entries())
          expect(n?.readings[i]?.exactM).toBeCloseTo(r.exactM, 9);
        expect(n?.at[1]).toBeCloseTo(-(m?.at[1] ?? 0), 12);
      }),
      { numRuns: 40, seed: 3 },
    );
  });

  test("turning and shifting the frame changes no tape reading", () => {
    const turned =
      (angles: readonly number[], shift: Point) =>
      (p: Point): Point => {
        const [a = 0, b = 0] = angles;
        const q: Point = [
          p[0] * Math.cos(a) - p[1] * Math.sin(a),
          p[0] * Math.sin(a) + p[1] * Math.cos(a),
          p[2],
        ];
        return [
          q[0] + shift[0],
          q[1] * Math.cos(b) - q[2] * Math.sin(b) + shift[1],
          q[1] * Math.sin(b) + q[2] * Math.cos(b) + shift[2],
        ];
      };
    const us = Array.from({ length: 17 }, (_, i) => i / 8);
    const vs = [0, 0.25, 0.5, 0.75, 1];
    const shape = (u: number, v: number): Point => [
      u,
      0.7 + 0.1 * Math.sin(u) + 0.08 * v * v,
      0.6 * v + 0.05 * u * v,
    ];
    const angle = fc.double({ min: -3, max: 3, noNaN: true });
    fc.assert(
      fc.property(angle, angle, share, share, share, share, (a, b, u1, v1, u2, v2) => {
        const turn = turned([a, b], [0.4, -1, 2]);
        const plain = patchThrough(
          us,
          vs,
          vs.map((v) => us.map((u) => shape(u, v))),
        );
        const other = patchThrough(
          us,
          vs,
          vs.map((v) => us.map((u) => turn(shape(u, v)))),
        );
        const ends: [Spot, Spot] = [
          [2 * u1, v1],
          [2 * u2, v2],
        ];
        expect(geodesic(other, ...ends).lengthM).toBeCloseTo(geodesic(plain, ...ends).lengthM, 8);
      }),
      { numRuns: 60, seed: 5 },
    );
  });

  test("a tape on the surface is never shorter than one pulled straight, and keeps the triangle's law", () => {
    fc.assert(
      fc.property(boat, share, share, share, share, share, share, (one, a, b, c, d, e, f) => {
        const form = formOf(one);
        const lower = form.lines.at(-2)?.name ?? "";
        const face = stripFace(form, {
          lower,
          upper: "sheer",
          fromM: 0.15 * one.lengthM,
          toM: 0.85 * one.lengthM,
        });
        const at = (s: number, t: number): Spot => [(0.15 + 0.7 * s) * one.lengthM, t];
        const way = (p: Spot, q: Spot) => geodesic(face.patch, p, q).lengthM;
        const [p, q, r] = [at(a, b), at(c, d), at(e, f)];
        const [x, y] = [placeOn(face, p), placeOn(face, q)];
        expect(way(p, q)).toBeGreaterThanOrEqual(Math.hypot(x[0] - y[0], x[1] - y[1], x[2] - y[2]) - 1e-6);
        // 0.1 mm: each of three lengths may err by the tolerance of refining
        expect(way(p, q)).toBeLessThanOrEqual(way(p, r) + way(r, q) + 1e-4);
      }),
      { numRuns: 40, seed: 7 },
    );
  });

  test("marks on a flat face land where plane geometry puts them, however the face stands", () => {
    fc.assert(
      fc.property(share, share, fc.double({ min: -1, max: 1, noNaN: true }), (x, y, lean) => {
        const face = flatFace(
          [1, 0.5, 0],
          [1, 0.2, lean],
          [0, lean, 1],
          [
            [0, 0],
            [1, 0],
            [1, 1],
            [0, 1],
          ],
        );
        const refs = (
          [
            [0, 0],
            [1, 0],
            [0, 1],
          ] as const
        ).map((s, i): ReferencePoint => ({ name: `r${i}`, at: placeOn(face, s), spot: s, sigmaM: 0 }));
        const mark = markSheet(face, [{ name: "h", spot: [x, y] }], refs, tape, "two tapes").marks[0];
        for (const one of mark?.readings ?? []) {
          const from = refs.find(({ name }) => name === one.from)?.spot ?? [0, 0];
          expect(one.exactM).toBeCloseTo(Math.hypot(x - from[0], y - from[1]), 9);
        }
      }),
      { numRuns: 60, seed: 11 },
    );
  });
});

describe("laws of float", () => {
  const cases = fc.tuple(
    boat,
    fc.double({ min: 0.05, max: 0.25, noNaN: true }),
    share,
    fc.double({ min: 0.01, max: 0.05, noNaN: true }),
  );
  test("adding weight never raises the freeboard where it is put, and always deepens the mean draft", () => {
    fc.assert(
      fc.property(cases, ([one, full, where, more]) => {
        const form = formOf(one);
        const hull = cutHull(form, startingForms.kinds[one.kind].open, 41);
        const [beam, depth] = [one.lengthM / one.slim, (one.lengthM / one.slim) * one.deep];
        const boxKg = 1025 * one.lengthM * beam * depth;
        const boatWeight = {
          name: "boat",
          massKg: full * boxKg,
          at: [0.48 * one.lengthM, 0, 0.3 * depth] as Point,
        };
        const added = {
          name: "battery",
          massKg: more * full * boxKg,
          at: [(0.1 + 0.8 * where) * one.lengthM, 0, 0.2 * depth] as Point,
        };
        const [before, after] = [restOf(hull, [boatWeight]), restOf(hull, [boatWeight, added])];
        fc.pre(!("problem" in before) && !("problem" in after));
        if ("problem" in before || "problem" in after) return;
        fc.pre(before.problems.length === 0 && after.problems.length === 0);
        const spot: Point = [added.at[0], 0, depth];
        expect(heightOver(after.floating.plane, spot)).toBeLessThan(heightOver(before.floating.plane, spot));
        const mid: Point = [before.floating.immersed.planeCentreXM, 0, 0];
        expect(heightOver(after.floating.plane, mid)).toBeLessThan(heightOver(before.floating.plane, mid));
      }),
      { numRuns: 60, seed: 13 },
    );
  });
  test("displaced water weighs what the boat weighs, plumb under its centre", () => {
    fc.assert(
      fc.property(cases, ([one, full, where]) => {
        const hull = cutHull(formOf(one), true, 41);
        const beam = one.lengthM / one.slim;
        const massKg = full * 1025 * one.lengthM * beam * beam * one.deep;
        const at: Point = [(0.4 + 0.15 * where) * one.lengthM, 0.02 * beam, 0.1 * beam];
        const rest = restOf(hull, [{ name: "all", massKg, at }]);
        if ("problem" in rest) return;
        const { immersed, plane } = rest.floating;
        expect(immersed.volumeM3 * 1025).toBeCloseTo(massKg, 4);
        const apart = immersed.centre.map((c, k) => c - (at[k] ?? 0));
        const up = plane.up;
        const along = apart.reduce((sum, value, k) => sum + value * (up[k] ?? 0), 0);
        for (const [k, value] of apart.entries())
          expect(Math.abs(value - along * (up[k] ?? 0))).toBeLessThan(1e-6);
      }),
      { numRuns: 60, seed: 17 },
    );
  });
});
