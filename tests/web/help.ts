// What every test of the page needs: a fresh browser profile on the built page, and the ways a person moves about in it.
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from "playwright-core";
import { expect, inject, onTestFinished } from "vitest";
import { webFolder } from "../../scripts/build-web.js";
import type { ViewId } from "../../src/web/app/view-ids.js";
import type { ExampleId } from "../../src/web/views/start/examples.js";

export { webFolder };

/** Sizes the page must be good at, in CSS pixels. */
export const phone = { width: 360, height: 780 };
export const tablet = { width: 768, height: 1024 };
export const desk = { width: 1440, height: 900 };

export interface Rig {
  readonly browser: Browser;
  /** Address of the start view. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** The page and the browser that all tests share; `afterAll` closes the connection, not the browser. */
export async function openRig(): Promise<Rig> {
  const browser = await chromium.connect(inject("browser"));
  return { browser, address: inject("page"), close: () => browser.close() };
}

export interface Visit {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Errors and warnings the browser has written so far. A test must leave it empty: `visit` looks when the test ends. */
  readonly complaints: string[];
}

/** What the browser says where a test keeps the offline worker out. */
const keptOut = /^Service Worker registration blocked/;

/** A visit as a person's, with the offline worker: it fetches every file of the page for each fresh profile. */
export const withOffline = { serviceWorkers: "allow" } as const;

/**
 * A fresh profile with the page open at its start view, without the offline worker unless it is asked for (`withOffline`). When the test ends the profile is thrown away, and the test fails if
 * anything was complained of on the console, unless the test has emptied `complaints` because it meant it to happen.
 */
export async function visit(rig: Rig, options: BrowserContextOptions = {}): Promise<Visit> {
  const context = await rig.browser.newContext({
    locale: "en-GB",
    viewport: desk,
    serviceWorkers: "block",
    ...options,
  });
  const complaints: string[] = [];
  context.on("page", (page) => listenTo(page, complaints));
  onTestFinished(async () => {
    await context.close();
    expect(complaints, "the console stays clean").toEqual([]);
  });
  context.setDefaultTimeout(60_000);
  const page = await context.newPage();
  await page.goto(rig.address);
  await page.locator(".start h1").waitFor();
  return { page, context, complaints };
}

function listenTo(page: Page, complaints: string[]): void {
  page.on("console", (message) => {
    const counts = message.type() === "error" || message.type() === "warning";
    if (counts && !keptOut.test(message.text())) complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.stack ?? error.message));
}

/** Takes one of the examples on the start view, and waits until its figures are there. */
export async function openExample(page: Page, id: ExampleId): Promise<void> {
  await page.locator(`[data-example=${id}]`).click();
  await settled(page);
}

/** Gives the start view a file, as a person does with the chooser. Does not wait for figures: the text may have none. */
export async function openAsFile(page: Page, name: string, text: string | Buffer): Promise<void> {
  const buffer = typeof text === "string" ? Buffer.from(text) : text;
  await page
    .locator('.start input[type="file"]')
    .setInputFiles({ name, mimeType: "application/yaml", buffer });
  await page.locator("main[data-view]").waitFor();
}

/** Opens a plan's text as a file, and waits until its figures are there. */
export async function openText(page: Page, text: string): Promise<void> {
  await openAsFile(page, "plan.yaml", text);
  await settled(page);
}

/** Until the last edit is kept, and the figures on screen are those of the plan as it is. */
export async function settled(page: Page): Promise<void> {
  await page
    .locator('[data-keeping="kept"], [data-keeping="unkept"], .header .keeping:not([data-keeping])')
    .first()
    .waitFor();
  await page.locator('.ledger[data-fresh="true"]').waitFor();
}

/** Goes to a view of the open plan by its address, as a bookmark does; `select` opens the slip of a thing. */
export async function goToView(page: Page, view: ViewId, select?: string): Promise<void> {
  const end = select === undefined ? "" : `/${encodeURIComponent(select)}`;
  await page.evaluate(
    ([to, what]) => {
      const [, , plan] = location.hash.split("/");
      location.hash = `#/plan/${plan}/${to}${what}`;
    },
    [view, end],
  );
  await page.locator(`main[data-view="${view}"]`).waitFor();
  await page.locator("main .loading").waitFor({ state: "detached" });
}

/** Types a value into a field of the open slip, and takes it over with Enter. */
export async function typeInto(page: Page, label: string, value: string): Promise<void> {
  const field = page.locator(".slip").getByLabel(label, { exact: true });
  await field.fill(value);
  await field.press("Enter");
}

/** The text of the open plan, as its view of it shows. Leaves one where one was. */
export async function planText(page: Page): Promise<string> {
  const was = await page.evaluate(() => location.hash);
  await goToView(page, "text");
  const text = await page.locator(".text-view textarea").inputValue();
  await page.evaluate((hash) => {
    location.hash = hash;
  }, was);
  return text;
}
