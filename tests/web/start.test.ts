import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import {
  goToView,
  openExample,
  openRig,
  phone,
  planText,
  type Rig,
  settled,
  typeInto,
  visit,
  withOffline,
} from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

/** Answers one question of the new plan by its label. */
async function answer(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true });
  await field.fill(text);
  await field.press("Enter");
}

test("a new person answers a few questions and has a boat, gear and circuits, every figure live", async () => {
  const { page } = await visit(rig, withOffline);
  await page.getByRole("link", { name: /^New plan/ }).click();
  await answer(page, "What is it called?", "Sandpiper");
  await page.getByLabel("Feet and inches").check();
  await page.getByLabel("Sit-on-top kayak").check();
  await answer(page, "How long is it?", "13 ft 6 in");
  await answer(page, "How wide, at the widest?", "30 in");
  await answer(page, "How deep inside, amidships?", "14 in");
  await answer(page, "Capacity printed on it", "35 Ah");
  await page.getByLabel("Take sounder").check();
  const lamps = page.locator(".gear-row").filter({ hasText: "coaming lamp" });
  await lamps.getByLabel("how many").fill("6");
  await lamps.getByLabel("takes, each").fill("0.8 W");
  await page.getByRole("button", { name: "Make the plan" }).click();
  await settled(page);
  expect(await page.locator("h1").textContent()).toBe("Sandpiper");
  const hours = page.locator(".ledger .figure").first();
  expect(await hours.textContent()).toMatch(/\d\s(h|min)/);
  const text = await planText(page);
  for (const part of [
    "length: 13 ft 6 in",
    "count: 6",
    "draws: 0.8 W",
    "capacity: 35 Ah",
    "sounder",
    "start from: sit-on-top kayak",
    "rules: us",
  ])
    expect(text).toContain(part);

  await goToView(page, "circuits", "coaming lamp");
  await page.locator(".slip .thing-fields").waitFor();
  const before = await hours.textContent();
  await typeInto(page, "draws", "10 W");
  await settled(page);
  expect(await hours.textContent()).not.toBe(before);
  await page.reload();
  await settled(page);
  expect(await planText(page)).toContain("draws: 10 W");
  await page.goto(rig.address);
  await page.locator(".kept-plan").getByText("Sandpiper").waitFor();
});

test("answers that make no sense are told of where they stand, and no plan is made of them", async () => {
  const { page } = await visit(rig, { viewport: phone, hasTouch: true });
  await page.getByRole("link", { name: /^New plan/ }).tap();
  await answer(page, "How long is it?", "15 fathoms");
  await page.locator(".field .problem").waitFor();
  // a plan is not made past a value that was refused
  await page.getByRole("button", { name: "Make the plan" }).tap();
  await page.getByText("A value above is not taken over yet").waitFor();
  expect(await page.getByLabel("How long is it?").evaluate((field) => field === document.activeElement)).toBe(
    true,
  );
  await page.keyboard.press("Escape");
  // a bare number is asked about in the units one measures in
  await answer(page, "How wide, at the widest?", "1.6");
  await page.getByRole("button", { name: "Take 1.6 m", exact: true }).tap();
  expect(await page.getByLabel("How wide, at the widest?").inputValue()).toBe("1.6 m");
  await page.getByRole("button", { name: "Another piece of gear" }).tap();
  await page.getByRole("button", { name: "Make the plan" }).tap();
  await page.getByText("A piece of gear needs a name.").waitFor();
  await page.goto(rig.address);
  await page.getByText("None yet.").waitFor();
});

test("on the first example a walk begins by itself, can be left at any moment, and comes again when asked for", async () => {
  const { page } = await visit(rig);
  await openExample(page, "tender");
  const walk = page.locator(".walk");
  await walk.getByText("1 of 6").waitFor();
  expect(await page.locator(".ledger.walk-mark").count()).toBe(1);
  await walk.getByRole("button", { name: "Next" }).click();
  await walk.getByRole("button", { name: "Next" }).click();
  await page.locator('main[data-view="layout"]').waitFor();
  await walk.getByRole("button", { name: "Leave" }).click();
  await walk.waitFor({ state: "detached" });
  await page.reload();
  await settled(page);
  expect(await walk.count()).toBe(0);
  await page.getByRole("button", { name: "Tools" }).click();
  await page.getByRole("button", { name: "Show me around" }).click();
  const next = walk.getByRole("button", { name: "Next" });
  for (let note = 1; note < 4; note += 1) await next.click();
  await page.locator(".slip .thing-fields").waitFor();
  await next.click();
  await page.locator('main[data-view="findings"]').waitFor();
  await next.click();
  await walk.getByRole("button", { name: "Done" }).click();
  await walk.waitFor({ state: "detached" });
});

test("light, text size, lengths and language are the person's own, and stay", async () => {
  const { page } = await visit(rig);
  await page.getByRole("button", { name: "Settings" }).click();
  for (const choice of ["Dusk", "Larger", "Millimetres", "Español"])
    await page.getByLabel(choice, { exact: true }).check();
  await page.getByText("Un plan nuevo").or(page.getByText("Planes guardados")).first().waitFor();
  await page.reload();
  await page.locator(".start h1").waitFor();
  const page1 = await page.evaluate(() => {
    const { dataset, style, lang } = document.documentElement;
    return { light: dataset.light, size: style.fontSize, lang };
  });
  expect(page1).toEqual({ light: "dusk", size: "130%", lang: "es" });
  await openExample(page, "tender");
  expect(await page.locator(".stages").textContent()).toContain("Equipo");
  // what cannot be done or read is told in that language too
  await goToView(page, "gear", "floor lamp");
  await typeInto(page, "Nombre", "floor / lamp");
  await page.locator(".slip").getByText("No se ha hecho: el valor tiene que caber en una línea").waitFor();
  await goToView(page, "text");
  const text = await page.locator(".text-view textarea").inputValue();
  await page.locator(".text-view textarea").fill(text.replace("count: 2", "cuont: 2"));
  await page.getByRole("button", { name: "Tomar este texto" }).click();
  const told = page
    .locator(".read-problems")
    .getByText("Aquí no hay ninguna clave «cuont». ¿Querías decir «count»?");
  await told.waitFor();
  expect(await told.evaluate((item) => item.closest("[lang]")?.getAttribute("lang"))).toBe("es");
});

test("a term of the trade says what it means on hover, on a tap and by key; Escape closes it", async () => {
  const { page } = await visit(rig);
  await openExample(page, "tender");
  const sign = page.getByRole("button", { name: "What is meant by “reserve”?" });
  await sign.hover();
  // one of it, and seen: that of another term is not
  const note = page.locator(".term-means:not([hidden])");
  await note.getByText("part of a battery").waitFor();
  await page.mouse.move(700, 500);
  await note.waitFor({ state: "detached" });
  await sign.focus();
  await note.getByText("part of a battery").waitFor();
  await page.keyboard.press("Escape");
  await note.waitFor({ state: "detached" });
  await goToView(page, "terms");
  expect(await page.locator(".terms dt").count()).toBeGreaterThan(10);
});

test("edits that are nowhere but in this browser are told of, with a copy offered", async () => {
  const { page } = await visit(rig);
  await page.addInitScript(() => Reflect.deleteProperty(window, "showSaveFilePicker"));
  await page.reload();
  await openExample(page, "tender");
  await page.locator(".walk").getByRole("button", { name: "Leave" }).click();
  await goToView(page, "log", "floor lamp");
  const offer = page.getByText("kept in this browser and nowhere else");
  for (let watts = 1; watts <= 12; watts += 1) {
    expect(await offer.count()).toBe(0);
    await typeInto(page, "draws", `${watts} W`);
    await page.locator(`.keeping[data-steps="${watts + 1}"]`).waitFor();
  }
  await offer.waitFor();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.locator(".notice").getByRole("button", { name: "Save a copy" }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/\.yaml$/);
  await offer.waitFor({ state: "detached" });
});
