import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type ViewId, viewIds } from "../../src/web/app/view-ids.js";
import { goToView, openAsFile, openRig, phone, type Rig, settled, visit } from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

interface AxeWindow {
  readonly axe: {
    run(
      where: Document,
      options: { runOnly: readonly string[] },
    ): Promise<{ violations: { id: string; nodes: { html: string; failureSummary?: string }[] }[] }>;
  };
}

/** A sign in a drawing is named by the thing first; the figures around it are told in the order of reading, not of drawing. */
const nameInLabel = "label-content-name-mismatch";

/** What axe finds against WCAG 2.2 A and AA, each with the first place it is found at. */
async function violations(page: Page, runOnly: readonly string[] = all): Promise<string[]> {
  await page.evaluate(axeSource);
  const found = await page.evaluate(async (rules) => {
    const { axe } = window as unknown as AxeWindow;
    return (await axe.run(document, { runOnly: rules })).violations;
  }, runOnly);
  const counted = found.filter(
    ({ id, nodes }) => id !== nameInLabel || !nodes.every(({ html }) => html.startsWith("<g")),
  );
  return counted.map(({ id, nodes }) => `${id}: ${nodes[0]?.html} ${nodes[0]?.failureSummary ?? ""}`);
}

const all = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** By day everything; by dusk the page is the same but for its colours, so these alone are looked at anew. */
async function byDayAndDusk(page: Page, where: string): Promise<void> {
  expect(await violations(page), where).toEqual([]);
  // the device goes dark, and the page with it, since nobody has chosen otherwise
  const light = async (colorScheme: "dark" | "light") => {
    await page.emulateMedia({ colorScheme });
    const is = () => page.evaluate(() => document.documentElement.dataset.light);
    await expect.poll(is).toBe(colorScheme === "dark" ? "dusk" : "day");
  };
  await light("dark");
  expect(await violations(page, ["color-contrast", "link-in-text-block"]), `${where} by dusk`).toEqual([]);
  await light("light");
}

const wrong = readFileSync("examples/wrong/drop-at-the-last-lamp.yaml", "utf8");
/** With a form, as the other has none: its table of stations has figures. */
const surveyed = readFileSync("examples/utility.yaml", "utf8");

/** The table of stations, with a figure that can't be read and one that does not go with the others. */
async function openTable(page: Page): Promise<void> {
  await page.goto(`${rig.address}#/`);
  await openAsFile(page, "surveyed.yaml", surveyed.replace("34 1/2 in, 34 3/8 in", "35 1/2 in, 34 3/8 in"));
  await settled(page);
  await goToView(page, "tape");
  await page.locator('.tape [data-row="3"][data-column="4"]').click();
  await page.locator(".tape-agrees[data-verdict=differs]").waitFor();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.type("much");
  await page.keyboard.press("Enter");
  await page.keyboard.press("ArrowUp");
  await page.locator(".cell-note").waitFor();
}

test("every view by day and by dusk, a slip and the settings open too: nothing that WCAG 2.2 AA forbids", async () => {
  // the policy keeps axe out too: it is put in past it, in this context only
  const { page } = await visit(rig, { bypassCSP: true, colorScheme: "light" });
  expect(await page.evaluate(() => document.documentElement.dataset.light)).toBe("day");
  await byDayAndDusk(page, "start");
  await page.getByText("New plan", { exact: true }).click();
  await page.waitForSelector(".gear-row");
  await byDayAndDusk(page, "new");
  await page.goto(rig.address);
  await openAsFile(page, "wrong.yaml", wrong);
  await settled(page);
  for (const view of viewIds) {
    await goToView(page, view);
    await page.waitForLoadState("networkidle");
    const first = page.locator(".finding summary").first();
    if (view === "findings") await first.click();
    await byDayAndDusk(page, view);
  }
  await goToView(page, "circuits", "rail lamp 1");
  await page.locator(".slip .thing-fields").waitFor();
  await byDayAndDusk(page, "slip");
  await page.getByRole("button", { name: "Settings" }).click();
  await page.locator(".panel .settings").waitFor();
  await byDayAndDusk(page, "settings");
  await page.keyboard.press("Escape");
  await openTable(page);
  await byDayAndDusk(page, "table of stations");
});

/** Things one can use that lie under something else, or out of the window, when they are brought into sight. */
const hidden = (page: Page) =>
  page.evaluate(() => {
    const used = "button, a[href], select, input:not([type=radio], [type=checkbox]), summary, textarea";
    const faults: string[] = [];
    for (const each of [...document.querySelectorAll<HTMLElement>(used)].slice(0, 150)) {
      if (!each.checkVisibility({ visibilityProperty: true }) || each.closest(".away, .skip, [inert]"))
        continue;
      if (each.matches(".away, .skip")) continue;
      each.scrollIntoView({ block: "nearest", inline: "nearest" });
      const { left, right, top, bottom } = each.getBoundingClientRect();
      if (right - left < 2) continue;
      const x = (left + right) / 2;
      const y = top + Math.min((bottom - top) / 2, 20);
      const there = document.elementFromPoint(x, y);
      if (!there || !(each.contains(there) || there.contains(each)))
        faults.push(`${each.outerHTML.slice(0, 90)} is under ${there?.outerHTML.slice(0, 60)}`);
    }
    return faults;
  });

// 1440 × 900 at 200 %: WCAG 2.2, 1.4.4 resize text and 1.4.10 reflow (published)
test("at 200 % nothing is cut off, runs over the side or lies over another thing one uses", async () => {
  const { page } = await visit(rig, { viewport: { width: 720, height: 450 } });
  await openAsFile(page, "wrong.yaml", wrong);
  await settled(page);
  const look = async (where: string) => {
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over, where).toBeLessThanOrEqual(0);
    expect(await hidden(page), where).toEqual([]);
  };
  for (const view of viewIds) {
    await goToView(page, view);
    await page.waitForLoadState("networkidle");
    await look(view);
  }
  await goToView(page, "circuits", "rail lamp 1");
  await page.locator(".slip .thing-fields").waitFor();
  await look("slip");
  await openTable(page);
  await look("table of stations");
});

test("the largest text on a phone: no view runs over the side, and the boat keeps her name", async () => {
  const { page } = await visit(rig, { viewport: phone });
  await page.getByRole("button", { name: "Settings" }).click();
  await page.getByRole("radio", { name: "Largest" }).check();
  await page.keyboard.press("Escape");
  await openAsFile(page, "wrong.yaml", wrong);
  await settled(page);
  for (const view of viewIds) {
    await goToView(page, view);
    await page.waitForLoadState("networkidle");
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over, view).toBeLessThanOrEqual(0);
  }
  const name = await page.locator("h1").boundingBox();
  expect(name?.width).toBeGreaterThan(120);
});

test("signs of findings on the map of the circuits are signs, not pictures", async () => {
  const { page } = await visit(rig);
  await openAsFile(page, "wrong.yaml", wrong);
  await settled(page);
  await goToView(page, "circuits");
  const sizes = await page
    .locator(".circuits .level-mark")
    .evaluateAll((signs) => signs.map((sign) => sign.getBoundingClientRect().width));
  expect(sizes.length).toBeGreaterThan(0);
  expect(Math.max(...sizes)).toBeLessThan(44);
});

/** What is tapped and lower than a finger wants, or narrower where it is taken by its side. */
const small = (page: Page) =>
  page.evaluate(() => {
    const tapped = "button:not(.figure, .term button), a[href], select, input, summary, [role=slider]";
    return (
      [...document.querySelectorAll<HTMLElement>(tapped)]
        .filter(
          (each) => each.checkVisibility() && !each.closest("p") && !each.matches(".away, [type=radio]"),
        )
        // a tick is tapped anywhere in its label, or its cell
        .map(
          (each) => (each.matches("[type=checkbox]") && each.closest<HTMLElement>("label, td, th")) || each,
        )
        .filter((each) => each.getBoundingClientRect().height < 43.5)
        .map((each) => each.outerHTML.slice(0, 120))
        .filter((html) => !html.includes("ledger-note"))
    );
  });

const utility = readFileSync("examples/utility.yaml", "utf8");

test("every view fits 360 px: nothing runs over the side, and all that is tapped is 44 px", async () => {
  const { page } = await visit(rig, { viewport: phone, hasTouch: true });
  const faults: string[] = [];
  const look = async (view: ViewId, open = () => goToView(page, view)) => {
    await open();
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (over > 0) faults.push(`${view} runs over the side`);
    faults.push(...(await small(page)).map((html) => `${view}: ${html}`));
  };
  await openAsFile(page, "utility.yaml", utility);
  await settled(page);
  for (const view of viewIds) {
    await look(view);
    if (view === "outing") {
      // what is seen of an end of a bar is slim; what a finger finds is not
      const end = page.locator(".bar-end").first();
      const widthPx = await end.evaluate((bar) => Number.parseFloat(getComputedStyle(bar, "::before").width));
      expect(widthPx).toBeGreaterThanOrEqual(44);
    }
  }
  await page.goto(rig.address);
  await openAsFile(page, "wrong.yaml", wrong);
  await settled(page);
  for (const view of ["findings", "log", "text", "circuits"] as const) await look(view);
  await look("tape", () => openTable(page));
  expect(faults).toEqual([]);
});

// CSS Color Adjustment, forced colours (published): grounds are dropped, and what was told by one is not seen
test("in colours the system forces, bars, what is pressed and the lines of the drawings are still seen", async () => {
  const { page } = await visit(rig, { forcedColors: "active", colorScheme: "dark" });
  await page.getByRole("button", { name: "Settings" }).click();
  // a light that is not the system's
  await page.getByRole("radio", { name: "Day", exact: true }).check();
  await page.keyboard.press("Escape");
  await openAsFile(page, "utility.yaml", utility);
  await settled(page);
  const colours = (selector: string, name: "backgroundColor" | "stroke") =>
    page
      .locator(selector)
      .first()
      .evaluate(
        (element, property) => [
          getComputedStyle(element)[property],
          getComputedStyle(document.body).backgroundColor,
        ],
        name,
      );
  for (const [view, selector, property] of [
    ["outing", ".bar-fill", "backgroundColor"],
    ["gear", ".list-tabs [aria-pressed=true]", "backgroundColor"],
    ["layout", ".boat-sheet .hull-sheer", "stroke"],
  ] as const) {
    await goToView(page, view);
    await page.locator(selector).first().waitFor({ state: "attached" });
    const [drawn, ground] = await colours(selector, property);
    expect(contrast(drawn ?? "", ground ?? ""), `${view}: ${drawn} on ${ground}`).toBeGreaterThan(3);
  }
});

/** Contrast of two colours as WCAG 2.2 reckons it (published: relative luminance). */
function contrast(one: string, other: string): number {
  const luminance = (colour: string) => {
    const [r = 0, g = 0, b = 0] = (colour.match(/[\d.]+/g) ?? []).map(Number).map((value) => {
      const share = value / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}
