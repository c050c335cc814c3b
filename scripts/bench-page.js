// Benches of the page in a real Chromium: what must be loaded before first use, beside an empty page of the same framework, and memory over many edits.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { chromium } from "playwright-core";
import { chromiumArguments, chromiumPath } from "./chromium.js";
import { serve } from "./serve.js";

const edits = Number(process.env.SKIFFLOOM_BENCH_EDITS ?? 10_000);
const measuredEvery = Math.max(1, Math.floor(edits / 10));

/** What must be loaded before the start view stands, beside an empty page of the same framework. */
export async function load({ page, empty }) {
  return withBrowser(async (browser) => [
    { page: "empty page of the same framework", ...(await firstLoad(browser, empty, seen("#page > *"))) },
    { page: "start view", ...(await firstLoad(browser, page, seen(".start h1"))) },
    { page: "a boat on screen with its figures", ...(await firstLoad(browser, page, openBoat)) },
  ]);
}

/** Memory over ten thousand edits, each kept before the next one. */
export async function memory({ page }) {
  return withBrowser((browser) => memoryOverEdits(browser, page));
}

async function withBrowser(measure) {
  const browser = await chromium.launch({
    executablePath: chromiumPath,
    args: [...chromiumArguments, "--js-flags=--expose-gc"],
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

/** Types edit after edit into a slip, and looks at the heap every so often, after a collection. */
async function memoryOverEdits(browser, folder) {
  const server = await serve({ folder });
  const context = await browser.newContext({ serviceWorkers: "block" });
  const page = await context.newPage();
  page.setDefaultTimeout(0);
  await page.goto(server.address);
  await page.locator("[data-example=tender]").click();
  await page.locator('.ledger[data-fresh="true"]').waitFor();
  await page.evaluate(() => {
    location.hash = `${location.hash.split("/").slice(0, 3).join("/")}/text/floor%20lamp`;
  });
  await page.locator(".slip .field input").first().waitFor();
  const rows = [];
  for (let done = 0; done < edits; done += measuredEvery) {
    const started = performance.now();
    await page.evaluate(typeEdits, { from: done, count: measuredEvery });
    const perEditMs = (performance.now() - started) / measuredEvery;
    const heapBytes = await page.evaluate(() => {
      globalThis.gc?.();
      return performance.memory?.usedJSHeapSize ?? Number.NaN;
    });
    rows.push({
      edits: done + measuredEvery,
      "heap MB": Math.round(heapBytes / 1e5) / 10,
      "ms an edit, kept": Math.round(perEditMs * 10) / 10,
    });
  }
  await context.close();
  await server.close();
  return rows;
}

/** In the page: each edit waits until the one before is kept. */
async function typeEdits({ from, count }) {
  const mark = document.querySelector(".keeping");
  const kept = (steps) =>
    new Promise((done) => {
      const look = () => Number(mark.dataset.steps) >= steps && mark.dataset.keeping === "kept";
      if (look()) return done();
      const observer = new MutationObserver(() => {
        if (!look()) return;
        observer.disconnect();
        done();
      });
      observer.observe(mark, { attributes: true });
    });
  const before = Number(mark.dataset.steps);
  for (let edit = 1; edit <= count; edit += 1) {
    const field = [...document.querySelectorAll(".slip .field")].find(
      (each) => each.querySelector("label")?.textContent === "draws",
    );
    const input = field.querySelector("input");
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value").set.call(
      input,
      `${1000 + from + edit} mW`,
    );
    input.dispatchEvent(new Event("input", { bubbles: true }));
    input.dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", bubbles: true }));
    await kept(before + edit);
  }
}
