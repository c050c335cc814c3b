import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { expect, test } from "vitest";
import { sameValue } from "../../src/web/state/same-value.js";

const data = fc.anything({ maxDepth: 3, withMap: true });

test("values say the same only where Node's own comparison says so too", () => {
  fc.assert(
    fc.property(data, data, (a, b) => {
      if (sameValue(a, b)) expect(isDeepStrictEqual(a, b)).toBe(true);
    }),
    { numRuns: 2000 },
  );
});

test("a copy says the same, and a copy with one thing changed does not", () => {
  const boat = { name: "Wren", at: [1, Number.NaN], runs: new Map([["feed", { lengthM: 2 }]]) };
  expect(sameValue(boat, structuredClone(boat))).toBe(true);
  expect(sameValue(boat, { ...structuredClone(boat), at: [1, 0] })).toBe(false);
  expect(sameValue(boat, { ...structuredClone(boat), runs: new Map([["feed", { lengthM: 3 }]]) })).toBe(
    false,
  );
  expect(sameValue([], {})).toBe(false);
  expect(sameValue(new Map(), {})).toBe(false);
  expect(sameValue({ a: undefined }, {})).toBe(false);
});
