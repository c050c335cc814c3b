import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { passes, rectangleInRectangle } from "../../../src/core/box/opening.js";

/** A second method: turn it by small steps and look. */
function byTurning(p: number, q: number, a: number, b: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let k = 0; k <= 9000; k += 1) {
    const angle = (k / 9000) * (Math.PI / 2);
    const over = Math.max(
      p * Math.cos(angle) + q * Math.sin(angle) - a,
      p * Math.sin(angle) + q * Math.cos(angle) - b,
    );
    least = Math.min(least, over);
  }
  return least;
}

test("a rectangle in a rectangle, against turning it by hundredths of a degree", () => {
  const side = fc.double({ min: 1, max: 100, noNaN: true });
  fc.assert(
    fc.property(side, side, side, side, (p, q, a, b) => {
      const over = byTurning(p, q, a, b);
      // within the step of the turning nothing is said
      if (Math.abs(over) < 0.05) return;
      expect(rectangleInRectangle(p, q, a, b)).toBe(over < 0);
    }),
    { numRuns: 300 },
  );
});

// Computed: a line of length 5 is the diagonal of 4 × 3; with q = 1, p = 4 exactly touches when b = (2·4·1·a + 15·√(17 − a²))/17.
test("the diagonal of the opening", () => {
  expect(rectangleInRectangle(4.99, 0.001, 4, 3)).toBe(true);
  expect(rectangleInRectangle(5.01, 0.001, 4, 3)).toBe(false);
  const b = (8 * 3.9 + 15 * Math.sqrt(17 - 3.9 * 3.9)) / 17;
  expect(rectangleInRectangle(4, 1, 3.9, b + 1e-9)).toBe(true);
  expect(rectangleInRectangle(4, 1, 3.9, b - 1e-6)).toBe(false);
});

describe("bodies through openings", () => {
  const box = { lengthMm: 180, widthMm: 126, heightMm: 81 };
  test("end first", () => {
    expect(passes(box, { shape: "rectangle", widthMm: 130, heightMm: 85 })).toEqual({
      passes: true,
      endMm: [126, 81],
      turnedDeg: 0,
    });
    expect(passes(box, { shape: "rectangle", widthMm: 200, heightMm: 80 }).passes).toBe(false);
  });
  test("slantwise through a square hatch", () => {
    const strip = { lengthMm: 400, widthMm: 130, heightMm: 10 };
    const answer = passes(strip, { shape: "rectangle", widthMm: 100, heightMm: 100 });
    expect(answer.passes).toBe(true);
    const turned = (answer.turnedDeg * Math.PI) / 180;
    expect(130 * Math.cos(turned) + 10 * Math.sin(turned)).toBeCloseTo(100, 6);
    expect(130 * Math.sin(turned) + 10 * Math.cos(turned)).toBeLessThanOrEqual(100);
  });
  test("round inspection port: the diagonal of the end counts", () => {
    const diagonal = Math.hypot(126, 81);
    expect(passes(box, { shape: "circle", diameterMm: diagonal + 0.01 }).passes).toBe(true);
    expect(passes(box, { shape: "circle", diameterMm: diagonal - 0.01 }).passes).toBe(false);
  });
  test("a slot with round ends, against points of its edge", () => {
    const side = fc.double({ min: 1, max: 60, noNaN: true });
    fc.assert(
      fc.property(side, side, (p, q) => {
        const [length, width] = [60, 30];
        // Every turn by tenths of a degree: do the corners stay within 15 mm of the middle line?
        let least = Number.POSITIVE_INFINITY;
        for (let k = 0; k <= 900; k += 1) {
          const t = (k / 900) * (Math.PI / 2);
          const far = [1, -1].map((sign) => {
            const x = Math.abs((p / 2) * Math.cos(t) - (sign * q * Math.sin(t)) / 2);
            const y = Math.abs((p / 2) * Math.sin(t) + (sign * q * Math.cos(t)) / 2);
            return Math.hypot(Math.max(0, x - (length - width) / 2), y) - width / 2;
          });
          least = Math.min(least, Math.max(...far));
        }
        if (Math.abs(least) < 0.1) return;
        expect(
          passes(
            { lengthMm: 500, widthMm: p, heightMm: q },
            { shape: "obround", lengthMm: length, widthMm: width },
          ).passes,
        ).toBe(least < 0);
      }),
      { numRuns: 300 },
    );
  });
  test("nonsense is refused", () => {
    expect(() =>
      passes({ lengthMm: 0, widthMm: 1, heightMm: 1 }, { shape: "circle", diameterMm: 5 }),
    ).toThrow(RangeError);
    expect(() => passes(box, { shape: "obround", lengthMm: 5, widthMm: 10 })).toThrow(RangeError);
  });
});
