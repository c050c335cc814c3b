import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { newStep } from "../../src/web/state/keep/history.js";
import {
  goToView,
  openExample,
  openRig,
  openText,
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

test("undo and redo go on across reloads; moments are named; two states are compared; going back loses nothing", async () => {
  const { page } = await visit(rig);
  await openExample(page, "tender");
  await goToView(page, "text", "floor lamp");
  const text = page.locator(".text-view textarea");
  for (const draws of ["2 W", "3 W", "4 W"]) {
    await typeInto(page, "draws", draws);
    await settled(page);
  }
  await page.locator("h1").click();
  await page.keyboard.press("Control+z");
  await settled(page);
  expect(await text.inputValue()).toContain("draws: 3 W");

  await page.reload();
  await settled(page);
  await page.getByRole("button", { name: /^Undo/ }).click();
  await settled(page);
  expect(await text.inputValue()).toContain("draws: 2 W");
  await page.reload();
  await settled(page);
  for (const draws of ["3 W", "4 W"]) {
    await page.getByRole("button", { name: /^Redo/ }).click();
    await settled(page);
    expect(await text.inputValue()).toContain(`draws: ${draws}`);
  }
  expect(await page.getByRole("button", { name: /^Redo/ }).isDisabled()).toBe(true);

  await goToView(page, "log");
  expect(await page.locator(".steps .step").count()).toBe(4);
  const second = page.locator('.step[data-step="2"]');
  await second.getByRole("button", { name: "Name this moment" }).click();
  await second.getByLabel("Name of the moment").fill("small lamps");
  await page.keyboard.press("Enter");
  await page.locator(".cards .step").getByText("small lamps").waitFor();
  await page.locator(".cards .step").getByRole("button", { name: "Compare" }).click();
  const compared = page.locator(".compare");
  await compared.locator("table").first().waitFor();
  expect(await compared.locator(".difference").textContent()).toMatch(/− .*2 W.*\+ .*4 W/s);

  await second.getByRole("button", { name: "Go back to this" }).click();
  await settled(page);
  expect(await page.locator(".steps .step").count()).toBe(5);
  expect(await planText(page)).toContain("draws: 2 W");
  await page.reload();
  await settled(page);
  await goToView(page, "log");
  await page.locator(".cards .step").getByText("small lamps").waitFor();
});

test("an edit after undo leaves the way that was undone in the log, and it can be brought back", async () => {
  const { page } = await visit(rig);
  await openExample(page, "tender");
  await goToView(page, "log", "floor lamp");
  await typeInto(page, "draws", "2 W");
  await settled(page);
  await page.getByRole("button", { name: /^Undo/ }).click();
  await settled(page);
  await typeInto(page, "draws", "5 W");
  await settled(page);
  const undone = page.locator('.step[data-step="2"]');
  await undone.getByText("undone").waitFor();
  await undone.getByRole("button", { name: "Go back to this" }).click();
  await settled(page);
  expect(await planText(page)).toContain("draws: 2 W");
});

const plain = (text: string) => text.replace(/\s+/g, " ").trim();

/** What the command line says of the change, each stretch of white space as one. */
function changesByCommand(before: string, after: string): string {
  const folder = mkdtempSync(join(tmpdir(), "skiffloom-log-"));
  const [old, young] = [join(folder, "old.yaml"), join(folder, "new.yaml")];
  writeFileSync(old, before);
  writeFileSync(young, after);
  const ran = spawnSync(process.execPath, ["bin/skiffloom.js", "changes", old, young], { encoding: "utf8" });
  rmSync(folder, { recursive: true });
  expect(ran.status, ran.stderr).toBe(0);
  return plain(ran.stdout);
}

test("comparing two moments tells the same as the command line: figures, findings, parts, work", async () => {
  const { page } = await visit(rig);
  const before = readFileSync("examples/tender.yaml", "utf8");
  await openText(page, before);
  const after = before.replace(/draws: .*/, "draws: 30 W");
  expect(after).not.toBe(before);
  await goToView(page, "text");
  await page.locator(".text-view textarea").fill(after);
  await page.getByRole("button", { name: "Take this text" }).click();
  await settled(page);
  await goToView(page, "log");
  await page.locator('.step[data-step="1"]').getByRole("button", { name: "Compare" }).click();
  const told = page.locator(".compare .told");
  await told.first().waitFor();
  const command = changesByCommand(before, after);
  const sentences = (await told.locator("li").allTextContents()).map(plain);
  const rows = (await told.locator("tbody tr").all()).map((row) => row.locator("th, td").allTextContents());
  expect(sentences.length).toBeGreaterThan(2);
  expect(await told.evaluateAll((all) => all.map((one) => one.getAttribute("data-about")))).toEqual(
    expect.arrayContaining(["written", "figures", "findings", "parts"]),
  );
  for (const sentence of sentences) expect(command).toContain(sentence);
  for (const cells of await Promise.all(rows)) expect(command).toContain(plain(cells.join(" ")));
  // a heading stands over its column as the figures under it do
  const aligned = await told.locator("table").evaluateAll((tables) =>
    tables.map((table) => {
      const sides = (row: string) =>
        [...(table.querySelector(row)?.children ?? [])].map((each) => getComputedStyle(each).textAlign);
      return [sides("thead tr"), sides("tbody tr")];
    }),
  );
  for (const [heads, cells] of aligned) expect(heads).toEqual(cells);
  // the same in Spanish, once that is chosen
  await page.getByRole("button", { name: "Settings" }).click();
  await page.getByLabel("Español", { exact: true }).check();
  const inSpanish = told.locator('ul[lang="es"] li');
  await inSpanish.first().waitFor();
  expect(await inSpanish.count()).toBe(sentences.length);
  expect((await inSpanish.allTextContents()).map(plain).filter((one) => sentences.includes(one))).toEqual([]);
});

/** In the page: the database as its first form was, with one plan in it. */
function keepAsBefore({ plan, steps }: { plan: object; steps: readonly object[] }): Promise<void> {
  return new Promise((done, failed) => {
    const opening = indexedDB.open("skiffloom", 1);
    opening.onerror = () => failed(opening.error);
    opening.onupgradeneeded = () => {
      const { result } = opening;
      result.createObjectStore("plans", { keyPath: "id" }).add(plan);
      const store = result.createObjectStore("steps", { keyPath: ["plan", "no"] });
      for (const step of steps) store.add(step);
      result.createObjectStore("moments", { keyPath: ["plan", "step"] });
      result.createObjectStore("files", { keyPath: "plan" });
    };
    opening.onsuccess = () => {
      opening.result.close();
      done();
    };
  });
}

/** In the page: counts the steps that are read from then on. */
const countReads = () => {
  const { getAll } = IDBObjectStore.prototype;
  Object.assign(window, { stepsRead: 0 });
  IDBObjectStore.prototype.getAll = function (this: IDBObjectStore, ...asked: Parameters<typeof getAll>) {
    const request = getAll.apply(this, asked);
    if (this.name === "steps")
      request.addEventListener("success", () => {
        const counted = window as unknown as { stepsRead: number };
        counted.stepsRead += request.result.length;
      });
    return request;
  };
};

test("a plan with 10,000 steps, kept by an earlier form of the page: it opens, undo, log, comparing and going back work, and few steps are read", async () => {
  const { page, complaints } = await visit(rig);
  await page.goto(new URL("skiffloom.webmanifest", rig.address).href);
  const text = readFileSync("examples/tender.yaml", "utf8");
  const state = (no: number) => text.replace(/draws: .*/, `draws: ${1000 + no} mW`);
  const edits = (no: number) =>
    [{ edit: "set field", at: "floor lamp", field: "draws", to: `${1000 + no} mW` }] as const;
  const count = 10_000;
  const steps = Array.from({ length: count }, (_, index) => {
    const no = index + 1;
    const about =
      no === 1 ? ({ did: "made", from: "example" } as const) : ({ did: "edit", edits: edits(no) } as const);
    const before = no === 1 ? "" : state(index);
    return newStep({ plan: "long", no, parent: index, at: no * 60_000, about, before, after: state(no) });
  });
  const plan = { id: "long", name: "Long", madeAt: 1, changedAt: 2, head: count, tip: count, steps: count };
  await page.evaluate(
    () => new Promise((done) => Object.assign(indexedDB.deleteDatabase("skiffloom"), { onsuccess: done })),
  );
  await page.evaluate(keepAsBefore, { plan, steps });
  // of a file that is no page the browser asks for a picture, which is not there
  complaints.splice(0);
  await page.addInitScript(countReads);
  await page.goto(`${rig.address}#/plan/long/log`);
  await settled(page);
  await page.locator(".steps .step").nth(49).waitFor();
  expect(await page.evaluate(() => (window as unknown as { stepsRead: number }).stepsRead)).toBeLessThan(400);
  expect(await planText(page)).toBe(state(count));
  for (const no of [count - 1, count - 2]) {
    await page.getByRole("button", { name: /^Undo/ }).click();
    await settled(page);
    expect(await planText(page)).toBe(state(no));
  }
  await page.reload();
  await page.getByRole("button", { name: /^Redo/ }).click();
  await settled(page);
  expect(await planText(page)).toBe(state(count - 1));
  expect(await page.locator(`.step[data-step="${count}"]`).textContent()).toContain("undone");
  expect(await page.locator(`.step[data-step="${count - 1}"]`).textContent()).toContain("shown now");
  await page.getByRole("button", { name: "Show older ones" }).click();
  await page.locator(".steps .step").nth(99).waitFor();
  await page
    .locator(`.step[data-step="${count - 9}"]`)
    .getByRole("button", { name: "Compare" })
    .click();
  await page.locator(".compare").getByLabel("Compare", { exact: true }).fill("5000");
  await page.locator(".compare .difference", { hasText: "draws: 6000 mW" }).waitFor();
  expect(await page.evaluate(() => (window as unknown as { stepsRead: number }).stepsRead)).toBeLessThan(900);
});
