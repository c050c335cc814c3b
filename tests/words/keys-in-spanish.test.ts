/** Every key that a form asks for has its Spanish name, its Spanish meaning and Spanish words to choose from. */
import { describe, expect, test } from "vitest";
import { thingKeys } from "../../src/core/plan/schema/thing-keys.js";
import { keysInSpanish } from "../../src/words/spanish/keys.js";
import { englishLeftIn } from "./spanish.js";

const kinds = [
  "battery",
  "charger",
  "converter",
  "panel",
  "way",
  "box",
  "gear",
  "run",
  "outing",
  "corner",
  "craft",
  "ambient",
  "conductors",
  "face",
  "reference",
  "waypoint",
  "leg",
];
/** Spelt alike in both languages. */
const alike = new Set(["material", "conductor", "pg", "solar", "motor", "ABS"]);

describe.each(kinds)("%s", (kind) => {
  const keys = thingKeys(kind);
  test("has keys", () => expect(keys.length).toBeGreaterThan(0));
  test.each(keys)("$written", ({ written, says, takes }) => {
    const [label, hint] = [keysInSpanish.label(written), keysInSpanish.hint(says)];
    if (!alike.has(written) && written !== "peukert") expect(label).not.toBe(written);
    expect(hint).not.toBe(says);
    expect(hint).toMatch(/\.$|…$/);
    expect([...englishLeftIn(label), ...englishLeftIn(hint)].filter((word) => word !== "usual")).toEqual([]);
    const figures = (text: string) => text.match(/\d+(\.\d+)?/g) ?? [];
    expect(figures(hint)).toEqual(figures(says));
    if (takes.as === "choice")
      for (const word of takes.of)
        if (!alike.has(word)) expect(keysInSpanish.choice(word), word).not.toBe(word);
  });
});
