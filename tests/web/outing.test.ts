// An outing as a person plans it: drag, type, use the keys; the plan says it and the battery follows.
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import {
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

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

async function atOuting(example: "tender" | "launch", viewport?: { width: number; height: number }) {
  const opened = await visit(rig, viewport ? { viewport } : {});
  await openExample(opened.page, example);
  await goToView(opened.page, "outing");
  await opened.page.locator(".curve path").first().waitFor();
  return opened;
}

const field = (page: Page, label: string) => page.locator(".outing").getByLabel(label, { exact: true });

async function type(page: Page, label: string, value: string) {
  await field(page, label).fill(value);
  await field(page, label).press("Enter");
  await settled(page);
}

const open = (page: Page, what: string) => page.locator(`button.lane-name:has-text("${what}")`).click();

/** What is said of what is on in the plan's text. */
const lineOf = (text: string, what: string) =>
  text.split("\n").find((line) => line.includes(`{what: ${what}`)) ?? "";

// Some twenty edits of a plan of forty pieces, each worked out anew: seconds on a quiet machine, more on a busy one.
const timeout = 180_000;

test("lamps dragged on at 19:00, a pump for 5 min in the hour, a motor at half; the battery follows each", {
  timeout,
}, async () => {
  const { page } = await atOuting("launch");
  const left = () => page.locator(".outing-results tbody tr").first().locator("td").nth(1).textContent();
  const was = await left();

  // The lamps start at 20:30; the outing at 18:30 and lasts 4 h.
  const grip = page.getByRole("slider", { name: "coaming lamp: from" });
  const box = await grip.boundingBox();
  const track = await page.locator('.lane:has([data-on="coaming lamp"])').boundingBox();
  if (!box || !track) throw new RangeError("the bar of the lamps is not there");
  const y = box.y + box.height / 2;
  await page.mouse.move(box.x + box.width / 2, y);
  await page.mouse.down();
  await page.mouse.move(box.x - 40, y, { steps: 4 });
  await page.mouse.move(track.x + (0.5 / 4) * track.width, y, { steps: 4 });
  expect(await grip.getAttribute("aria-valuetext")).toBe("19:00");
  await page.mouse.up();
  await settled(page);

  await open(page, "aft bilge pump");
  await type(page, "Runs", "5 min each hour");
  await page.locator(".period-editor").getByRole("button", { name: "Done" }).click();
  await open(page, "drive motor");
  await type(page, "Level", "45 %");
  await page.getByLabel("Share of its full draw").press("ArrowRight");
  await settled(page);
  await expect.poll(left).not.toBe(was);

  const text = await planText(page);
  expect(lineOf(text, "coaming lamp")).toMatch(/from: 30 min/);
  expect(lineOf(text, "aft bilge pump")).toMatch(/runs: 5 min each hour/);
  expect(lineOf(text, "drive motor")).toMatch(/level: 50 %/);
  await goToView(page, "outing");

  // By keyboard: an hour later, five minutes earlier; a time as one types it; undone, it is as before.
  const end = page.getByRole("slider", { name: "floor lamp: to" });
  await end.focus();
  await page.keyboard.press("PageUp");
  await expect.poll(() => end.getAttribute("aria-valuetext")).toBe("22:30");
  await page.keyboard.press("ArrowLeft");
  await expect.poll(() => end.getAttribute("aria-valuetext")).toBe("22:25");
  await open(page, "floor lamp");
  await type(page, "From", "19:45");
  await expect
    .poll(() => page.getByRole("slider", { name: "floor lamp: from" }).getAttribute("aria-valuetext"))
    .toBe("19:45");
  await field(page, "To").fill("soon");
  await field(page, "To").press("Enter");
  expect(await page.locator(".period-editor [role=alert]").textContent()).toContain("19:00");
  await field(page, "To").press("Escape");
  expect(lineOf(await planText(page), "floor lamp")).toMatch(/from: 1 h 15 min, to: 3 h 55 min/);
});

test("on a phone: an outing too long for its battery shows when the reserve is reached and what gets too little; another outing is made and taken away", {
  timeout,
}, async () => {
  const { page } = await atOuting("tender", phone);
  expect(
    await page.locator(".outing").evaluate((one) => one.scrollWidth - one.clientWidth),
  ).toBeLessThanOrEqual(24);
  await type(page, "Lasts", "100 h");
  await open(page, "stern pole light");
  await field(page, "To").fill("100 h");
  await field(page, "To").press("Enter");
  await settled(page);
  await page.locator(".moment").first().waitFor();
  expect(await page.locator(".moment").count()).toBe(2);
  // When the battery is empty the light gets too little: marked on the curve, and told with its voltage.
  expect(await page.locator(".brown-out").count()).toBeGreaterThan(0);
  const told = await page.locator(".outing-results .short-findings").textContent();
  expect(told).toMatch(/stern pole light: .*V at .*, needs 9\.00\sV/);

  await page.getByRole("button", { name: "Add an outing" }).click();
  await settled(page);
  expect(await field(page, "outing 2").isChecked()).toBe(true);
  await page.getByLabel("Add what is on").selectOption("thwart panel / floor");
  await page.getByRole("button", { name: "Add", exact: true }).click();
  await settled(page);
  expect(await planText(page)).toMatch(/outing 2:.*what: thwart panel \/ floor/s);
  await goToView(page, "outing");
  await page.getByRole("radio", { name: "outing 2" }).check();
  await page.getByRole("button", { name: "Remove this outing" }).click();
  await settled(page);
  expect(await planText(page)).not.toContain("outing 2");
});

test("an outing called as a piece of gear is edited as the outing it is", { timeout }, async () => {
  const { page } = await visit(rig);
  const name = "stern pole light";
  const text = readFileSync("examples/tender.yaml", "utf8");
  await openText(page, text.replace("\n  evening row:\n", `\n  ${name}:\n`));
  await goToView(page, "outing");
  await type(page, "Lasts", "7 h");
  expect(await field(page, "Lasts").inputValue()).toBe("7 h");
  const lines = (await planText(page)).split("\n");
  const at = lines.indexOf(
    `  ${name}:`,
    lines.findIndex((line) => line.startsWith("outings:")),
  );
  expect(lines.slice(at, at + 4)).toContain("    lasts: 7 h");
});
