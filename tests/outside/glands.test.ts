import { describe, expect, test } from "vitest";
import { fromLidMm, minApartMm, minWebMm, usualRoom } from "../../src/core/box/entry-rules.js";
import { chooseGland, nutCornersMm } from "../../src/core/box/gland.js";
import { glandFits, metricGlandThreads, pgGlandThreads } from "../../src/core/reference/glands.js";

// EN 60423 / EN 50262 thread list, read in a maker's annex (published).
test.each([
  ["M12", 12, 1.5],
  ["M16", 16, 1.5],
  ["M20", 20, 1.5],
  ["M25", 25, 1.5],
  ["M32", 32, 1.5],
  ["M40", 40, 1.5],
  ["M63", 63, 1.5],
])("%s × 1.5 of EN 60423", (size, outer, pitch) => {
  expect(metricGlandThreads.rows.find((row) => row.size === size)).toEqual({
    size,
    threadOuterMm: outer,
    pitchMm: pitch,
  });
});

// DIN 40430, read in an encyclopedia (published): over the thread, core, threads per inch.
describe("DIN 40430", () => {
  test.each([
    ["PG7", 12.5, 11.28, 20],
    ["PG9", 15.2, 13.86, 18],
    ["PG11", 18.6, 17.26, 18],
    ["PG13.5", 20.4, 19.06, 18],
    ["PG16", 22.5, 21.16, 18],
    ["PG21", 28.3, 26.78, 16],
    ["PG29", 37, 35.48, 16],
  ])("%s", (size, outer, core, perInch) => {
    const row = pgGlandThreads.rows.find((one) => one.size === size);
    expect(row).toMatchObject({ threadOuterMm: outer, coreMm: core });
    // printed to three digits
    expect(row?.pitchMm).toBeCloseTo(25.4 / perInch, 3);
  });
});

test.each(glandFits.rows)("$size goes through its hole, with at most 0.6 mm to spare", (fit) => {
  expect(fit.holeMm).toBeGreaterThan(fit.threadOuterMm);
  expect(fit.holeMm - fit.threadOuterMm).toBeLessThan(0.601);
  expect(nutCornersMm(fit.spannerMm)).toBeGreaterThan(fit.holeMm);
});

// Panel-punch maker's note on EN 62444 (published): M12 hole 12.5 mm, cable 3 to 6 mm.
test("M12 for cables of 3 to 6 mm", () => {
  for (const diameterMm of [3, 6]) {
    expect(chooseGland({ id: "c", diameterMm }, { series: "metric", wallMm: 2 })).toMatchObject({
      ok: true,
      gland: { fit: { size: "M12", holeMm: 12.5 } },
    });
  }
});

// DIN 40430 table (published): PG7 takes cables of 3 to 6.5 mm, PG9 of 4 to 8 mm.
test("PG7 is not M16: a cable of 7 mm needs PG9", () => {
  const take = (diameterMm: number) => chooseGland({ id: "c", diameterMm }, { series: "pg", wallMm: 2 });
  expect(take(6.5)).toMatchObject({
    ok: true,
    gland: { fit: { size: "PG7" }, alsoFit: ["PG9", "PG11", "PG13.5"] },
  });
  expect(take(7)).toMatchObject({ ok: true, gland: { fit: { size: "PG9" } } });
});

// Common practice, no source; the figures are computed in the same place: 24 mm spanner, corners 27.7 mm, centres about 32 mm.
test("two M20 glands", () => {
  const corners = nutCornersMm(24);
  expect(corners).toBeCloseTo(27.7, 1);
  const m20 = { id: "a", holeMm: 20.5, acrossMm: corners, spanner: true };
  expect(minApartMm(m20, m20, { material: "abs", wallMm: 3 }, usualRoom)).toBeCloseTo(31.7, 1);
});

// Common practice, no source; by hand: 0.4 of the hole or two walls in ABS, 0.75 and three in acrylic, which cracks.
test.each([
  ["abs", 3, 10, 6],
  ["abs", 3, 40, 16],
  ["acrylic", 4, 10, 12],
  ["acrylic", 4, 20, 15],
] as const)(
  "a wall of %s, %d mm thick, keeps beside a hole of %d mm a web of %d mm",
  (material, wallMm, holeMm, webMm) => expect(minWebMm({ material, wallMm }, holeMm)).toBeCloseTo(webMm, 9),
);

// Common practice, no source; by hand: 5 mm from the seal to the hole's edge, or half of the nut where that is more.
test.each([
  [20, 24, 15],
  [12, 40, 20],
])("a hole of %d mm under a nut of %d mm stays %d mm under the lid", (holeMm, acrossMm, underLidMm) =>
  expect(fromLidMm({ id: "a", holeMm, acrossMm, spanner: true })).toBeCloseTo(underLidMm, 9),
);
