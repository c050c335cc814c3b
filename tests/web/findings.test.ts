import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { ruleText } from "../../src/words/rules.js";
import { findingsInSpanish } from "../../src/words/spanish/findings.js";
import { goToView, openRig, openText, planText, type Rig, settled, visit } from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

const wrong = (name: string) => readFileSync(`examples/wrong/${name}.yaml`, "utf8");
const countOf = async (page: Page, level: string) =>
  Number(await page.locator(`.ledger .count[data-level=${level}]`).getAttribute("data-count"));

test("a finding opens to figure, limit, rule, source and working; its remedy shows what it changes, is made, and is undone", async () => {
  const { page } = await visit(rig);
  await openText(page, wrong("fuse-too-large-for-thin-leads"));
  const before = await planText(page);
  await page.locator(".ledger-counts").click();
  const finding = page.locator('.finding[data-rule="protection-protects-weakest"]').first();
  await finding.locator("summary").focus();
  await page.keyboard.press("Enter");
  for (const part of ["Figure", "Limit", "Working", "Source", "Rule: protection-protects-weakest"])
    await finding.getByText(part).first().waitFor();
  await finding.getByRole("button", { name: "Show what it changes" }).first().click();
  const preview = finding.locator('[data-preview="shown"]');
  await preview.getByText("no longer found").waitFor();
  expect(await planText(page)).toBe(before);

  await goToView(page, "findings");
  await finding.locator("summary").click();
  await finding.getByRole("button", { name: "Show what it changes" }).first().click();
  await preview.waitFor();
  await finding.getByRole("button", { name: "Make this change" }).click();
  await finding.waitFor({ state: "detached" });
  await settled(page);
  const after = await planText(page);
  expect(after).not.toBe(before);

  await page.getByRole("button", { name: /^Undo/ }).click();
  await settled(page);
  expect(await planText(page)).toBe(before);
  await goToView(page, "findings");
  await finding.waitFor();
});

test("counts by level are always in sight, levels can be chosen, and what no plan can answer is said", async () => {
  const { page } = await visit(rig);
  await openText(page, wrong("length-never-measured"));
  await goToView(page, "findings");
  const unchecked = await countOf(page, "unchecked");
  expect(unchecked).toBeGreaterThan(0);
  await page.getByRole("button", { name: `Not checked ${unchecked}` }).click();
  expect(await page.locator(".finding").count()).toBe(unchecked);
  expect(await page.locator('.finding:not([data-level="unchecked"])').count()).toBe(0);
  await page.getByText("What no plan can answer").waitFor();
  for (const view of ["log", "text", "circuits"] as const) {
    await goToView(page, view);
    expect(await countOf(page, "unchecked"), view).toBe(unchecked);
  }
});

test("every figure of the ledger line opens into its working, down to what it was made of", async () => {
  const { page } = await visit(rig);
  await openText(page, readFileSync("examples/utility.yaml", "utf8"));
  const figures = page.locator(".ledger .figure");
  expect(await figures.count()).toBe(2);
  for (let index = 0; index < 2; index += 1) {
    const shown = await figures.nth(index).textContent();
    await figures.nth(index).click();
    const slip = page.locator(".slip");
    expect(await slip.locator(".working-value b").textContent()).toBe(shown);
    for (const part of ["Formula", "Put in", "Sources"])
      await slip.getByRole("heading", { name: part }).waitFor();
    await slip.locator(".given .figure, table .figure").first().click();
    await slip.getByRole("button", { name: /back/i }).click();
    expect(await slip.locator(".working-value b").textContent()).toBe(shown);
    await page.keyboard.press("Escape");
    await slip.waitFor({ state: "detached" });
  }
});

test("in Spanish findings, their reasons and what one does about them are Spanish", async () => {
  const { page } = await visit(rig, { locale: "es-ES" });
  await openText(page, wrong("fuse-too-large-for-thin-leads"));
  await goToView(page, "findings");
  const finding = page.locator('.finding[data-rule="protection-protects-weakest"]').first();
  await finding.locator("span[lang=es]").first().waitFor();
  await finding.locator("summary").click();
  const rule = ruleText("protection-protects-weakest", findingsInSpanish);
  for (const part of [rule.title, rule.why, rule.mend])
    await finding.getByText(part, { exact: true }).waitFor();
  expect(await finding.locator(".remedies bdi").first().textContent()).toMatch(/^(Poner|Hacer) /);
});
