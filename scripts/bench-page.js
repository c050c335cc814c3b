// Benches of the page in a real Chromium: what must be loaded before first use, beside an empty page of the same framework, and memory over many edits.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { chromium } from "playwright-core";
import { memoryOverEdits } from "./bench-memory.js";
import { chromiumArguments, chromiumPath } from "./chromium.js";
import { serve } from "./serve.js";

/** What must be loaded before the start view stands, beside an empty page of the same framework. */
export async function load({ page, empty }) {
  return withBrowser(async (browser) => [
    { page: "empty page of the same framework", ...(await firstLoad(browser, empty, seen("#page > *"))) },
    { page: "start view", ...(await firstLoad(browser, page, seen(".start h1"))) },
    { page: "a boat on screen with its figures", ...(await firstLoad(browser, page, openBoat)) },
  ]);
}

/** Memory over ten thousand edits. */
export async function memory({ page }) {
  return withBrowser((browser) => memoryOverEdits(browser, page));
}

async function withBrowser(measure) {
  const browser = await chromium.launch({
    executablePath: chromiumPath,
    args: [...chromiumArguments],
  });
  try {
    return await measure(browser);
  } finally {
    await browser.close();
  }
}

const seen = (selector) => (page) => page.locator(selector).first().waitFor();

/** Until the launch of the examples lies on screen with her figures. */
async function openBoat(page) {
  await page.locator("[data-example=launch]").click();
  await page.locator('.ledger[data-fresh="true"]').waitFor();
  await page.locator(".boat-sheet .thing").first().waitFor();
}

/** What a page asks for right behind its first view belongs to that; what waits for the figures comes later [ms]. */
const behindMs = 300;
const isWorker = (path) => /-worker-[^/]*\.js$/.test(path);

/** Scripts asked for until it stands, compressed; those of workers, which hold all that they use, by themselves. */
async function firstLoad(browser, folder, stands) {
  const server = await serve({ folder });
  const context = await browser.newContext({ serviceWorkers: "block" });
  const page = await context.newPage();
  const asked = new Set();
  context.on("response", (response) => asked.add(new URL(response.url()).pathname));
  await page.goto(server.address);
  await stands(page);
  const shownMs = await page.evaluate(() => performance.now());
  await page.waitForTimeout(behindMs);
  const all = [...asked].filter((path) => path.endsWith(".js"));
  const [workers, scripts] = [all.filter(isWorker), all.filter((path) => !isWorker(path))];
  const sizeKb = (paths) => {
    const bytes = paths.reduce((sum, path) => sum + gzipSync(readFileSync(join(folder, path))).length, 0);
    return Math.round(bytes / 100) / 10;
  };
  await context.close();
  await server.close();
  return {
    scripts: scripts.length,
    "compressed kB": sizeKb(scripts),
    "in workers kB": sizeKb(workers),
    "shown ms": Math.round(shownMs),
  };
}
