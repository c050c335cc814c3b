import { describe, expect, test } from "vitest";
import { type Face, flatFace } from "../../../src/core/hull/faces/face.js";
import { patchThrough } from "../../../src/core/hull/faces/patch.js";
import { clearances } from "../../../src/core/hull/placing/clearances.js";
import { placingOf, spotOf } from "../../../src/core/hull/placing/place.js";
import { rowPlaces } from "../../../src/core/hull/placing/row.js";
import { drawnLine } from "../../../src/core/hull/pulling/drawn-line.js";
import { passings, pullOrder } from "../../../src/core/hull/pulling/order.js";
import { reaches } from "../../../src/core/hull/pulling/reach.js";

const us = Array.from({ length: 25 }, (_, i) => i / 12);
const cylinder: Face = {
  kind: "curved",
  patch: patchThrough(
    us,
    [0, 1],
    [0, 1].map((v) => us.map((u) => [1.5 * Math.sin(u / 1.5), 1.5 * Math.cos(u / 1.5), 0.4 * v] as const)),
  ),
};
const board = flatFace(
  [0, 0, 0],
  [1, 0, 0],
  [0, 0, 1],
  [
    [0, 0],
    [1, 0],
    [1, 0.4],
    [0, 0.4],
  ],
);

describe("placing in the owner's way", () => {
  test("there and back", () => {
    const spot = spotOf(cylinder, { edge: "upper", from: [0.5, 1], alongM: 0.7, offM: 0.12 });
    expect(spot[0]).toBeCloseTo(1.2, 6);
    expect(spot[1]).toBeCloseTo(0.7, 6);
    const back = placingOf(cylinder, "upper", [0.5, 1], spot);
    expect(back.alongM).toBeCloseTo(0.7, 5);
    expect(back.offM).toBeCloseTo(0.12, 6);
  });
  test("on a flat face off its first edge", () => {
    const [u, v] = spotOf(board, { edge: "edge 1", alongM: 0.3, offM: 0.1 });
    expect(u).toBeCloseTo(0.3, 9);
    expect(v).toBeCloseTo(0.1, 9);
  });
  test("an unknown edge is refused by name", () =>
    expect(() => spotOf(cylinder, { edge: "top", alongM: 0, offM: 0 })).toThrow(/lower, upper, aft, fore/));
});

describe("rows", () => {
  const row = {
    name: "lamps",
    count: 3,
    fromM: 1,
    toM: 3,
    endMarginM: 0.1,
    halfWidthM: 0.015,
    leastApartM: 0.1,
  };
  test("even between the margins", () => expect(rowPlaces(row, []).alongM).toEqual([1.1, 2, 2.9]));
  test("one alone stands in the middle", () =>
    expect(rowPlaces({ ...row, count: 1 }, []).alongM).toEqual([2]));
  test("a frame in the way moves one lamp to its nearer side", () => {
    const { alongM, movedM, problems } = rowPlaces(row, [{ name: "frame", fromM: 1.98, toM: 2.05 }]);
    expect(alongM[1]).toBeCloseTo(1.965, 9);
    expect(movedM[1]).toBeCloseTo(-0.035, 9);
    expect(problems).toEqual([]);
  });
  test("what does not fit is said", () => {
    expect(rowPlaces({ ...row, count: 30 }, []).problems[0]).toMatchObject({
      problem: "row does not fit",
      at: "lamps",
    });
    expect(rowPlaces(row, [{ name: "tank", fromM: 0, toM: 4 }]).problems[0]?.problem).toBe(
      "row does not fit",
    );
  });
});

describe("clearances", () => {
  const lamp = (name: string, u: number, v: number) => ({
    name,
    spot: [u, v] as const,
    holeM: 0.016,
    flangeM: 0.025,
    behindM: 0.03,
    roomM: 0.05,
  });
  const kinds = (all: ReturnType<typeof clearances>) =>
    all.flatMap(({ problems }) => problems.map(({ problem }) => problem));
  test("far apart: nothing to say, and the distances are right", () => {
    const [a] = clearances(board, "aluminium", [lamp("a", 0.3, 0.2), lamp("b", 0.6, 0.2)], []);
    expect(a?.problems).toEqual([]);
    expect(a?.nearestHole?.distanceM).toBeCloseTo(0.3, 9);
    expect(a?.edge?.distanceM).toBeCloseTo(0.2, 9);
  });
  test("each kind of too near", () => {
    expect(kinds(clearances(board, "aluminium", [lamp("a", 0.3, 0.03)], []))).toEqual(["too near the edge"]);
    expect(kinds(clearances(board, "aluminium", [lamp("a", 0.3, 0.01)], []))).toEqual([
      "too near the edge",
      "flange over the edge",
    ]);
    expect(kinds(clearances(board, "aluminium", [lamp("a", 0.3, 0.2), lamp("b", 0.34, 0.2)], []))).toEqual([
      "holes too close",
      "holes too close",
    ]);
    expect(kinds(clearances(board, "ABS", [lamp("a", 0.3, 0.2)], []))).toEqual(["edge rule not known"]);
    const frame = {
      name: "frame",
      outline: [
        [0.5, 0],
        [0.52, 0],
        [0.52, 0.4],
        [0.5, 0.4],
      ] as const,
    };
    expect(kinds(clearances(board, "aluminium", [lamp("a", 0.51, 0.2)], [frame]))).toEqual([
      "in a zone not to drill",
    ]);
    expect(kinds(clearances(board, "aluminium", [lamp("a", 0.49, 0.2)], [frame]))).toEqual([
      "flange over a zone",
    ]);
    expect(kinds(clearances(board, "aluminium", [{ ...lamp("a", 0.3, 0.2), roomM: 0.02 }], []))).toEqual([
      "no room behind",
    ]);
    expect(kinds(clearances(board, "aluminium", [lamp("a", 0.3, 0.5)], []))).toEqual(["off the face"]);
  });
});

describe("pulling", () => {
  const hatch = { name: "hatch", at: [1, 0, 0.5] as const, clearM: 0.2, space: "fore" };
  test("an arm reaches what is near enough and in the same space", () => {
    const [near, far, other] = reaches(
      [hatch],
      [
        { name: "lamp 1", at: [1.4, 0.3, 0.5], space: "fore", roomM: 0.05 },
        { name: "lamp 2", at: [2.4, 0.3, 0.5], space: "fore" },
        { name: "lamp 3", at: [1.1, 0, 0.5], space: "aft" },
      ],
    );
    expect(near?.through[0]).toMatchObject({ opening: "hatch" });
    expect(near?.through[0]?.distanceM).toBeCloseTo(0.5, 9);
    expect(near?.problems[0]).toMatchObject({ problem: "no room behind" });
    expect(far?.problems[0]).toMatchObject({ problem: "cannot be reached", with: ["hatch"], limit: 0.6 });
    expect(other?.problems).toEqual([{ problem: "cannot be reached", at: "lamp 3" }]);
  });
  const passages = [
    { name: "helm", at: [0, 0, 0] as const, spaces: ["aft"] },
    { name: "frame gap", at: [1, 0, 0] as const, spaces: ["aft", "fore"], clearM: 0.02 },
    { name: "hatch way", at: [1, 2, 0] as const, spaces: ["aft", "fore"] },
    { name: "lamp", at: [2, 0, 0] as const, spaces: ["fore"] },
    { name: "mast", at: [5, 0, 0] as const, spaces: ["mast"] },
  ];
  test("the drawn line takes the shortest chain of spaces, or none", () => {
    expect(drawnLine(passages, "helm", "lamp")).toEqual({
      passages: ["helm", "frame gap", "lamp"],
      lengthM: 2,
    });
    expect(drawnLine(passages, "helm", "mast")).toBeUndefined();
  });
  test("largest ends first; what no longer passes is named", () => {
    const pull = (name: string, cableM: number, endM: number) => ({
      name,
      cableM,
      endM,
      lengthM: 2,
      through: ["frame gap"],
    });
    const ordered = pullOrder([pull("thin", 0.005, 0.005), pull("plug", 0.006, 0.016)]);
    expect(ordered.map(({ name }) => name)).toEqual(["plug", "thin"]);
    expect(passings(passages, ordered)[0]).toMatchObject({ largest: "plug", problems: [] });
    expect(passings(passages, [...ordered].reverse())[0]?.problems[0]).toMatchObject({
      problem: "does not pass",
      at: "plug",
    });
    expect(passings(passages, [...ordered, pull("thick", 0.012, 0.012)])[0]?.problems.length).toBeGreaterThan(
      0,
    );
  });
});
