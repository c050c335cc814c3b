// Faces of boxes one moves holes on, and the shopping list one ticks off in the shop.
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import {
  desk,
  goToView,
  openExample,
  openRig,
  openText,
  phone,
  planText,
  type Rig,
  settled,
  visit,
} from "./help.js";

const timeout = 180_000;
let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

test("a hole of a panel is moved by keys and by hand: what binds is told, and the plan holds where it is", {
  timeout,
}, async () => {
  const { page } = await visit(rig);
  await openExample(page, "utility");
  await goToView(page, "boxes");
  const fresh = page.locator('.boxes[aria-busy="false"]');
  const card = page.locator('.box-card[aria-labelledby="box helm"]');
  await card.first().waitFor({ timeout: 120_000 });
  expect(await card.textContent()).toContain("Nothing binds");
  const hole = card.locator('.entry[data-entry="bilge cable"]');
  await hole.focus();
  await page.keyboard.press("ArrowRight");
  await settled(page);
  await fresh.waitFor({ timeout: 120_000 });
  const said = await hole.getAttribute("aria-label");
  expect(said).toMatch(/1\.87\sin along/);

  // Dragged onto its neighbour: the nuts touch, and it is told while one drags.
  const other = await card.locator('.entry[data-entry="lamp trunk"] .entry-hole').boundingBox();
  const mine = await hole.locator(".entry-hole").boundingBox();
  if (!other || !mine) throw new RangeError("no holes on the face");
  await page.mouse.move(mine.x + mine.width / 2, mine.y + mine.height / 2);
  await page.mouse.down();
  await page.mouse.move(other.x - 6, other.y + other.height / 2, { steps: 5 });
  expect(await card.locator("[role=status]:not(.away)").textContent()).toMatch(
    /bilge cable.*(touches the next nut|leaves too little wall|no room for a spanner)/s,
  );
  await page.mouse.up();
  await settled(page);
  await fresh.waitFor({ timeout: 120_000 });
  expect(await card.locator('.entry[data-bad="true"]').count()).toBeGreaterThan(0);
  expect(await planText(page)).toMatch(/entries: .*bilge cable: \{on: down, at: \[\d+(\.\d+)? mm, /);
  // it is still to be drilled: its template and the order of drilling stay
  await card.getByText("Order of drilling").waitFor({ timeout: 120_000 });
  await card.getByRole("button", { name: "Let them be placed again" }).click();
  await settled(page);
  await fresh.waitFor({ timeout: 120_000 });
  expect(await planText(page)).not.toContain("bilge cable: {on:");
});

test("a box of the catalogue is laid out by hand too, in inches for whoever reads those", {
  timeout,
}, async () => {
  const { page } = await visit(rig);
  await openExample(page, "launch");
  await goToView(page, "boxes");
  const fresh = page.locator('.boxes[aria-busy="false"]');
  const card = page.locator(".box-card").filter({ hasText: "chosen from what you would buy" }).first();
  await card.waitFor({ timeout: 120_000 });
  const hole = card.locator(".entry").first();
  const metric = (await hole.getAttribute("aria-label")) ?? "";
  expect(metric).toMatch(/hole [\d.]+\smm, [\d.]+\smm along/);
  await page.getByRole("button", { name: "Settings" }).click();
  await page.getByRole("radio", { name: "inches" }).check();
  await page.keyboard.press("Escape");
  await expect.poll(() => hole.getAttribute("aria-label")).toMatch(/\(0\.\d+\sin\), [\d.]+\sin along/);
  const inches = (await hole.getAttribute("aria-label")) ?? "";
  const alongMm = Number(/, ([\d.]+)\smm along/.exec(metric)?.[1]);
  const alongIn = Number(/, ([\d.]+)\sin along/.exec(inches)?.[1]);
  // the inch is 25.4 mm exactly (international yard and pound agreement of 1959, from memory); each is rounded as it is shown
  expect(Math.abs(alongIn * 25.4 - alongMm)).toBeLessThan(0.05 + 0.127);
  const [name = ""] = inches.split(":");
  await hole.focus();
  await page.keyboard.press("ArrowRight");
  await settled(page);
  await fresh.waitFor({ timeout: 120_000 });
  const text = await planText(page);
  expect(text).toContain("catalogue box:");
  expect(text).toContain(`entries: {${name}: {on: `);
});

test("on a phone the list is ticked, the ticks go with the plan wherever it is opened, and only what is left is shown", {
  timeout,
}, async () => {
  const { page } = await visit(rig, { viewport: phone });
  await openExample(page, "tender");
  await goToView(page, "parts");
  const lines = page.locator(".basket li");
  await lines.first().waitFor({ timeout: 120_000 });
  const all = await lines.count();
  expect(all).toBeGreaterThan(3);
  const box = await lines.first().locator("label").boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(44);
  expect(
    await page.locator(".parts").evaluate((one) => one.scrollWidth - one.clientWidth),
  ).toBeLessThanOrEqual(0);
  // wire comes first, then parts by the piece
  await lines.nth(0).locator("label").click();
  await lines.nth(1).locator("label").click();
  await settled(page);
  expect(await page.locator(".basket-head").textContent()).toContain(`2 of ${all} in the basket`);
  await page.reload();
  await lines.first().waitFor({ timeout: 120_000 });
  expect(await page.locator(".basket-head").textContent()).toContain(`2 of ${all} in the basket`);
  await page.getByLabel("Only what is left to get").check();
  expect(await lines.count()).toBe(all - 2);
  const text = await planText(page);
  expect(text).toMatch(/^bought:/m);

  // at home, in another browser: the file brings the ticks; one taken away there is away, and undo brings it back
  const home = (await visit(rig, { viewport: desk })).page;
  await openText(home, text);
  await goToView(home, "parts");
  const atHome = home.locator(".basket li");
  await atHome.first().waitFor({ timeout: 120_000 });
  expect(
    await atHome
      .locator("input")
      .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).checked).slice(0, 3)),
  ).toEqual([true, true, false]);
  await atHome.nth(0).locator("label").click();
  await settled(home);
  expect(await home.locator(".basket-head").textContent()).toContain(`1 of ${all} in the basket`);
  await home.locator(".undo button").first().click();
  await settled(home);
  expect(await planText(home)).toBe(text);

  // bought: the plan has it as stock, wherever it is opened, and the list is shorter by it; undo brings it back
  await page.getByRole("button", { name: "Bought: put all 2 on the shelf" }).click();
  await settled(page);
  await page.locator('.parts[aria-busy="false"]').waitFor({ timeout: 120_000 });
  expect(await page.locator(".basket-head").textContent()).toContain(`0 of ${all - 2} in the basket`);
  expect(await planText(page)).toMatch(/^stock:/m);
  expect(await planText(page)).not.toMatch(/^bought:/m);
  await page.locator(".undo button").first().click();
  await settled(page);
  await page.locator('.parts[aria-busy="false"]').waitFor({ timeout: 120_000 });
  expect(await lines.count()).toBe(all);
});

test("a list without prices says so once, with what to do; one with most of them says so on its line", {
  timeout,
}, async () => {
  const { page } = await visit(rig, { viewport: phone });
  const utility = readFileSync("examples/utility.yaml", "utf8");
  await openText(page, utility.replace(/\nstock:[\s\S]*$/, "\n"));
  await goToView(page, "parts");
  const lines = page.locator(".basket li");
  await lines.first().waitFor({ timeout: 120_000 });
  const parts = page.locator(".parts");
  const all = await lines.count();
  expect(await parts.locator(".basket-prices").textContent()).toContain(`of ${all} lines have no price yet`);
  expect(await parts.textContent()).not.toMatch(/price not known|not on any price list/);
  expect(await page.locator(".basket-head").textContent()).toMatch(/\d+ without a price, not in the total/);
  await page.getByRole("link", { name: "Put in prices" }).click();
  await page.locator('main[data-view="gear"]').waitFor();

  await page.evaluate(() => {
    location.hash = "#/";
  });
  await page.locator(".start h1").waitFor();
  await openText(page, utility);
  await goToView(page, "parts");
  await lines.first().waitFor({ timeout: 120_000 });
  expect(await parts.locator(".basket-prices").count()).toBe(0);
  expect(await parts.textContent()).toContain("price not known");
});

/** Until what is to buy is worked out of the plan as it is now. */
async function listed(page: Page): Promise<void> {
  await settled(page);
  await page.locator('.parts[aria-busy="false"]').waitFor({ timeout: 120_000 });
}

test("what was bought is held against the list as it changes: more wanted, more than asked for, and no longer wanted", {
  timeout,
}, async () => {
  const { page } = await visit(rig, { viewport: phone });
  const utility = readFileSync("examples/utility.yaml", "utf8");
  await openText(
    page,
    `${utility}\nbought: {parts: {M16 gland: 1, "<img src=x onerror=alert(1)>": 3, fore lamp: 40}, wire: [{size: 18 AWG, cores: 2, length: 1 ft}]}\n`,
  );
  await goToView(page, "parts");
  const basket = page.locator(".basket");
  await basket.first().waitFor({ timeout: 120_000 });
  await listed(page);
  const gland = basket.locator("li", { hasText: "M16 gland" });
  expect(await gland.textContent()).toMatch(/1 bought, \d+ more wanted/);
  expect(await gland.locator("input").isChecked()).toBe(false);
  const wire = basket.locator("li", { hasText: "18 AWG, 2 cores" });
  expect(await wire.textContent()).toMatch(/bought, .* more wanted/);
  const gone = page.locator(".not-wanted li");
  expect(await gone.allTextContents()).toEqual(
    expect.arrayContaining([expect.stringContaining("<img src=x onerror=alert(1)>3")]),
  );
  const before = await gone.count();
  await gone.filter({ hasText: "img src" }).getByRole("button").click();
  await listed(page);
  expect(await gone.count()).toBe(before - 1);
  for (const line of [gland, wire]) {
    await line.locator("label").click();
    await listed(page);
    expect(await line.locator("input").isChecked()).toBe(true);
    expect(await line.textContent()).not.toContain("more wanted");
  }
  expect(
    await page.locator(".parts").evaluate((one) => one.scrollWidth - one.clientWidth),
  ).toBeLessThanOrEqual(0);
});

test("ticks kept by an earlier form of the page go into the plan by themselves, once; what the list does not ask for waits", {
  timeout,
}, async () => {
  const { page } = await visit(rig, { viewport: phone });
  await openExample(page, "tender");
  await goToView(page, "parts");
  const lines = page.locator(".basket li");
  await lines.first().waitFor({ timeout: 120_000 });
  const names = await lines.locator("b bdi").allTextContents();
  const key = await page.evaluate(() => `skiffloom basket ${location.hash.split("/")[2]}`);
  const [wire = ""] = names;
  const old = [`wire\n${wire}`, "terminal\nno such ring", "not a key"];
  await page.evaluate(
    ([to, ticks]) => localStorage.setItem(to ?? "", ticks ?? ""),
    [key, JSON.stringify(old)],
  );
  await page.reload();
  await lines.nth(0).locator("input:checked").waitFor({ timeout: 120_000 });
  const kept = () => page.evaluate((at) => localStorage.getItem(at), key);
  await expect.poll(kept).toBe(JSON.stringify(old.slice(1)));
  await listed(page);
  const text = await planText(page);
  expect(text).toMatch(/^bought: \{wire: \[/m);
  // it is not put in again, however often it is opened
  await page.reload();
  await lines.first().waitFor({ timeout: 120_000 });
  await listed(page);
  expect(await planText(page)).toBe(text);
});
