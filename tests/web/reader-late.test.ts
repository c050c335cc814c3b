// Edits that only the full YAML reader can weigh, while that is still on its way to the page.
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { goToView, openExample, openRig, planText, type Rig, settled, typeInto, visit } from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

/** A sign outside of what the quick reader knows: the name is sound, but the full reader must say so. */
const unusual = "floor lamp 🔦";
const keeping = (page: Page) => page.locator(".keeping").getAttribute("data-keeping");
const textShown = (page: Page) => page.locator(".text-view textarea").inputValue();

/** The tender open, with the full reader held up until the page is let go. @returns what lets it go. */
async function withoutReader(page: Page): Promise<(how: "continue" | "abort") => void> {
  let letGo: (how: "continue" | "abort") => void = () => {};
  const held = new Promise<"continue" | "abort">((done) => {
    letGo = done;
  });
  await page.route("**/full-yaml-*.js", async (route) => {
    await ((await held) === "abort" ? route.abort() : route.continue());
  });
  await openExample(page, "tender");
  return letGo;
}

/** Renames a lamp to a name that wants the reader, then makes a plain edit. */
async function renameAndDim(page: Page): Promise<void> {
  await goToView(page, "text", "floor lamp");
  await typeInto(page, "Name", unusual);
  await goToView(page, "text", "phone socket");
  await typeInto(page, "draws", "9 W");
}

test("such an edit waits and is made, and what is edited meanwhile comes after it", async () => {
  const { page } = await visit(rig);
  const letGo = await withoutReader(page);
  const before = await planText(page);
  await renameAndDim(page);
  expect(await page.locator(".problem").count()).toBe(0);
  expect(await keeping(page)).toBe("keeping");
  expect(await textShown(page)).toBe(before);
  letGo("continue");
  await expect.poll(() => textShown(page)).toContain(unusual);
  await settled(page);
  const after = await textShown(page);
  expect(after).toContain(`what: ${unusual},`);
  expect(after).toContain("draws: 9 W");
  // two steps, the last one taken back first
  await page.getByRole("button", { name: /^Undo/ }).click();
  await expect.poll(() => textShown(page)).not.toContain("draws: 9 W");
  expect(await textShown(page)).toContain(unusual);
  await page.getByRole("button", { name: /^Undo/ }).click();
  await expect.poll(() => textShown(page)).toBe(before);
});

test("where the reader can't be fetched it is said of that edit, and the others are made", async () => {
  const { page, complaints } = await visit(rig);
  const letGo = await withoutReader(page);
  await renameAndDim(page);
  letGo("abort");
  const notice = page.locator(".notice", { hasText: "could not be fetched" });
  await notice.waitFor();
  expect(await notice.textContent()).toContain(unusual);
  await settled(page);
  const text = await textShown(page);
  expect(text).not.toContain(unusual);
  expect(text).toContain("draws: 9 W");
  // the browser tells of the file that was kept from it
  complaints.splice(0);
});

test("a text typed by hand stays in its field where the reader that it wants can't be fetched", async () => {
  const { page, complaints } = await visit(rig);
  const letGo = await withoutReader(page);
  await goToView(page, "text");
  const typed = (await textShown(page)).replaceAll("floor lamp", unusual);
  await page.locator(".text-view textarea").fill(typed);
  await page.getByRole("button", { name: "Take this text" }).click();
  letGo("abort");
  await page.locator(".notice", { hasText: "could not be fetched" }).waitFor();
  expect(await textShown(page)).toBe(typed);
  expect(await page.getByRole("button", { name: "Take this text" }).isEnabled()).toBe(true);
  complaints.splice(0);
});
