// What a browser does to a page that keeps things in it: no room, no storage, another version in another tab, all cleared away.
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import {
  goToView,
  openAsFile,
  openExample,
  openRig,
  planText,
  type Rig,
  settled,
  typeInto,
  visit,
} from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

const tender = readFileSync("examples/tender.yaml", "utf8");

/** Does the browser ask before it leaves the page? Stays there. */
async function asksToStay(page: Page): Promise<boolean> {
  let asked = false;
  page.once("dialog", (dialog) => {
    asked = dialog.type() === "beforeunload";
    void dialog.dismiss();
  });
  // no error: a reload that the person refused never ends
  await page.reload({ timeout: 3_000 }).catch(() => undefined);
  return asked;
}

/** As a browser where storage is switched off answers. */
const refuseStorage = () => {
  IDBFactory.prototype.open = () => {
    throw new DOMException("The operation is insecure.", "SecurityError");
  };
};

test("where the browser keeps nothing it says so, and asks before what was typed is thrown away", async () => {
  const { page } = await visit(rig);
  await page.addInitScript(refuseStorage);
  await page.reload();
  await page.getByText("does not let the page keep anything").waitFor();
  await openExample(page, "tender");
  await page.locator('[data-keeping="unkept"]').waitFor();
  await goToView(page, "circuits", "floor lamp");
  await typeInto(page, "draws", "2 W");
  await settled(page);
  expect(await asksToStay(page)).toBe(true);
  expect(await planText(page)).toContain("draws: 2 W");
  // it is held while the start view is open, too
  await page.locator("a.home").click();
  await page.locator(".start h1").waitFor();
  expect(await asksToStay(page)).toBe(true);
  await page.goBack();
  await settled(page);
  expect(await planText(page)).toContain("draws: 2 W");
});

/** While `full` stands in the page, each write is broken off as a browser does that has no room left. */
const fillUp = () => {
  const { put, add } = IDBObjectStore.prototype;
  const breaking = (write: typeof put) =>
    function (this: IDBObjectStore, ...given: Parameters<typeof put>) {
      const request = write.apply(this, given);
      if ("full" in window) request.addEventListener("success", () => this.transaction.abort());
      return request;
    };
  Object.assign(IDBObjectStore.prototype, { put: breaking(put), add: breaking(add) });
};

test("where the browser has no room a plan opens all the same, and an edit is kept as soon as there is room", async () => {
  const { page } = await visit(rig);
  await page.addInitScript(fillUp);
  await page.reload();
  await openExample(page, "tender");
  const address = page.url();
  await goToView(page, "circuits", "floor lamp");
  await page.evaluate(() => Object.assign(window, { full: true }));
  await typeInto(page, "draws", "2 W");
  await page.getByText("The browser refused to keep the last edit").waitFor();
  expect(await asksToStay(page)).toBe(true);
  await page.evaluate(() => Reflect.deleteProperty(window, "full"));
  await page.getByRole("button", { name: "Try again" }).click();
  await settled(page);
  await page.reload();
  await settled(page);
  expect(await planText(page)).toContain("draws: 2 W");

  await page.goto(rig.address);
  await page.evaluate(() => Object.assign(window, { full: true }));
  await openAsFile(page, "mine.yaml", tender);
  await page.locator('[data-keeping="unkept"]').waitFor();
  expect(await planText(page)).toBe(tender);
  await page.goto(address);
  await settled(page);
});

test("a newer page in another tab takes over: this one says so, and what is typed is not called kept", async () => {
  const { page, context } = await visit(rig);
  await openExample(page, "tender");
  await goToView(page, "circuits", "floor lamp");
  const other = await context.newPage();
  await other.goto(rig.address);
  await other.evaluate(
    () =>
      new Promise<void>((done) => {
        const opening = indexedDB.open("skiffloom", 99);
        opening.onsuccess = () => done();
      }),
  );
  await page.getByText("Another tab has taken over with a newer version.").waitFor();
  await typeInto(page, "draws", "2 W");
  await page.locator('[data-keeping="failed"]').waitFor();
  expect(await planText(page)).toContain("draws: 2 W");
});

test("all that the site keeps is cleared away while a plan is open: it says so, and asks before the plan goes too", async () => {
  const { page, context } = await visit(rig);
  await openExample(page, "tender");
  await goToView(page, "circuits", "floor lamp");
  const session = await context.newCDPSession(page);
  await session.send("Storage.clearDataForOrigin", {
    origin: new URL(rig.address).origin,
    storageTypes: "indexeddb",
  });
  await typeInto(page, "draws", "2 W");
  await page.getByText("There is no such plan in this browser.").waitFor();
  await page.locator('[data-keeping="unkept"]').waitFor();
  expect(await planText(page)).toContain("draws: 2 W");
  expect(await asksToStay(page)).toBe(true);
});

test("a text that is being typed waits while other views are open, and takes in what another tab changes", async () => {
  const { page, context } = await visit(rig);
  await openExample(page, "tender");
  await goToView(page, "text");
  const text = page.locator(".text-view textarea");
  await text.fill(`# by hand\n${await text.inputValue()}`);
  await goToView(page, "log");
  await goToView(page, "text");
  expect(await text.inputValue()).toMatch(/^# by hand\n/);
  const second = await context.newPage();
  await second.goto(page.url());
  await settled(second);
  await goToView(second, "circuits", "floor lamp");
  await typeInto(second, "draws", "6 W");
  await settled(second);
  await page.getByText("Changed in another tab; this one follows.").waitFor();
  expect(await text.inputValue()).toMatch(/^# by hand\n[\s\S]*draws: 6 W/);
  await page.getByRole("button", { name: "Take this text" }).click();
  await settled(page);
  expect(await planText(second)).toMatch(/^# by hand\n[\s\S]*draws: 6 W/);
});

test("what is typed while the person chooses where to save is not called saved", async () => {
  const { page } = await visit(rig);
  await page.addInitScript(() => {
    let choose = () => {};
    const chosen = new Promise<void>((done) => {
      choose = done;
    });
    const showSaveFilePicker = async () => {
      await chosen;
      return (await navigator.storage.getDirectory()).getFileHandle("boat.yaml", { create: true });
    };
    Object.assign(window, { showSaveFilePicker, choose });
  });
  await page.reload();
  await openExample(page, "tender");
  await goToView(page, "circuits", "floor lamp");
  await typeInto(page, "draws", "2 W");
  await settled(page);
  await page.getByRole("button", { name: "Tools" }).click();
  await page.getByRole("button", { name: "Save a copy" }).click();
  await page.keyboard.press("Escape");
  await typeInto(page, "draws", "3 W");
  await settled(page);
  await page.evaluate(() => (window as unknown as { choose: () => void }).choose());
  // looked at from here again and again: the browser's own wait takes a promise for its answer
  const kept = () =>
    page.evaluate(async () => {
      const database = await new Promise<IDBDatabase>((done) => {
        const opening = indexedDB.open("skiffloom");
        opening.onsuccess = () => done(opening.result);
      });
      const plans = await new Promise<{ head: number; saved?: { step: number } }[]>((done) => {
        const all = database.transaction("plans").objectStore("plans").getAll();
        all.onsuccess = () => done(all.result);
      });
      database.close();
      return plans[0]?.saved === undefined ? undefined : { head: plans[0].head, saved: plans[0].saved.step };
    });
  await expect.poll(kept, { timeout: 20_000 }).toEqual({ head: 3, saved: 2 });
});
