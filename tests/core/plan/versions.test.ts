import { expect, test } from "vitest";
import "../../../src/core/plan/read.js";
import { openDocument } from "../../../src/core/plan/source/open.js";
import { entryOf } from "../../../src/core/plan/source/written.js";
import type { FormatStep } from "../../../src/core/plan/versions/format-step.js";
import { bringUpToDate } from "../../../src/core/plan/versions/version.js";

// No older format exists yet. These steps are made up here to try the machinery: 1 → 2 renames a key, 2 → 3 adds one.
const steps: FormatStep[] = [
  {
    from: 1,
    change: (document) => {
      document.set("title", document.get("name", true));
      document.delete("name");
    },
  },
  { from: 2, change: (document) => document.set("rules", "us") },
];

function opened(text: string) {
  const result = openDocument(text);
  if (!result.ok) throw new Error("the text of the test does not open");
  return result;
}

const oldPlan =
  "skiffloom: 1   # first format\n# the boat\nname: Reed Bunting   # invented\ngear: {lamp: {draws: 1 W}}\n";

test("an older plan goes through every step, and its comments come along", () => {
  const result = bringUpToDate(opened(oldPlan), steps, 3);
  if (!result.ok) throw new Error("refused");
  expect(result.migratedFrom).toBe(1);
  const { root, text } = result.opened.document;
  expect(root.entries.map((entry) => entry.key)).toEqual(["skiffloom", "gear", "title", "rules"]);
  expect(entryOf(root, "skiffloom")?.value).toMatchObject({ value: 3 });
  expect(entryOf(root, "title")?.value).toMatchObject({ value: "Reed Bunting" });
  for (const comment of ["# first format", "# invented"]) expect(text).toContain(comment);
});

test("a plan of the middle format takes the last step only", () => {
  const result = bringUpToDate(opened("skiffloom: 2\ntitle: x\n"), steps, 3);
  expect(result).toMatchObject({
    ok: true,
    migratedFrom: 2,
    opened: { document: { text: "skiffloom: 3\ntitle: x\nrules: us\n" } },
  });
});

test("a plan of the newest format is passed on untouched", () => {
  const given = opened("skiffloom: 3   # as it is\n");
  const result = bringUpToDate(given, steps, 3);
  expect(result.ok && result.opened).toBe(given);
  expect(result).not.toHaveProperty("migratedFrom");
});

test("a newer plan is refused, and one from before the first format", () => {
  expect(bringUpToDate(opened("skiffloom: 4\n"), steps, 3)).toMatchObject({
    ok: false,
    problems: [{ code: "newer format", found: "4", line: 1, column: 12 }],
  });
  expect(bringUpToDate(opened("skiffloom: 0\n"), steps, 3)).toMatchObject({
    ok: false,
    problems: [{ code: "no such format" }],
  });
});

test("a missing step is no licence to skip it", () => {
  expect(bringUpToDate(opened("skiffloom: 1\n"), steps.slice(1), 3)).toMatchObject({ ok: false });
});
