import { expect, test } from "vitest";
import { toolSizeWords } from "../../src/words/hull-words.js";

// an inch is 25.4 mm exactly (international yard and pound agreement, 1959)
test.each([
  [15.875, "15.9 mm (5/8 in)"],
  [38.1, "38.1 mm (1 1/2 in)"],
  [12.7, "12.7 mm (1/2 in)"],
  [25.4, "25.4 mm (1 in)"],
  [20, "20 mm"],
  [16.5, "16.5 mm"],
  [19.6, "19.6 mm"],
])("a hole of %d mm is cut with a tool of %s", (mm, words) =>
  expect(toolSizeWords(mm).replaceAll("\u00a0", " ")).toBe(words),
);
