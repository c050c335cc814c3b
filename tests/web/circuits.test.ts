// The map of the circuits as a person uses it: by finger, by keyboard, and read as a table.
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { desk, goToView, openExample, openRig, phone, type Rig, settled, visit } from "./help.js";

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
  test("shows voltage, current and rating at each point, as the core works them out", async () => {
    const { page } = await atMap("utility");
    await expect
      .poll(() => page.locator(spot("coaming lamp 6")).textContent())
      .toMatch(/12\.25\sV · 0\.07\sA/);
    expect(await page.locator(spot("helm / lamps")).textContent()).toMatch(/1\sA.*10\sA/);
    expect(await page.locator('[data-run="lamp trunk"]').textContent()).toMatch(/18\sAWG.*0\.44\sA/);
  });

  test("a tap on gear lights both legs to the battery and nothing else, and lists each stretch", async () => {
    const { page } = await atMap("utility");
    await page.locator(spot("coaming lamp 4")).click();
    const lit = await page
      .locator('.spot[data-lit="true"]')
      .evaluateAll((all) => all.map((one) => one.getAttribute("data-name")));
    expect(lit).toEqual([
      "house",
      "helm",
      "helm / lamps",
      "fore box",
      "coaming lamp 1",
      "coaming lamp 2",
      "coaming lamp 3",
      "coaming lamp 4",
    ]);
    // Out and back are told apart by their pattern, not by colour alone.
    expect(await page.locator(".lit-out").count()).toBeGreaterThan(5);
    expect(await page.locator(".lit-back").count()).toBeGreaterThan(5);
    const rows = await page.locator(".trace-table tbody tr").allInnerTexts();
    expect(rows[0]).toContain("house");
    expect(rows.at(-1)).toMatch(/battery feed.*back/s);
    expect(rows.at(-1)).toMatch(/0\.00\sV/);
    expect(await page.locator(".slip h2").innerText()).toBe("coaming lamp 4");
  });

  test("what is selected in another view is what is traced here", async () => {
    const { page } = await atMap("utility");
    await goToView(page, "findings", "sounder");
    await goToView(page, "circuits", "sounder");
    await page.locator('.trace summary:has-text("sounder")').waitFor();
    expect(await page.locator(`${spot("sounder")}[aria-selected="true"]`).count()).toBe(1);
  });

  test("by keyboard alone: in, along, follow, let go", async () => {
    const { page } = await atMap("utility");
    await page.locator('.spot[tabindex="0"]').focus();
    await page.keyboard.press("Home");
    await page.keyboard.press("ArrowRight");
    expect(await page.evaluate(() => document.activeElement?.getAttribute("data-name"))).toBe("helm");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    const gear = await page.evaluate(() => document.activeElement?.getAttribute("data-name"));
    expect(gear).toBe("side lights");
    await page.keyboard.press("Enter");
    await page.locator('.trace summary:has-text("side lights")').waitFor();
    await page.locator(spot("side lights")).focus();
    await page.keyboard.press("Escape");
    await page.locator(".slip").waitFor({ state: "detached" });
    expect(await page.locator('.spot[data-lit="true"]').count()).toBe(0);
  });

  test("another draw changes the figures and moves nothing", async () => {
    const { page } = await atMap("utility");
    const places = () =>
      page.locator(".spot").evaluateAll((all) => all.map((one) => one.getAttribute("transform")));
    const before = await places();
    const was = await page.locator(spot("sounder")).textContent();
    await page.locator(spot("sounder")).click();
    const field = page.locator(".slip").getByLabel("draws", { exact: true });
    await field.fill("30 W");
    await field.press("Enter");
    await settled(page);
    await expect.poll(() => page.locator(spot("sounder")).textContent()).not.toBe(was);
    expect(await places()).toEqual(before);
  });

  test("another case shows other figures", async () => {
    const { page } = await atMap("tender");
    const was = await page.locator(spot("floor lamp 2")).textContent();
    await page.getByLabel("Case").selectOption("worst drop");
    await expect.poll(() => page.locator(spot("floor lamp 2")).textContent()).not.toBe(was);
  });

  test("at 360 px nothing has to be moved across, and each thing is a target of 44 px", async () => {
    const { page } = await atMap("launch", phone);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(360);
    const window = await page.locator(".map-window").evaluate((one) => one.scrollWidth - one.clientWidth);
    expect(window).toBeLessThanOrEqual(1);
    const edge = await page.locator(`${spot("floor lamp 3")} .spot-edge`).boundingBox();
    expect(edge?.height).toBeGreaterThanOrEqual(44);
    await page.locator(spot("floor lamp 3")).click();
    await page.locator(".trace summary").click();
    await page.locator(".trace-table").waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  });

  test("everything on it can be read as a table", async () => {
    const { page } = await atMap("launch");
    await page.locator(".map-table summary").click();
    const spots = await page.locator(".spot").count();
    expect(await page.locator(".map-table tbody tr").count()).toBe(spots);
    await page.locator(".map-table").getByRole("button", { name: "port trunk", exact: true }).first().click();
    await page.locator('.slip h2:has-text("port trunk")').waitFor();
    expect(await page.locator(`${spot("port box")}[data-lit="true"]`).count()).toBe(1);
  });
});
