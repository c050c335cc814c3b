import { expect, test } from "vitest";
import { chooseGland } from "../../../src/core/box/gland.js";

const metric = { series: "metric", wallMm: 3 } as const;

test("a cable no gland takes names the range and its neighbours", () => {
  expect(chooseGland({ id: "battery pair", diameterMm: 24 }, metric)).toEqual({
    ok: false,
    problem: {
      problem: "no-gland-fits",
      cable: "battery pair",
      diameterMm: 24,
      smallestMm: 3,
      largestMm: 21,
      below: "M32",
    },
  });
  expect(chooseGland({ id: "bell wire", diameterMm: 2 }, metric)).toMatchObject({
    problem: { problem: "no-gland-fits", above: "M12" },
  });
});

test("flat twin leaks past a round seal", () => {
  expect(chooseGland({ id: "twin", diameterMm: 7, flatMm: 4 }, metric)).toMatchObject({
    problem: { problem: "cable-not-round", flatMm: 4 },
  });
  expect(chooseGland({ id: "nearly round", diameterMm: 7, flatMm: 6.8 }, metric).ok).toBe(true);
});

test("a wall thicker than the thread reaches", () => {
  expect(chooseGland({ id: "c", diameterMm: 5 }, { series: "metric", wallMm: 6 })).toMatchObject({
    problem: { problem: "wall-too-thick", size: "M12", maxWallMm: 3 },
  });
});

test("the owner's own gland goes before the table", () => {
  const own = {
    series: "metric",
    size: "M20 long",
    threadOuterMm: 20,
    holeMm: 20.5,
    minCableMm: 5,
    maxCableMm: 9,
    spannerMm: 24,
    threadLengthMm: 15,
    standsOutMm: 25,
  } as const;
  expect(chooseGland({ id: "c", diameterMm: 5 }, { ...metric, wallMm: 6, fits: [own] })).toMatchObject({
    gland: { fit: { size: "M20 long" }, insideMm: 9 },
  });
});

test.each([0, -3, Number.NaN])("a cable of %d mm is refused", (diameterMm) => {
  expect(() => chooseGland({ id: "c", diameterMm }, metric)).toThrow(RangeError);
});
