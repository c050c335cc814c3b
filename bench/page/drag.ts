/** From a step of a drag to its figures painted, in Chromium; beside it, in the same run, an empty page of the same framework. */
import { type Browser, chromium, type Page } from "playwright-core";
import { chromiumArguments, chromiumPath } from "../../scripts/chromium.js";
import { serve } from "../../scripts/serve.js";
import { launchWithFreeLegs } from "../../tests/free-legs.js";
import { twoThousandLamps } from "./plans.js";

export interface DragRow {
  readonly what: string;
  readonly slowed: string;
  readonly steps: number;
  /** From the step's handler to the frame painted [ms]. */
  readonly medianMs: number;
  readonly p95Ms: number;
  /** From the moment the browser stamped on the step, which may wait for a frame, to the frame painted [ms]. */
  readonly stampedP95Ms: number;
  /** Processor time of the page's own thread for each step [ms]: of this a busy machine changes little. */
  readonly processorMs: number;
  /** Different figures seen in painted frames. */
  readonly figuresSeen: number;
}

const steps = 100;
const warmSteps = 30;

interface DragTime {
  readonly stampedMs: number;
  readonly handledMs: number;
  readonly figures: string;
}

declare global {
  interface Window {
    dragTimes?: DragTime[];
  }
}

/** @param folders Where the built page and the empty page are. */
export async function dragBench(folders: {
  readonly page: string;
  readonly empty: string;
}): Promise<DragRow[]> {
  const [page, empty] = await Promise.all([
    serve({ folder: folders.page }),
    serve({ folder: folders.empty }),
  ]);
  const browser = await chromium.launch({
    executablePath: chromiumPath,
    args: chromiumArguments,
  });
  try {
    const rows: DragRow[] = [];
    const emptyAt = (tab: Page) => tab.goto(empty.address);
    const boatAt = (text: string, thing: string) => (tab: Page) => openBoat(tab, page.address, text, thing);
    const launch = launchWithFreeLegs();
    for (const slowed of [1, 4]) {
      rows.push(await measured(browser, { what: "empty page", thing: "thing", slowed, open: emptyAt }));
      rows.push(
        await measured(browser, {
          what: "launch, 40 pieces",
          thing: "helm foot",
          slowed,
          open: boatAt(launch, "helm foot"),
        }),
      );
    }
    const barge = twoThousandLamps();
    rows.push(
      await measured(browser, {
        what: "2,000 pieces",
        thing: "knee",
        slowed: 1,
        open: boatAt(barge, "knee"),
      }),
    );
    return rows;
  } finally {
    await browser.close();
    await Promise.all([page.close(), empty.close()]);
  }
}

async function openBoat(page: Page, address: string, text: string, thing: string): Promise<void> {
  await page.goto(address);
  const file = { name: "plan.yaml", mimeType: "application/yaml", buffer: Buffer.from(text) };
  await page.locator('.start input[type="file"]').setInputFiles(file);
  await page.locator("main[data-view]").waitFor();
  await page.evaluate((name) => {
    const [, , plan] = location.hash.split("/");
    location.hash = `#/plan/${plan}/layout/${encodeURIComponent(name)}`;
  }, thing);
  await page.locator('.ledger[data-fresh="true"]').waitFor({ timeout: 180_000 });
  await page.locator(`.boat-sheet [data-thing="${thing}"][data-view="plan"]`).waitFor();
  await page.getByLabel("drop", { exact: true }).check();
  // nobody takes hold of a thing in the moment it is first drawn
  await page.waitForTimeout(1_500);
}

interface Measure {
  readonly what: string;
  readonly thing: string;
  readonly slowed: number;
  readonly open: (page: Page) => Promise<unknown>;
}

async function measured(browser: Browser, { what, thing, slowed, open }: Measure): Promise<DragRow> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: "en-GB" });
  const page = await context.newPage();
  page.setDefaultTimeout(180_000);
  await open(page);
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slowed });
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  const busyS = async () => {
    const { metrics } = await session.send("Performance.getMetrics");
    return metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN;
  };
  const box = await page.locator(`[data-thing="${thing}"][data-view="plan"]`).last().boundingBox();
  if (!box) throw new Error(`${thing} is not drawn`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  const walk = async (count: number) => {
    for (let step = 0; step < count; step++)
      await page.mouse.move(x + 60 * Math.sin(step / 9), y + 25 * Math.sin(step / 5) + 30);
  };
  await walk(warmSteps);
  await page.evaluate(startTiming);
  const before = await busyS();
  await walk(steps);
  const processorMs = (((await busyS()) - before) * 1000) / steps;
  await page.waitForTimeout(200);
  const times = await page.evaluate(() => window.dragTimes ?? []);
  await page.mouse.up();
  await context.close();
  const handled = times.map(({ handledMs }) => handledMs).sort((a, b) => a - b);
  const stamped = times.map(({ stampedMs }) => stampedMs).sort((a, b) => a - b);
  const row = {
    what,
    slowed: slowed === 1 ? "no" : `${slowed} times`,
    steps: times.length,
    medianMs: shareOf(handled, 0.5),
    p95Ms: shareOf(handled, 0.95),
    stampedP95Ms: shareOf(stamped, 0.95),
    processorMs: Number(processorMs.toFixed(1)),
    figuresSeen: new Set(times.map(({ figures }) => figures)).size,
  };
  console.log(JSON.stringify(row));
  return row;
}

/** Notes, for each step, when the browser had painted what it led to, and the figures that stood there. */
function startTiming(): void {
  const times: DragTime[] = [];
  window.dragTimes = times;
  addEventListener(
    "pointermove",
    (event) => {
      const begun = performance.now();
      requestAnimationFrame(() => {
        const after = new MessageChannel();
        after.port1.onmessage = () => {
          const now = performance.now();
          const texts = document.querySelectorAll(".boat-hand .run-label, .figure-that-follows");
          const figures = [...texts].map(({ textContent }) => textContent).join("|");
          times.push({ stampedMs: now - event.timeStamp, handledMs: now - begun, figures });
        };
        after.port2.postMessage(0);
      });
    },
    true,
  );
}

function shareOf(sorted: readonly number[], share: number): number {
  return Number((sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0).toFixed(1));
}
