import { expect, test } from "vitest";
import { assumptionReasons } from "../../src/core/plan/complete/reasons.js";
import { assumptionWords as english } from "../../src/words/assumptions.js";
import { assumptionWords as spanish } from "../../src/words/spanish/assumptions.js";
import { englishLeftIn } from "./spanish.js";

const figures = (text: string) => text.match(/\d+(\.\d+)?/g) ?? [];

test("each reason of an assumption is told in Spanish, with the same figures and its own words", () => {
  for (const reason of assumptionReasons) {
    expect(englishLeftIn(spanish[reason]), spanish[reason]).toEqual([]);
    // part of a sentence, as the English one is
    expect(spanish[reason]).toMatch(/^\p{Ll}.*[^.?! ]$/u);
    expect(figures(spanish[reason])).toEqual(figures(english[reason]));
  }
  expect(new Set(Object.values(spanish)).size).toBe(assumptionReasons.length);
});
