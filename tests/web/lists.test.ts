import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { readPlan } from "../../src/core/plan/read.js";
import {
  desk,
  goToView,
  openAsFile,
  openRig,
  openText,
  phone,
  planText,
  type Rig,
  settled,
  visit,
} from "./help.js";

let rig: Rig;
/** One visitor for most tests: each opens its own plan. */
let common: Page;
const complaints: string[] = [];
beforeAll(async () => {
  rig = await openRig();
  const context = await rig.browser.newContext({ viewport: desk, locale: "en-GB" });
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  common = await context.newPage();
  common.on("pageerror", (error) => complaints.push(String(error)));
  common.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
});
afterEach(() => expect(complaints.splice(0)).toEqual([]));
afterAll(() => rig.close());

// an invented dinghy
const dinghy = `skiffloom: 1
name: Dinghy of the tests
rules: iso
batteries:
  house: {chemistry: agm, capacity: 50 Ah}
panels:
  helm:
    ways:
      lamps: {fuse: 5 A}   # keep this word
gear:
  bow lamp: {role: lighting, draws: 3 W}
  aft lamp: {role: lighting, draws: 12 W}
  reading lamp: {role: lighting, draws: 0.5 A at 12 V}
runs:
  feed: {from: house, to: helm, length: 1 m}
  bow line: {from: helm / lamps, to: bow lamp, length: 2 m}
stock:
  wire:
    - {size: 1.5 mm2, length: 3 m}
`;

async function open(text = dinghy): Promise<Page> {
  await common.goto(`${rig.address}#/`);
  await openText(common, text);
  await goToLists(common);
  return common;
}

/** As another visitor. */
async function openAs(options: Parameters<typeof visit>[1]): Promise<Page> {
  const { page } = await visit(rig, options);
  await openText(page, dinghy);
  await goToLists(page);
  return page;
}

async function goToLists(page: Page) {
  await goToView(page, "gear");
  await page.locator(".list-grid").waitFor();
}

/** The cell in a line (counted from 0) under a heading. */
async function cell(page: Page, row: number, heading: string) {
  const titles = await page.locator(".list-grid thead th").allInnerTexts();
  const column = titles.findIndex((title) => title.trim() === heading) - 1;
  return page.locator(`[data-row="${row}"][data-column="${column}"]`);
}

/** Pastes a text, or a letter so many times, where the focus is. */
const pasteHere = (page: Page, text: string, times = 1) =>
  page.evaluate(
    ([pasted, count]) => {
      const data = new DataTransfer();
      data.setData("text/plain", pasted.repeat(count));
      const event = new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true });
      document.activeElement?.dispatchEvent(event);
    },
    [text, times] as const,
  );

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

interface AxeWindow {
  readonly axe: {
    run(where: string): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
  };
}

test.each(["light", "dark"] as const)(
  "axe finds nothing wrong, %s, with a wrong cell open",
  async (colorScheme) => {
    const page = await openAs({ colorScheme, bypassCSP: true });
    await (await cell(page, 0, "Draws")).click();
    await page.keyboard.type("much");
    await page.keyboard.press("Enter");
    await page.keyboard.press("ArrowUp");
    await page.evaluate(axeSource);
    const found = await page.evaluate(
      async () => (await (window as unknown as AxeWindow).axe.run(".lists")).violations,
    );
    expect(found.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  },
);

describe("by keyboard", () => {
  test("a quantity is typed as people write it; undo takes it back; comments stay", async () => {
    const page = await open();
    await (await cell(page, 0, "Draws")).click();
    await page.keyboard.type("4.5 W");
    await page.keyboard.press("Enter");
    await settled(page);
    expect(await (await cell(page, 0, "Draws")).textContent()).toBe("4.5 W");
    expect(await page.evaluate(() => document.activeElement?.getAttribute("data-row"))).toBe("1");
    const text = await planText(page);
    expect(text).toBe(dinghy.replace("draws: 3 W", "draws: 4.5 W"));
    await goToLists(page);
    await page.getByRole("button", { name: /^Undo/ }).click();
    expect(await planText(page)).toBe(dinghy);
  });

  test("what can't be read is said at the cell, kept there, and changes nothing", async () => {
    const page = await open();
    const draws = await cell(page, 1, "Draws");
    await draws.click();
    await page.keyboard.type("3 fathoms");
    await page.keyboard.press("Enter");
    expect(await draws.getAttribute("aria-invalid")).toBe("true");
    await page.keyboard.press("ArrowUp");
    await expect.poll(() => draws.locator(".cell-problem").isVisible()).toBe(true);
    expect(await draws.locator(".cell-problem").textContent()).toMatch(/Wanted: what it takes/);
    expect(await planText(page)).toBe(dinghy);
  });

  test("arrows with shift take in cells; fill down and delete are one step each", async () => {
    const page = await open();
    await (await cell(page, 0, "Surroundings")).click();
    await page.keyboard.type("splash");
    await page.keyboard.press("Enter");
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("Shift+ArrowDown");
    await page.keyboard.press("Shift+ArrowDown");
    await page.keyboard.press("Control+d");
    await settled(page);
    expect((await planText(page)).match(/surroundings: splash/g)).toHaveLength(3);
    await page.getByRole("button", { name: /^Undo/ }).click();
    expect((await planText(page)).match(/surroundings: splash/g)).toHaveLength(1);
  });

  test("a line is added once it has what it needs; until then it says what is wanted", async () => {
    const page = await open();
    await page.getByRole("button", { name: "Add a line" }).click();
    await page.keyboard.type("horn");
    await page.keyboard.press("Tab");
    expect(await (await cell(page, 3, "Draws")).textContent()).toBe("wanted");
    expect(await planText(page)).toBe(dinghy);
    await goToLists(page);
    await (await cell(page, 3, "Draws")).click();
    await page.keyboard.type("4 A at 12 V");
    await page.keyboard.press("Enter");
    await settled(page);
    expect(await planText(page)).toContain("horn: {draws: 4 A at 12 V}");
  });

  test("leads want size and length together: the first waits for the second", async () => {
    const page = await open();
    await (await cell(page, 0, "Leads: size")).click();
    await page.keyboard.type("16 AWG");
    await page.keyboard.press("Tab");
    await page.keyboard.type("3/4 in");
    await page.keyboard.press("Enter");
    await settled(page);
    expect(await planText(page)).toContain("leads: {size: 16 AWG, length: 3/4 in}");
  });

  test("a new name goes wherever the plan speaks of the thing", async () => {
    const page = await open();
    await (await cell(page, 0, "Name")).click();
    await page.keyboard.press("F2");
    await page.keyboard.press("Control+a");
    await page.keyboard.type("stem lamp");
    await page.keyboard.press("Enter");
    await settled(page);
    expect(await planText(page)).toBe(dinghy.replaceAll("bow lamp", "stem lamp"));
  });
});

describe("several lines", () => {
  test("picked lines are duplicated and taken away in one step", async () => {
    const page = await open();
    await page.getByLabel("Pick aft lamp").check();
    await page.getByLabel("Pick reading lamp").check();
    await page.getByRole("button", { name: "Duplicate" }).click();
    await settled(page);
    const text = await planText(page);
    expect(text).toContain("aft lamp b: {role: lighting, draws: 12 W}");
    expect(text).toContain("reading lamp b: {role: lighting, draws: 0.5 A at 12 V}");
    await goToLists(page);
    for (const name of ["aft lamp", "aft lamp b"])
      await page.getByLabel(`Pick ${name}`, { exact: true }).check();
    await page.getByRole("button", { name: "Remove" }).click();
    await settled(page);
    expect(await planText(page)).not.toContain("aft lamp");
  });

  test("sorting changes what is shown, and leaves the plan alone", async () => {
    const page = await open();
    await page.getByLabel("Order").selectOption({ label: "Name, upward" });
    const names = () => page.locator(".list-grid tbody th bdi").allInnerTexts();
    expect(await names()).toEqual(["aft lamp", "bow lamp", "reading lamp"]);
    expect(await planText(page)).toBe(dinghy);
  });

  test("a block with headings from a spreadsheet finds its columns and adds lines", async () => {
    const page = await open();
    await (await cell(page, 3, "Name")).click();
    await pasteHere(page, "Draws\tName\tRole\n2 W\tport lamp\tlighting\n1.5 A at 12 V\tfan\tother\n");
    await settled(page);
    const text = await planText(page);
    expect(text).toContain("port lamp: {draws: 2 W, role: lighting}");
    expect(text).toContain("fan: {draws: 1.5 A at 12 V, role: other}");
    await page.getByRole("button", { name: /^Undo/ }).click();
    expect(await planText(page)).toBe(dinghy);
  });

  test("a name pasted with its letters taken apart is the same name; one that only looks like another is told at its cell", async () => {
    const page = await open();
    await (await cell(page, 3, "Name")).click();
    await pasteHere(page, "Name\tDraws\nfar\u00F3la\t2 W\nfaro\u0301la\t3 W\nbow\u00A0lamp\t3 W\n");
    await settled(page);
    await expect.poll(() => page.locator('[aria-invalid="true"]').count()).toBeGreaterThan(0);
    const text = await planText(page);
    expect(text).toContain("far\u00F3la: {draws: 2 W");
    expect(text).not.toContain("\u0301");
    expect(text).not.toContain("bow\u00A0lamp");
  });

  test("of a block with one wrong cell, all else is taken", async () => {
    const page = await open();
    await (await cell(page, 0, "Draws")).click();
    await pasteHere(page, "1 W\nplenty\n2 W");
    await settled(page);
    await expect.poll(() => page.locator('[aria-invalid="true"]').count()).toBe(1);
    const text = await planText(page);
    expect(text).toContain("bow lamp: {role: lighting, draws: 1 W}");
    expect(text).toContain("aft lamp: {role: lighting, draws: 12 W}");
    expect(text).toContain("reading lamp: {role: lighting, draws: 2 W}");
  });
});

describe("hostile text", () => {
  test.each([
    ["markup", "<img src=x onerror=window.hurt=1>"],
    ["a formula", "=HYPERLINK(1,2)"],
    ["marks that turn text round", "lamp\u202Egnp.exe"],
    ["an anchor of the file format", "&a [x, *a]"],
  ])("%s is a name like any other, and only text", async (_, hostile) => {
    const page = await open();
    await (await cell(page, 0, "Name")).click();
    await pasteHere(page, hostile);
    await settled(page);
    const read = readPlan(await planText(page));
    expect(read.ok && read.plan.gear[0]?.name).toBe(hostile);
    expect(await page.evaluate(() => "hurt" in window)).toBe(false);
  });

  test("a million letters are refused in a sentence", async () => {
    const page = await open();
    for (const heading of ["Name", "Draws", "Role", "Surroundings"]) {
      const there = await cell(page, 0, heading);
      await there.click();
      await pasteHere(page, "x", 1_000_000);
      await expect.poll(() => there.getAttribute("aria-invalid")).toBe("true");
      expect((await there.textContent())?.length).toBeLessThan(1000);
    }
    expect(await planText(page)).toBe(dinghy);
  });

  test("a cell that begins like a formula leaves with an apostrophe, and comes back without", async () => {
    const page = await open(dinghy.replaceAll("bow lamp", "=1+1"));
    await (await cell(page, 0, "Name")).click();
    await page.keyboard.press("Control+c");
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe("'=1+1");
  });
});

test("a way on which nothing hangs yet has no rating, for no fuse is to be fitted", async () => {
  const page = await open(
    dinghy.replace("{fuse: 5 A}   # keep this word", "\n      spare: {switch: {rating: 10 A}}"),
  );
  await page.locator(".list-tabs").getByRole("button", { name: "Ways", exact: true }).click();
  await page.locator(".list-grid").waitFor();
  expect(await (await cell(page, 0, "Name")).textContent()).toBe("helm / lamps");
  expect(await (await cell(page, 0, "Rating")).textContent()).toMatch(/\d.*A/);
  expect(await (await cell(page, 1, "Name")).textContent()).toBe("helm / spare");
  expect(await (await cell(page, 1, "Rating")).textContent()).not.toMatch(/\d/);
});

test("by touch: a tap goes to a cell, a second one opens it", async () => {
  const page = await openAs({ viewport: phone, hasTouch: true });
  const draws = await cell(page, 0, "Draws");
  await draws.tap();
  await draws.tap();
  await page.waitForSelector(".cell-editor");
  await page.locator(".cell-editor").fill("7 W");
  await page.keyboard.press("Enter");
  await settled(page);
  expect(await planText(page)).toContain("bow lamp: {role: lighting, draws: 7 W}");
});

test("2,000 pieces of gear: few lines are made, and typing goes on", async () => {
  const lamps = Array.from({ length: 2000 }, (_, index) => `  lamp ${index}x: {draws: 1 W}\n`).join("");
  await common.goto(`${rig.address}#/`);
  // its figures take a while; the list does not wait for them
  await openAsFile(common, "plan.yaml", dinghy.replace("gear:\n", `gear:\n${lamps}`));
  await goToLists(common);
  const page = common;
  expect(await page.locator(".list-row").count()).toBeLessThan(80);
  await (await cell(page, 0, "Draws")).click();
  await page.keyboard.press("Control+ArrowDown");
  await page.keyboard.press("ArrowUp");
  expect(await page.evaluate(() => document.activeElement?.getAttribute("data-row"))).toBe("2002");
  expect(await page.locator(".list-grid").getAttribute("aria-rowcount")).toBe("2005");
  await page.keyboard.type("2 W");
  await page.keyboard.press("Enter");
  await expect
    .poll(async () => (await cell(page, 2002, "Draws")).textContent(), { timeout: 20_000 })
    .toBe("2 W");
});
