// The map of the circuits as a person uses it: by finger, by keyboard, and read as a table.
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { desk, goToView, openExample, openRig, phone, type Rig, settled, typeInto, visit } from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

async function atMap(example: "tender" | "utility" | "launch", viewport = desk) {
  const opened = await visit(rig, { viewport });
  await openExample(opened.page, example);
  await goToView(opened.page, "circuits");
  await opened.page.locator(".map").waitFor();
  return opened;
}

const spot = (name: string) => `.spot[data-name="${name}"]`;

describe("the map of the circuits", () => {
  test("shows figures at each point; a tap lights both legs to the battery and lists each stretch; another draw moves nothing", async () => {
    const { page } = await atMap("utility");
    await expect
      .poll(() => page.locator(spot("coaming lamp 6")).textContent())
      .toMatch(/12\.21\sV · 0\.07\sA/);
    expect(await page.locator(spot("helm / lamps")).textContent()).toMatch(/1\sA.*10\sA/);
    expect(await page.locator('[data-run="lamp trunk"]').textContent()).toMatch(/18\sAWG.*0\.44\sA/);

    await page.locator(spot("coaming lamp 4")).click();
    const chain = [1, 2, 3, 4].map((each) => `coaming lamp ${each}`);
    expect(await lit(page)).toEqual(["house", "helm", "helm / lamps", "fore box", ...chain]);
    // Out and back are told apart by their pattern, not by colour alone.
    expect(await page.locator(".lit-out").count()).toBeGreaterThan(5);
    expect(await page.locator(".lit-back").count()).toBeGreaterThan(5);
    const rows = await page.locator(".trace-table tbody tr").allInnerTexts();
    expect(rows[0]).toContain("house");
    expect(rows.at(-1)).toMatch(/battery feed.*back.*0\.00\sV/s);
    expect(await page.locator(".slip h2").textContent()).toBe("coaming lamp 4");

    const places = () =>
      page.locator(".spot").evaluateAll((all) => all.map((one) => one.getAttribute("transform")));
    const before = await places();
    const was = await page.locator(spot("sounder")).textContent();
    await page.locator(spot("sounder")).click();
    await typeInto(page, "draws", "30 W");
    await settled(page);
    await expect.poll(() => page.locator(spot("sounder")).textContent()).not.toBe(was);
    expect(await places()).toEqual(before);

    const nominal = await page.locator(spot("bilge pump")).textContent();
    await page.getByLabel("Case").selectOption("worst drop");
    await expect.poll(() => page.locator(spot("bilge pump")).textContent()).not.toBe(nominal);
  });

  test("at first sight of a large boat on a desk battery and gear are both in sight, and the words can be read", async () => {
    const { page } = await atMap("launch");
    const window = page.locator(".map-window");
    const beyondPx = () => window.evaluate((each) => each.scrollWidth - each.clientWidth);
    await expect.poll(beyondPx).toBeLessThanOrEqual(2);
    const name = await page.locator(`${spot("drive motor")} .map-name`).boundingBox();
    expect(name?.height).toBeGreaterThan(10);
    // a slip beside it leaves it as large as it is
    const widthPx = () => page.locator(".map").evaluate((each) => each.getBoundingClientRect().width);
    const before = await widthPx();
    await page.locator(spot("drive motor")).click();
    await page.locator(".slip").waitFor();
    expect(await widthPx()).toBe(before);
  });

  test("by keyboard alone: in, along, follow, let go; what is selected elsewhere is traced here; all of it is a table too", async () => {
    const { page } = await atMap("utility");
    await page.locator('.spot[tabindex="0"]').focus();
    for (const key of ["Home", "ArrowRight"]) await page.keyboard.press(key);
    const here = () => page.evaluate(() => document.activeElement?.getAttribute("data-name"));
    expect(await here()).toBe("helm");
    for (const key of ["ArrowRight", "ArrowRight"]) await page.keyboard.press(key);
    expect(await here()).toBe("side lights");
    await page.keyboard.press("Enter");
    await page.locator('.trace summary:has-text("side lights")').waitFor();
    await page.locator(spot("side lights")).focus();
    await page.keyboard.press("Escape");
    await page.locator(".slip").waitFor({ state: "detached" });
    expect(await lit(page)).toEqual([]);

    await goToView(page, "findings", "sounder");
    await goToView(page, "circuits", "sounder");
    await page.locator('.trace summary:has-text("sounder")').waitFor();
    expect(await page.locator(`${spot("sounder")}[aria-selected="true"]`).count()).toBe(1);

    await page.locator(".map-table summary").click();
    expect(await page.locator(".map-table tbody tr").count()).toBe(await page.locator(".spot").count());
    await page.locator(".map-table").getByRole("button", { name: "lamp trunk", exact: true }).click();
    await page.locator('.slip h2:has-text("lamp trunk")').waitFor();
    expect(await lit(page)).toEqual(["house", "helm", "helm / lamps", "fore box"]);
  });

  test("at 360 px nothing has to be moved across, and each thing is a target of 44 px", async () => {
    const { page } = await atMap("launch", phone);
    const over = () => page.locator(".circuits").evaluate((one) => one.scrollWidth - one.clientWidth);
    expect(await over()).toBeLessThanOrEqual(24);
    const window = await page.locator(".map-window").evaluate((one) => one.scrollWidth - one.clientWidth);
    expect(window).toBeLessThanOrEqual(1);
    const edge = await page.locator(`${spot("floor lamp 3")} .spot-edge`).boundingBox();
    expect(edge?.height).toBeGreaterThanOrEqual(44);
    await page.locator(spot("floor lamp 3")).click();
    await page.locator(".trace summary").click();
    await page.locator(".trace-table").waitFor();
    expect(await over()).toBeLessThanOrEqual(24);
  });

  test.each([
    ["launch", phone],
    ["utility", phone],
    ["launch", desk],
    ["utility", desk],
  ] as const)("%s: no length to cut is cut short itself", async (example, size) => {
    const { page } = await atMap(example, size);
    await page.locator(".map-small").filter({ hasText: /cut/ }).first().waitFor();
    const small = await page.locator(".map-small").allTextContents();
    expect(small.filter((text) => /cut\s\d.*(mm|m|in|ft)$/.test(text)).length).toBeGreaterThan(10);
    expect(small.filter((text) => text.includes("…") && /cut/.test(text))).toEqual([]);
  });
});

const lit = (page: Page) =>
  page
    .locator('.spot[data-lit="true"]')
    .evaluateAll((all) => all.map((one) => one.getAttribute("data-name")));
