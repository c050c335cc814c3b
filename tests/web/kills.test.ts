import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, expect, onTestFinished, test } from "vitest";
import { chromiumArguments, chromiumPath } from "../../scripts/chromium.js";
import { goToView, openExample, openRig, type Rig, settled, type Visit, visit, withOffline } from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

/** The tender's plan with that draw of its floor lamp, and nothing else changed: what a whole edit gives. */
const withDraw = (text: string, milliwatts: number) =>
  text.replace(/(floor lamp:.*?draws: )\S+ m?W/s, (_all, start: string) => `${start}${milliwatts} mW`);

interface Acknowledged {
  /** Steps the page has said are kept. */
  steps: number;
}

/** Tells of every step that the page says is kept, from then on. */
async function listen(page: Page): Promise<Acknowledged> {
  const acknowledged: Acknowledged = { steps: 0 };
  await page.exposeBinding("acknowledge", (_source, steps: number) => {
    acknowledged.steps = Math.max(acknowledged.steps, steps);
  });
  return acknowledged;
}

/** In the page: types one value after the other into the open slip, each as an edit; a few at a time, then waits until they are kept. */
function typeOn(page: Page, from: number): Promise<void> {
  return page.evaluate((first) => {
    const { acknowledge } = window as unknown as { acknowledge: (steps: number) => void };
    const mark = document.querySelector<HTMLElement>(".keeping");
    if (!mark) throw new Error("no mark of keeping");
    let milliwatts = first;
    let burst = 0;
    const typeNext = () => {
      const field = [...document.querySelectorAll(".slip .field")].find(
        (each) => each.querySelector("label")?.textContent === "draws",
      );
      const input = field?.querySelector("input");
      if (!input) throw new Error("no field");
      milliwatts += 1;
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set?.call(
        input,
        `${milliwatts} mW`,
      );
      input.dispatchEvent(new Event("input", { bubbles: true }));
      input.dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", bubbles: true }));
    };
    const typeBurst = () => {
      burst += 1;
      for (let edit = 0; edit <= burst % 4; edit += 1) typeNext();
    };
    new MutationObserver(() => {
      if (mark.dataset.keeping !== "kept") return;
      acknowledge(Number(mark.dataset.steps));
      setTimeout(typeBurst, 1);
    }).observe(mark, { attributes: true, attributeFilter: ["data-keeping"] });
    typeBurst();
  }, from);
}

/** What the page shows once it has been opened anew. */
async function found(page: Page): Promise<{ text: string; steps: number }> {
  await page.locator(".slip .field").first().waitFor();
  const steps = Number(await page.locator(".keeping[data-steps]").getAttribute("data-steps"));
  return { text: await page.locator(".text-view textarea").inputValue(), steps };
}

/** The draw in the text, whole: the number that was typed last before it was kept. */
const drawIn = (text: string) => Number(/floor lamp:.*?draws: (\d+) mW/s.exec(text)?.[1]);

test("100 kills in the middle of editing: no acknowledged edit is lost, none is half applied", {
  timeout: 1_800_000,
}, async () => {
  // four browsers' profiles side by side: while one waits for its page the others are killed
  const visits = await Promise.all([0, 1, 2, 3].map(() => visit(rig, withOffline)));
  const keptOn = await Promise.all(visits.map((each, lane) => kills(each, 25, lane)));
  expect(
    keptOn.reduce((sum, each) => sum + each, 0),
    "kills that came after something was kept",
  ).toBeGreaterThan(20);
});

/** Kills one profile's page that many times in the middle of editing. Number of kills that came after something was kept. */
async function kills({ page: first, context, complaints }: Visit, times: number, lane: number) {
  await openExample(first, "tender");
  await goToView(first, "text", "floor lamp");
  const address = first.url();
  const original = (await found(first)).text;
  let page = first;
  let acknowledged = await listen(page);
  let [draw, steps, keptOn] = [1000, 1, 0];
  for (let kill = lane; kill < lane + times; kill += 1) {
    await typeOn(page, draw);
    await page.waitForTimeout((kill * 37) % 120);
    const told = acknowledged.steps;
    if (kill % 5 === 0) {
      // the tab's process dies where it stands
      const session = await context.newCDPSession(page);
      await Promise.race([session.send("Page.crash").catch(() => undefined), page.waitForEvent("crash")]);
    }
    // a page thrown away by its own reload costs the machine half of what a new tab does
    if (kill % 5 > 1) {
      await page.reload();
      acknowledged.steps = 0;
    } else {
      await page.close();
      page = await context.newPage();
      acknowledged = await listen(page);
      await page.goto(address);
    }
    const now = await found(page);
    expect(now.steps, `kill ${kill}`).toBeGreaterThanOrEqual(told);
    if (now.steps === 1) expect(now.text).toBe(original);
    else {
      const shown = drawIn(now.text);
      expect(now.text, `kill ${kill}`).toBe(withDraw(original, shown));
      // each edit is one step: as many were kept as the numbers went on
      if (now.steps > steps) expect(shown - draw, `kill ${kill}`).toBe(now.steps - steps);
      draw = shown;
    }
    keptOn += now.steps > steps ? 1 : 0;
    steps = now.steps;
  }
  await goToView(page, "log");
  expect(complaints.splice(0).filter((each) => !/crash|closed/i.test(each))).toEqual([]);
  return keptOn;
}

test("the whole browser killed in the middle of editing: what it said was kept is there when it opens again", {
  timeout: 600_000,
}, async () => {
  const folder = mkdtempSync(join(tmpdir(), "skiffloom-profile-"));
  let address = rig.address;
  let draw = 1000;
  for (let kill = 0; kill < 3; kill += 1) {
    const { page, end, acknowledged } = await ownBrowser(folder, address);
    if (kill === 0) {
      await openExample(page, "tender");
      await goToView(page, "text", "floor lamp");
      address = page.url();
    }
    await page.locator(".slip .field").first().waitFor();
    await typeOn(page, draw);
    while (acknowledged.steps < 5 * (kill + 1)) await page.waitForTimeout(5);
    const told = acknowledged.steps;
    await end();
    const again = await ownBrowser(folder, address);
    await settled(again.page);
    const now = await found(again.page);
    expect(now.steps).toBeGreaterThanOrEqual(told);
    draw = drawIn(now.text);
    expect(now.text).toBe(withDraw(now.text, draw));
    await again.end();
  }
  rmSync(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 250 });
});

/** A browser of its own, with a profile on disk, and how to kill it. It goes with this process in any case. */
async function ownBrowser(profile: string, address: string) {
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: chromiumPath,
    args: [...chromiumArguments],
    locale: "en-GB",
  });
  const browserPid = processOf(profile);
  context.setDefaultTimeout(60_000);
  const page = await context.newPage();
  const acknowledged = await listen(page);
  await page.goto(address);
  const end = async () => {
    const ended = new Promise<void>((done) => {
      context.once("close", () => done());
    });
    process.kill(browserPid, "SIGKILL");
    await ended;
    // its tabs' processes outlive it by a moment, and write into the profile until they are gone
    while (processesOf(profile).length > 0) await new Promise((done) => setTimeout(done, 50));
  };
  onTestFinished(() => context.close().catch(() => undefined));
  return { page, end, acknowledged };
}

/** The browser's own process (not one of its tabs'), told by the profile it was given. */
function processOf(profile: string): number {
  const found = processesOf(profile).find(
    (entry) => !commandOf(entry).some((word) => word.includes("--type=")),
  );
  if (found === undefined) throw new Error(`no browser runs on ${profile}`);
  return Number(found);
}

/** The browser on that profile and all its children, which write their command as one line of words. */
function processesOf(profile: string): string[] {
  return readdirSync("/proc").filter(
    (entry) =>
      /^\d+$/.test(entry) && commandOf(entry).some((word) => word.includes(`--user-data-dir=${profile}`)),
  );
}

function commandOf(pid: string): string[] {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, "utf8").split("\0");
  } catch {
    // ended meanwhile
    return [];
  }
}
