import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { rules } from "../../../src/core/findings/rules.js";
import { rulePage, rulesIndex } from "./rule-page.js";

// `npx vitest run tests/core/findings/pages.test.ts -u` writes the pages anew.
const page = (name: string) => fileURLToPath(new URL(`../../../docs/rules/${name}.md`, import.meta.url));
const namesIn = (folder: string, ending: string) =>
  readdirSync(fileURLToPath(new URL(`../../../${folder}`, import.meta.url)))
    .filter((name) => name.endsWith(ending))
    .map((name) => name.slice(0, -ending.length))
    .sort();
const ids: string[] = rules.map(({ id }) => id);

test.each(ids)("the page of %s says what the rule says", async (id) => {
  await expect(rulePage(id)).toMatchFileSnapshot(page(id));
});

test("the list of rules names each page", async () => {
  await expect(rulesIndex(rules)).toMatchFileSnapshot(page("README"));
});

test("ids, files and pages are the same names", () => {
  expect(namesIn("src/core/findings/rules", ".ts")).toEqual(ids.toSorted());
  expect(namesIn("docs/rules", ".md").filter((name) => name !== "README")).toEqual(ids.toSorted());
});
