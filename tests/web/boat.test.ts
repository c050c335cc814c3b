import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { curlew, spotOf } from "./boat-plan.js";
import { goToView, openRig, openText, phone, planText, type Rig, settled, visit } from "./help.js";

let rig: Rig;
/** One visitor for most tests: each opens the boat anew. */
let common: Page;
const complaints: string[] = [];
beforeAll(async () => {
  rig = await openRig();
  const context = await rig.browser.newContext({ viewport: { width: 1280, height: 900 }, locale: "en-GB" });
  common = await context.newPage();
  common.on("pageerror", (error) => complaints.push(String(error)));
  common.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
});
afterEach(() => expect(complaints.splice(0)).toEqual([]));
afterAll(() => rig.close());

async function openBoat(view: "survey" | "layout", plan = curlew): Promise<Page> {
  await common.goto(`${rig.address}#/`);
  await goAboard(common, view, plan);
  return common;
}

/** As another visitor. */
async function openBoatAs(options: Parameters<typeof visit>[1]): Promise<Page> {
  const { page } = await visit(rig, options);
  await goAboard(page, "layout", curlew);
  return page;
}

async function goAboard(page: Page, view: "survey" | "layout", plan: string): Promise<void> {
  await openText(page, plan);
  await goToView(page, view);
  await page.locator(".boat-sheet .hull-sheer").first().waitFor({ state: "attached" });
}

/** The plan's text; leaves one at the drawing. */
async function textOf(page: Page): Promise<string> {
  const text = await planText(page);
  await page.locator(".boat-sheet .hull-sheer").first().waitFor({ state: "attached" });
  return text;
}

const drag = async (page: Page, name: string, dx: number, dy: number, view = "plan", drop = true) => {
  const from = await spotOf(page, name, view);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + dx / 2, from.y + dy / 2, { steps: 3 });
  await page.mouse.move(from.x + dx, from.y + dy, { steps: 3 });
  if (drop) await page.mouse.up();
};
const standsAt = async (page: Page, name: string) =>
  new RegExp(`${name}: \\{.*stands at: (\\[[^\\]]*\\])`).exec(await textOf(page))?.[1];

describe("with the mouse", () => {
  test("a drag shows where the thing is, writes it once, and the figures follow; undo takes it back", async () => {
    const page = await openBoat("layout");
    await page.getByLabel("drop", { exact: true }).check();
    const drop = () => page.locator(".view-plan [data-run-label='lamp trunk']").textContent();
    const before = await drop();
    expect(before).toMatch(/V/);
    await drag(page, "fore box", 60, 40, "plan", false);
    await expect.poll(() => page.locator(".boat-measures").getAttribute("data-dragging")).toBe("fore box");
    expect(await page.locator(".boat-measures").textContent()).toContain("From the centreline");
    // still in the hand, the drop along the trunk is already that of its new length
    await expect.poll(drop, { timeout: 20_000 }).not.toBe(before);
    await page.mouse.up();
    await settled(page);
    expect(await drop()).not.toBe(before);
    expect(await standsAt(page, "fore box")).not.toBe("[3500 mm, 250 mm, 450 mm]");
    await page.getByRole("button", { name: /^Undo/ }).click();
    expect(await standsAt(page, "fore box")).toBe("[3500 mm, 250 mm, 450 mm]");
  });

  test("drops and findings follow in the frame itself, though nothing is settled beside the page", async () => {
    const page = await openBoat("layout");
    // the one that has worked out the boat stays; the one of the hand is kept from starting
    await common.route("**/figures-worker*", (route) => route.abort());
    await page.getByLabel("drop", { exact: true }).check();
    const label = () => page.locator(".boat-hand .hand-plan").textContent();
    await drag(page, "fore box", 60, 40, "plan", false);
    await expect.poll(label).toMatch(/V/);
    const seen = await label();
    const at = await spotOf(page, "helm");
    await page.mouse.move(at.x + 320, at.y - 120, { steps: 4 });
    await expect.poll(label).not.toBe(seen);
    await page.mouse.up();
    await common.unroute("**/figures-worker*");
    // the worker that was kept from loading is complained of
    complaints.splice(0);
  });

  test("what a thing at rest in the hand shows is what it shows once it is put down there: every figure, every finding", async () => {
    const page = await openBoat("layout");
    await page.getByLabel("drop", { exact: true }).check();
    const shown = async () => ({
      ledger: await page.locator(".ledger").textContent(),
      trunk: await page.locator(".view-plan [data-run-label='lamp trunk']").textContent(),
    });
    const before = await shown();
    await drag(page, "fore box", -90, -20);
    await settled(page);
    const putDown = await shown();
    expect(putDown).not.toEqual(before);
    await page.getByRole("button", { name: /^Undo/ }).click();
    await settled(page);
    expect(await shown()).toEqual(before);
    // by another way, with a rest on it: what is settled there is taken in, and then settled anew
    const from = await spotOf(page, "fore box");
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x - 30, from.y + 30, { steps: 3 });
    await page.waitForTimeout(600);
    await page.mouse.move(from.x - 90, from.y - 20, { steps: 3 });
    await expect.poll(shown, { timeout: 20_000 }).toEqual(putDown);
    await page.waitForTimeout(600);
    expect(await shown()).toEqual(putDown);
    await page.keyboard.press("Escape");
    await page.mouse.up();
  });

  test("it holds on to the centreline and says so; with Alt it goes free", async () => {
    const page = await openBoat("layout");
    const [box, house] = [await spotOf(page, "sounder"), await spotOf(page, "house")];
    await drag(page, "sounder", 37, house.y - box.y + 4, "plan", false);
    expect(await page.locator(".boat-measures").textContent()).toContain("on the centreline");
    await page.mouse.up();
    expect(await standsAt(page, "sounder")).toMatch(/, 0 mm, 620 mm\]$/);
  });

  test("it holds on to the mirror image of another thing", async () => {
    const page = await openBoat("layout");
    const [box, house, helm] = [
      await spotOf(page, "fore box"),
      await spotOf(page, "house"),
      await spotOf(page, "helm"),
    ];
    const port = house.y - (helm.y - house.y);
    await drag(page, "fore box", -61, port - box.y + 3, "plan", false);
    expect(await page.locator(".boat-measures-name").textContent()).toContain("mirrors helm");
    await page.mouse.up();
    expect(await standsAt(page, "fore box")).toMatch(/, 450 mm, 450 mm\]$/);
  });

  test("a lamp on a face stays on it, and its twin and its row come along", async () => {
    const page = await openBoat("layout");
    await drag(page, "coaming lamp 2", 40, 0, "profile");
    const text = await textOf(page);
    const row = /row: \{from: (\d+) mm, to: (\d+) mm, below: sheer, off: (\d+) mm\}/.exec(text);
    expect(Number(row?.[1])).toBeGreaterThan(400);
    expect(Number(row?.[2]) - Number(row?.[1])).toBeCloseTo(2300, -1);
    const [port, starboard] = [await spotOf(page, "coaming lamp 2"), await spotOf(page, "coaming lamp 5")];
    expect(port.x).toBeCloseTo(starboard.x, 0);
  });

  test("the wheel zooms about the pointer, the background pans, and the whole boat comes back", async () => {
    const page = await openBoat("layout");
    const at = await spotOf(page, "helm");
    await page.mouse.move(at.x, at.y);
    // the mouse stands on a whole pixel, and half of one grows sevenfold
    for (let i = 0; i < 5; i++) await page.mouse.wheel(0, -200);
    await expect.poll(async () => Math.abs((await spotOf(page, "helm")).x - at.x)).toBeLessThan(8);
    const transform = () => page.locator(".boat-sheet > g").getAttribute("transform");
    const zoomed = await transform();
    expect(Number(/scale\((.*)\)/.exec(zoomed ?? "")?.[1])).toBeGreaterThan(0.5);
    await page.mouse.move(at.x + 90, at.y + 70);
    await page.mouse.down();
    await page.mouse.move(at.x + 40, at.y + 40, { steps: 3 });
    await page.mouse.up();
    expect(await transform()).not.toBe(zoomed);
    await page.getByRole("button", { name: "Whole boat" }).click();
    const back = await spotOf(page, "helm");
    expect(Math.hypot(back.x - at.x, back.y - at.y)).toBeLessThan(2);
  });

  test("gear without a place is dragged in from beside the sheet, all pieces of it", async () => {
    const page = await openBoat("layout");
    const handle = await page.locator("[data-unplaced='deck lamp'] .boat-handle").boundingBox();
    const to = await spotOf(page, "sounder");
    if (!handle) throw new Error("deck lamp should wait for a place");
    await page.mouse.move(handle.x + 20, handle.y + 20);
    await page.mouse.down();
    await page.mouse.move(to.x + 30, to.y - 60, { steps: 4 });
    await page.mouse.up();
    await page.waitForSelector("[data-thing='deck lamp 4']");
    expect(await page.locator("[data-unplaced='deck lamp']").count()).toBe(0);
    expect(await textOf(page)).toMatch(/stands at: \[(\[[^\]]*\](, )?){4}\]/);
  });
});

describe("row and mirror", () => {
  test("four lamps become pairs, and each change is one step to undo", async () => {
    const page = await openBoat("layout");
    await page.getByRole("button", { name: /Place deck lamp/ }).click();
    await page.waitForSelector("[data-thing='deck lamp 4']");
    const row = () => page.getByRole("button", { name: "Spread in a row" });
    await drag(page, "deck lamp 1", -30, 0);
    await page.locator("[data-thing='deck lamp 1'][data-view=plan]").click();
    await row().click();
    const xs = await Promise.all([1, 2, 3, 4].map(async (i) => (await spotOf(page, `deck lamp ${i}`)).x));
    const gaps = xs.slice(1).map((x, i) => x - (xs[i] ?? 0));
    expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThan(1.5);
    await drag(page, "deck lamp 1", 0, -60);
    await drag(page, "deck lamp 2", 0, -60);
    const before = await textOf(page);
    await page.getByRole("button", { name: "Mirror" }).click();
    const middle = (await spotOf(page, "house")).y;
    const [one, four] = [await spotOf(page, "deck lamp 1"), await spotOf(page, "deck lamp 4")];
    expect(one.x).toBeCloseTo(four.x, 0);
    expect(one.y - middle).toBeCloseTo(middle - four.y, 0);
    await page.getByRole("button", { name: /^Undo/ }).click();
    expect(await textOf(page)).toBe(before);
  });
});

describe("with the keyboard alone", () => {
  test("go from thing to thing, nudge, select, and type the place in the slip", async () => {
    const page = await openBoat("layout");
    await page.locator(".boat-sheet [tabindex='0']").focus();
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute("data-thing"));
    expect(await focused()).toBe("house");
    for (let i = 0; i < 30 && (await focused()) !== "sounder"; i++) {
      await page.keyboard.press("PageDown");
      await page.waitForTimeout(40);
    }
    expect(await focused()).toBe("sounder");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Shift+ArrowRight");
    await page.keyboard.press("Alt+ArrowUp");
    await expect.poll(() => page.locator(".boat-measures").count()).toBe(0);
    expect(await standsAt(page, "sounder")).toBe("[2010 mm, -249 mm, 620 mm]");
    await page.locator(".boat-sheet [data-thing=sounder][data-view=plan]").focus();
    await page.keyboard.press("Enter");
    const forward = page.locator(".place-fields").getByLabel("Forward of station 0");
    await forward.fill("2.5 m");
    await forward.press("Enter");
    expect(await standsAt(page, "sounder")).toBe("[2.5 m, -249 mm, 620 mm]");
    await forward.fill("two paces");
    await forward.press("Enter");
    expect(await forward.getAttribute("aria-invalid")).toBe("true");
  });

  test("Escape puts back what is in hand", async () => {
    const page = await openBoat("layout");
    await page.locator(".boat-sheet [tabindex='0']").focus();
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Escape");
    expect(await standsAt(page, "house")).toBe("[400 mm, 0 mm, 260 mm]");
  });
});

describe("with a finger, at the size of a phone", () => {
  test("a tap selects; only then a finger moves it; one finger elsewhere scrolls the page", async () => {
    const page = await openBoatAs({ viewport: phone, hasTouch: true, isMobile: true });
    expect(
      await page.evaluate(() => document.querySelector(".boat-view")?.scrollWidth ?? 0),
    ).toBeLessThanOrEqual(360);
    await page.locator(".boat-sheet").scrollIntoViewIfNeeded();
    const at = await spotOf(page, "sounder");
    await page.touchscreen.tap(at.x, at.y);
    await page.waitForSelector("[data-thing=sounder][data-selected]");
    const grip = page.locator("[data-thing=sounder][data-view=plan] .grip");
    expect(await grip.evaluate((element) => getComputedStyle(element).touchAction)).toBe("none");
    expect((await grip.boundingBox())?.width).toBeGreaterThanOrEqual(43);
    const small = await page
      .locator(".boat-view button:visible, .boat-view summary:visible")
      .evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height < 43.5).length);
    expect(small).toBe(0);
  });
});

describe("what is said", () => {
  test("a plan without a form is drawn as an outline, and says that it is one and what was assumed", async () => {
    const plan = "skiffloom: 1\nname: Bare   # invented\nrules: iso\ncraft: {kind: canoe, length: 5 m}\n";
    const page = await openBoat("survey", plan);
    const note = page.locator(".boat-note");
    expect(await note.textContent()).toMatch(
      /Outline, not her form.*canoe.*Assumed as well: beam and depth/s,
    );
    // with the tape the outline becomes her form, and each figure taken asks for the next in the same field
    const measures = page.locator(".her-measures");
    const type = async (label: string, value: string) => {
      await measures.getByLabel(label, { exact: true }).fill(value);
      await page.keyboard.press("Enter");
    };
    await type("Depth amidships, bottom to edge", "310 mm");
    await measures.getByText("The depth waits for: Widest, side to side.").waitFor();
    await type("Widest, side to side", "88 cm");
    await note.waitFor({ state: "detached" });
    const next = measures.locator(".measure-fields").nth(1).locator("input").first();
    const asked = await next.getAttribute("placeholder");
    expect(asked).toMatch(/^unsure by \d+\smm$/u);
    for (const value of ["350 mm", "300 mm"]) {
      await next.fill(value);
      await page.keyboard.press("Enter");
    }
    expect(await next.evaluate((field) => field === document.activeElement)).toBe(true);
    await measures.getByText(/^Measured at [12] place/).waitFor();
    // with what she carries the water line is there
    const water = page.locator(".view-profile .water path:not(.under-water)");
    expect(await water.count()).toBe(0);
    await page.getByLabel("The bare boat weighs").fill("30");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Take 30 kg", exact: true }).click();
    const person = page.getByRole("form", { name: "Add this person" });
    await person.getByLabel("Who").fill("skipper");
    await person.getByLabel("Weight").fill("75 kg");
    await page.keyboard.press("Enter");
    await page.getByLabel("skipper weighs").waitFor();
    await expect.poll(() => water.count()).toBe(1);
    const text = await textOf(page);
    expect(text).toMatch(/form: \{start from: canoe, depth: 310 mm, measured: \[\{line: \w+, at: \d+ mm, /);
    await page.locator(".measured-figures button").first().click();
    await page.getByRole("button", { name: /^Undo/ }).click();
    expect(await textOf(page)).toBe(text);
  });

  test("the list tells in words what is drawn and where, and what is not", async () => {
    const page = await openBoat("layout");
    await page.getByText("What is drawn, and where").click();
    const list = page.locator(".boat-where");
    await expect
      .poll(() => list.locator("tr", { hasText: "helm" }).first().textContent())
      .toMatch(/450\smm to starboard/);
    expect(await list.textContent()).toContain("helm → knee → fore box; along its way");
    expect(await list.textContent()).toContain("drawn straight, no way known");
  });

  test("a figure layer tells by line style and label too; the water line is drawn where she floats", async () => {
    const page = await openBoat("layout");
    expect(await page.locator(".view-profile .water path:not(.under-water)").count()).toBe(1);
    for (const layer of ["current", "heat", "bundle", "drop"]) {
      await page.getByLabel(layer, { exact: true }).check();
      expect(await page.locator(".boat-key li").count()).toBe(5);
      expect(await page.locator(".view-plan .run-label").count()).toBeGreaterThan(2);
    }
    const styles = await page
      .locator(".boat-key .run-line")
      .evaluateAll((all) =>
        all.map((one) => `${getComputedStyle(one).strokeWidth} ${getComputedStyle(one).strokeDasharray}`),
      );
    expect(new Set(styles).size).toBe(5);
  });
});

describe("for everyone", () => {
  const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

  test.each([
    ["light", 1280],
    ["dark", 1280],
    ["light", 360],
    ["dark", 360],
  ] as const)("axe finds nothing by %s at %i px", async (light, width) => {
    const page = await openBoatAs({
      colorScheme: light,
      viewport: { width, height: 900 },
      // the policy keeps axe out too: it is put in past it, in this context only
      bypassCSP: true,
    });
    await page.getByText("What is drawn, and where").click();
    await page.getByLabel("drop", { exact: true }).check();
    const found = async () => {
      await page.evaluate(axeSource);
      return page.evaluate(async () => {
        const { axe } = window as unknown as {
          axe: { run(where: string): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
        };
        const { violations } = await axe.run("main");
        return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
      });
    };
    expect(await found()).toEqual([]);
    await page.locator("[data-thing=helm][data-view=plan]").focus();
    await page.keyboard.press("Enter");
    await page.waitForSelector(".place-fields");
    expect(await found()).toEqual([]);
  });
});
