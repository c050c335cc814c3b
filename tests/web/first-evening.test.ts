import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { newPlanText } from "../../src/core/plan/new/new-plan.js";
import { goToView, openRig, openText, planText, type Rig, visit } from "./help.js";

// What a new plan, as the few questions of the start view make it, is told step by step after that.
let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

/** An invented kayak, begun and no more. */
const begun = newPlanText({
  name: "Sandpiper",
  kind: "sit-on-top kayak",
  length: "13 ft 6 in",
  beam: "30 in",
  form: { shape: "sit-on-top kayak", depth: "14 in" },
  lengths: "inches",
  rules: "us",
  battery: { chemistry: "agm", capacity: "35 Ah", cable: "6 ft" },
  gear: [
    { name: "coaming lamp", role: "lighting", draws: "0.8 W", count: 6, cable: "9 ft" },
    { name: "all-round light", role: "navigation light", draws: "2 W", cable: "10 ft" },
    { name: "bilge pump", role: "bilge pump", draws: "2.8 A at 12 V", cable: "7 ft" },
    { name: "sounder", role: "electronics", draws: "9 W", cable: "4 ft" },
  ],
}).text;

async function opened(): Promise<Page> {
  const { page } = await visit(rig);
  await openText(page, begun);
  return page;
}

test("what could not be judged asks for what it lacks where it says so: of all runs at once", async () => {
  const page = await opened();
  await page.locator(".ledger-counts").click();
  const chafe = page.locator('.finding[data-rule="chafe"]');
  await chafe.locator("> summary").click();
  await chafe.getByLabel(/^All \d+: Kept from chafe$/).selectOption("yes");
  await chafe.waitFor({ state: "detached" });
  expect((await planText(page)).match(/protected from chafe: true/g)).toHaveLength(5);
});

test("a battery that nothing charges is given a charger in its finding", async () => {
  const page = await opened();
  await page.locator(".ledger-counts").click();
  const uncharged = page.locator('.finding[data-rule="charger-missing"]');
  await uncharged.locator("> summary").click();
  await uncharged.getByLabel("Gives at most").fill("5 A");
  await uncharged.getByRole("button", { name: "Add this charger" }).click();
  await uncharged.waitFor({ state: "detached" });
  expect(await planText(page)).toMatch(/charges: battery, output: 5 A/);
});

test("one more piece of gear comes with its way, its cable and its part of the outing, in one step", async () => {
  const page = await opened();
  await goToView(page, "gear");
  await page.getByText("Add gear with its way and cable").click();
  const whole = page.getByRole("form", { name: "Add it" });
  await whole.getByLabel("Name").fill("anchor light");
  await whole.getByRole("button").click();
  await whole.getByText("Takes, each: this is wanted.").waitFor();
  await whole.getByLabel("Takes, each").fill("1.5 W");
  await whole.getByLabel("Fed by").selectOption("panel / running lights");
  await whole.getByRole("button").click();
  await page.locator(".slip").getByText("anchor light").first().waitFor();
  const wired = await planText(page);
  expect(wired).toContain(
    "anchor light cable: {from: panel / running lights, to: anchor light, length: 6 ft}",
  );
  expect(wired).toMatch(/\{what: anchor light, .*\}/);
});

test("a panel that was not measured asks for its inside, and then has its card", async () => {
  const page = await opened();
  await goToView(page, "boxes");
  for (const [measure, inside] of [
    ["Across", "9 in"],
    ["Up", "6 in"],
    ["Deep, base to lid", "3 in"],
  ] as const) {
    const field = page.getByLabel(measure, { exact: true });
    await field.fill(inside);
    await field.press("Enter");
  }
  await page.locator('.box-card[aria-labelledby="box panel"]').waitFor();
  expect(await planText(page)).toContain("inside: [9 in, 6 in, 3 in]");
});

test("a face to drill, a point to measure from, and the lamps on that face in a row on both sides", async () => {
  const page = await opened();
  await goToView(page, "survey");
  await page.getByRole("button", { name: "Add this face" }).click();
  await page.getByRole("button", { name: "side", exact: true }).waitFor();
  await page.getByRole("button", { name: "side", exact: true }).click();
  const clear = page.getByRole("form", { name: "Keep it clear" });
  await clear.getByLabel("Name").fill("third frame");
  await clear.getByLabel("What is there").selectOption("a frame");
  await clear.getByLabel("From station").fill("60 in");
  await clear.getByLabel("To station").fill("62 in");
  await clear.getByRole("button").click();
  await page.locator(".slip").getByText("Not to drill: 1").waitFor();
  await page.keyboard.press("Escape");
  const point = page.getByRole("form", { name: "Add this point" });
  await point.getByLabel("Name").fill("knee");
  await point.getByLabel("At station").fill("70");
  await page.keyboard.press("Enter");
  await point.getByText(/^At station: The unit is missing/).waitFor();
  await point.getByLabel("At station").fill("70 in");
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "knee", exact: true }).waitFor();
  await goToView(page, "layout", "coaming lamp");
  await page.locator(".slip").getByLabel("Stands").selectOption("on side");
  await page.locator('[data-thing="coaming lamp 6"]').first().waitFor({ state: "attached" });
  const marked = await planText(page);
  expect(marked).toMatch(
    /side: \{strip: \[bilge, sheer\], from: .*, to: .*, pair: true, zones: .*third frame/,
  );
  expect(marked).toMatch(/on: side\n.*row: \{from: .* in, to: .* in, below: sheer, off: 3 in\}/);
  expect(marked).toContain("knee: {on: sheer, station: 70 in, pair: true}");
});
