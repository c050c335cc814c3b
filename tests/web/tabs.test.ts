import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { goToView, openExample, openRig, planText, type Rig, settled, typeInto, visit } from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

/** One plan open in two tabs of one browser, each with a slip open. `deaf`: no word of the first reaches the second in time. */
async function twoTabs(
  slipOfFirst: string,
  slipOfSecond: string,
  deaf = false,
): Promise<readonly [Page, Page]> {
  const { page, context } = await visit(rig);
  await openExample(page, "tender");
  const second = await context.newPage();
  if (deaf)
    await second.addInitScript(() => {
      Object.defineProperty(BroadcastChannel.prototype, "onmessage", { set: () => undefined });
    });
  await second.goto(page.url());
  await settled(second);
  await goToView(page, "text", slipOfFirst);
  await goToView(second, "text", slipOfSecond);
  await page.locator(".slip .field").first().waitFor();
  await second.locator(".slip .field").first().waitFor();
  return [page, second];
}

test("what is changed in one tab shows in the other, either way", async () => {
  const [first, second] = await twoTabs("floor lamp", "floor lamp");
  await typeInto(first, "draws", "2 W");
  await second.locator(".text-view textarea").filter({ hasText: "draws: 2 W" }).waitFor();
  await second.getByText("Changed in another tab; this one follows.").waitFor();
  await typeInto(second, "draws", "3 W");
  await first.locator(".text-view textarea").filter({ hasText: "draws: 3 W" }).waitFor();
  await settled(first);
  expect(await planText(first)).toBe(await planText(second));
});

test("two edits of different things at one time are both taken in", async () => {
  const [first, second] = await twoTabs("floor lamp", "stern pole light", true);
  await typeInto(first, "draws", "6 W");
  await settled(first);
  await typeInto(second, "draws", "7 W");
  await second.getByText("were both taken in").waitFor();
  await settled(second);
  for (const page of [first, second]) {
    await page.locator(".text-view textarea").filter({ hasText: "draws: 7 W" }).waitFor();
    expect(await planText(page)).toContain("draws: 6 W");
  }
});

test("two edits of one thing at one time: neither is lost, and the person chooses", async () => {
  const [first, second] = await twoTabs("floor lamp", "floor lamp", true);
  await typeInto(first, "draws", "6 W");
  await settled(first);
  await typeInto(second, "draws", "7 W");
  await second.getByText("Both are kept").waitFor();
  expect(await planText(second)).toContain("draws: 6 W");
  await second.getByRole("button", { name: "Take mine" }).click();
  await settled(second);
  expect(await planText(second)).toContain("draws: 7 W");
  await first.locator(".text-view textarea").filter({ hasText: "draws: 7 W" }).waitFor();
  await first.reload();
  await settled(first);
  expect(await planText(first)).toContain("draws: 7 W");
});

test("a plan removed in one tab is not lost in the other: it says so, and can be saved", async () => {
  const [first, second] = await twoTabs("floor lamp", "floor lamp");
  await second.goto(rig.address);
  await second.getByRole("button", { name: /^Remove from this browser/ }).click();
  await second.getByRole("alertdialog").getByRole("button", { name: "Remove from this browser" }).click();
  await second.locator(".kept-plan").waitFor({ state: "detached" });
  await typeInto(first, "draws", "8 W");
  await first.getByText("There is no such plan in this browser.").waitFor();
  expect(await first.locator(".text-view textarea").inputValue()).toContain("draws: 8 W");
});
