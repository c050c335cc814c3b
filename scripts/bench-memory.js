// Memory of the page and of its workers over many edits, what they take on disk, and how quick the page is with all of them in its history.
import { serve } from "./serve.js";

const edits = Number(process.env.SKIFFLOOM_BENCH_EDITS ?? 10_000);
const measuredEvery = Math.max(1, Math.floor(edits / 10));
/** So many are typed before one waits until they are kept; each is a step of its own, in a transaction of its own. */
const burst = 10;

/** Types edit after edit into a slip, and looks at the heaps every so often, after a collection. */
export async function memoryOverEdits(browser, folder) {
  const server = await serve({ folder });
  const context = await browser.newContext({ serviceWorkers: "block" });
  const page = await context.newPage();
  page.setDefaultTimeout(0);
  const heaps = await heapsOf(context, page);
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
    await page.evaluate(typeEdits, { from: done, count: measuredEvery, burst });
    const perEditMs = (performance.now() - started) / measuredEvery;
    rows.push({
      edits: done + measuredEvery,
      ...(await heaps()),
      "on disk MB": inMb(await page.evaluate(async () => (await navigator.storage.estimate()).usage)),
      "ms an edit, kept": tenths(perEditMs),
    });
  }
  rows.push(...(await quickness(page)));
  await context.close();
  await server.close();
  return rows;
}

const tenths = (ms) => Math.round(ms * 10) / 10;
const inMb = (bytes) => Math.round(bytes / 1e4) / 100;

/** With all steps in the history: one edit, undo, the log, and opening the plan anew. */
async function quickness(page) {
  const timed = async (work) => {
    const started = performance.now();
    await work();
    return tenths(performance.now() - started);
  };
  const undo = () => page.evaluate(undoAndWait);
  const edit = () => page.evaluate(typeEdits, { from: edits + 10, count: 20, burst: 1 });
  const editMs = (await timed(edit)) / 20;
  const undoMs = (await timed(undo)) / 100;
  const opened = async () => {
    await page.reload();
    await page.locator('.ledger[data-fresh="true"]').waitFor();
  };
  const openMs = await timed(opened);
  const log = async () => {
    await page.evaluate(() => {
      location.hash = `${location.hash.split("/").slice(0, 3).join("/")}/log`;
    });
    await page.locator(".steps .step").first().waitFor();
  };
  const logMs = await timed(log);
  return [
    { edits: "one more, ms", "ms an edit, kept": tenths(editMs) },
    { edits: "undo, each of 100, ms", "ms an edit, kept": tenths(undoMs) },
    { edits: "opened anew, ms", "ms an edit, kept": openMs },
    { edits: "the log shown, ms", "ms an edit, kept": logMs },
  ];
}

/** What reads the heaps after a collection: the page's own, and those of all its workers together. */
async function heapsOf(context, page) {
  const session = await context.newCDPSession(page);
  const workers = new Set();
  const waiting = new Map();
  let count = 0;
  session.on("Target.attachedToTarget", ({ sessionId }) => workers.add(sessionId));
  session.on("Target.detachedFromTarget", ({ sessionId }) => workers.delete(sessionId));
  session.on("Target.receivedMessageFromTarget", ({ message }) => {
    const { id, result } = JSON.parse(message);
    waiting.get(id)?.(result);
    waiting.delete(id);
  });
  await session.send("Target.setAutoAttach", {
    autoAttach: true,
    waitForDebuggerOnStart: false,
    flatten: false,
  });
  const inWorker = (sessionId) => (method) =>
    new Promise((answer) => {
      count += 1;
      waiting.set(count, answer);
      const message = JSON.stringify({ id: count, method });
      session.send("Target.sendMessageToTarget", { sessionId, message }).catch(() => answer(undefined));
    });
  const inPage = (method) => session.send(method);
  const used = async (ask) => {
    await ask("HeapProfiler.collectGarbage");
    const usage = await ask("Runtime.getHeapUsage");
    return (usage?.usedSize ?? 0) + (usage?.backingStorageSize ?? 0);
  };
  return async () => {
    const own = await used(inPage);
    const others = await Promise.all([...workers].map((id) => used(inWorker(id))));
    return { "page MB": inMb(own), "workers MB": inMb(others.reduce((sum, one) => sum + one, 0)) };
  };
}

/** In the page: types a burst of edits, each into the field as a person does, and waits until they are kept. */
async function typeEdits({ from, count, burst }) {
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
    if (edit % burst === 0 || edit === count) await kept(before + edit);
  }
}

/** In the page: a hundred times undo, each shown before the next. */
async function undoAndWait() {
  const text = document.querySelector(".text-view textarea");
  for (let step = 0; step < 100; step += 1) {
    const before = text.value;
    document.querySelector(".undo button").click();
    while (text.value === before) await new Promise((done) => setTimeout(done));
  }
}
