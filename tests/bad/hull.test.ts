import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { flatFace } from "../../src/core/hull/faces/face.js";
import { geodesic } from "../../src/core/hull/faces/geodesic.js";
import { patchThrough } from "../../src/core/hull/faces/patch.js";
import { loadOf } from "../../src/core/hull/float/equilibrium.js";
import { fairLine } from "../../src/core/hull/form/line.js";
import { parseOffsets } from "../../src/core/hull/form/offsets.js";
import { cubicSpline } from "../../src/core/hull/form/spline.js";
import { startingLines } from "../../src/core/hull/form/starting-form.js";
import { leastDistances } from "../../src/core/hull/holes/distances.js";
import { cureHours } from "../../src/core/hull/holes/sealing.js";
import { toolFor } from "../../src/core/hull/holes/tool.js";
import { markSheet } from "../../src/core/hull/marks/sheet.js";
import { rowPlaces } from "../../src/core/hull/placing/row.js";

const not = Number.NaN;
const board = flatFace(
  [0, 0, 0],
  [1, 0, 0],
  [0, 0, 1],
  [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ],
);
const tape = { sigmaM: 0.001, graduationM: 0.001, longestM: 5, lies: "straight", side: "inside" } as const;

describe("a caller's mistake says what was wanted and what came; NaN is never let through", () => {
  test.each([
    ["knots that fall", () => cubicSpline([0, 2, 1], [0, 0, 0]), /rise/],
    ["a value that is none", () => cubicSpline([0, 1], [0, not]), /finite/],
    ["a line of one point", () => fairLine("keel", [[0, 0, 0]], true), /at least 2 points, got 1/],
    [
      "a line that turns back",
      () =>
        fairLine(
          "keel",
          [
            [1, 0, 0],
            [0, 0, 0],
          ],
          true,
        ),
      /x must rise/,
    ],
    [
      "a grid with a missing row",
      () =>
        patchThrough(
          [0, 1],
          [0, 1],
          [
            [
              [0, 0, 0],
              [1, 0, 0],
            ],
          ],
        ),
      /2 rows, got 1/,
    ],
    [
      "a spot that is none",
      () =>
        geodesic(
          patchThrough(
            [0, 1],
            [0, 1],
            [
              [
                [0, 0, 0],
                [1, 0, 0],
              ],
              [
                [0, 0, 1],
                [1, 0, 1],
              ],
            ],
          ),
          [not, 0],
          [1, 1],
        ),
      /finite/,
    ],
    [
      "a face that encloses nothing",
      () =>
        flatFace(
          [0, 0, 0],
          [1, 0, 0],
          [0, 0, 1],
          [
            [0, 0],
            [1, 0],
            [2, 0],
          ],
        ),
      /area/,
    ],
    [
      "parallel directions",
      () =>
        flatFace(
          [0, 0, 0],
          [1, 0, 0],
          [2, 0, 0],
          [
            [0, 0],
            [1, 0],
            [1, 1],
          ],
        ),
      /direction/,
    ],
    ["a tape of no length", () => markSheet(board, [], [], { ...tape, longestM: not }), /length of the tape/],
    [
      "a name twice",
      () =>
        markSheet(
          board,
          [
            { name: "a", spot: [0.1, 0.1] },
            { name: "a", spot: [0.2, 0.2] },
          ],
          [],
          tape,
        ),
      /a twice/,
    ],
    [
      "a row backwards",
      () =>
        rowPlaces(
          { name: "r", count: 2, fromM: 2, toM: 1, endMarginM: 0, halfWidthM: 0, leastApartM: 0 },
          [],
        ),
      /forward/,
    ],
    [
      "a boat of no beam",
      () => startingLines("canoe", { lengthM: 4, beamM: not, depthM: 0.3 }),
      /beamM must be > 0/,
    ],
    ["no weight at all", () => loadOf([]), /> 0 kg/],
    ["a hole of no size", () => leastDistances("wood", not), /> 0 m/],
    ["a sheet of no thickness", () => toolFor("wood", not, 10), /> 0 mm/],
    ["a joint of no depth", () => cureHours(not), /> 0 mm/],
  ])("%s", (_, work, message) => {
    expect(work).toThrow(RangeError);
    expect(work).toThrow(message);
  });
});

test("any text as a table of offsets gives lines and problems, never a throw", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary", maxLength: 300 }), fc.boolean(), (text, loftsman) => {
      const { lines, problems } = parseOffsets(text, loftsman ? "feet-inches-eighths" : { unitM: 0.001 });
      expect(lines.every((line) => line.points.every((point) => point.every(Number.isFinite)))).toBe(true);
      expect(Array.isArray(problems)).toBe(true);
    }),
    { numRuns: 2000, seed: 19 },
  );
  const cell = fc.oneof(
    fc.constantFrom(
      "station",
      "keel height",
      "sheer half-breadth",
      "waterline 200",
      "-",
      "1e309",
      "12",
      "2-3-4",
      '"5"',
      "",
    ),
    fc.string({ maxLength: 5 }),
  );
  fc.assert(
    fc.property(fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 8 }), (rows) => {
      const { lines } = parseOffsets(rows.map((row) => row.join(",")).join("\n"), { unitM: 0.001 });
      expect(lines.every((line) => line.points.every((point) => point.every(Number.isFinite)))).toBe(true);
    }),
    { numRuns: 2000, seed: 23 },
  );
});
