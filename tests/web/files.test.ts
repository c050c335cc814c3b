import { readFileSync } from "node:fs";
import type { Download, Page } from "playwright-core";
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

/** What a person finds in the file that was downloaded. */
async function textOf(download: Download): Promise<string> {
  const stream = await download.createReadStream();
  const parts: Buffer[] = [];
  for await (const part of stream) parts.push(Buffer.from(part));
  return Buffer.concat(parts).toString();
}

async function keptPlans(page: Page): Promise<number> {
  await page.goto(rig.address);
  await page.locator("#kept").waitFor();
  await page.locator('[aria-labelledby="kept"] .cards').waitFor({ state: "attached" });
  return page.locator(".kept-plan").count();
}

test.each([
  ["newer", tender.replace(/^skiffloom: 1/m, "skiffloom: 999"), "written by a newer Skiffloom", false],
  ["damaged", tender.slice(0, 900).replace("rules:", "rulez:"), "can't be read as a plan", true],
  ["no text at all", Buffer.from([0xff, 0xfe, 0x00, 0xd8, 0x80]), "can't be read as a plan", true],
] as const)(
  "a file that is %s opens read only with the reason, and nothing is kept or overwritten",
  async (_, text, reason, mendable) => {
    const { page } = await visit(rig);
    await openAsFile(page, "mine.yaml", text);
    await page.getByText(reason).waitFor();
    await page.getByText("Read only").waitFor();
    await goToView(page, "text");
    expect(await page.locator(".text-view textarea").isEditable()).toBe(false);
    expect(await page.getByRole("button", { name: "Mend a copy" }).count()).toBe(mendable ? 1 : 0);
    expect(await keptPlans(page)).toBe(0);
  },
);

test("a damaged file is mended in a copy, by hand", async () => {
  const { page } = await visit(rig);
  await openAsFile(page, "mine.yaml", tender.replace("rules:", "rulez:"));
  await page.getByText(/rulez/).first().waitFor();
  await page.getByRole("button", { name: "Mend a copy" }).click();
  const text = page.locator(".text-view textarea");
  await text.fill((await text.inputValue()).replace("rulez:", "rules:"));
  await page.getByRole("button", { name: "Take this text" }).click();
  await settled(page);
  expect(await planText(page)).toBe(tender);
  expect(await keptPlans(page)).toBe(1);
});

test.each([
  ["empty", 0, "The file is empty."],
  ["too large", 17, "larger than a plan may be (16 MB)"],
])(
  "a file dropped here that is %s is refused with the reason, and one stays where one is",
  async (_, megabytes, reason) => {
    const { page } = await visit(rig);
    await page.locator(".way-in").evaluate((place, size) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([new Uint8Array(size * 1024 * 1024)], "boat.yaml"));
      place.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
    }, megabytes);
    await page.getByText(reason).waitFor();
    expect(await keptPlans(page)).toBe(0);
  },
);

test("a file that is gone when it is read is said to be", async () => {
  const { page } = await visit(rig);
  await page.locator(".way-in").evaluate((place) => {
    Object.assign(File.prototype, {
      arrayBuffer: () => Promise.reject(new DOMException("It was moved or removed.", "NotReadableError")),
    });
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File(["skiffloom: 1"], "boat.yaml"));
    place.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
  });
  await page.getByText("The file could not be read: It was moved or removed.").waitFor();
  expect(await keptPlans(page)).toBe(0);
});

test("where the browser has no file chooser a plan is downloaded, byte for byte, and opens again", async () => {
  const { page } = await visit(rig);
  await page.addInitScript(() => {
    Reflect.deleteProperty(window, "showSaveFilePicker");
    Reflect.deleteProperty(window, "showOpenFilePicker");
  });
  await page.reload();
  await openExample(page, "tender");
  await goToView(page, "circuits", "floor lamp");
  await typeInto(page, "draws", "2 W");
  await settled(page);
  await page.getByRole("button", { name: "Tools" }).click();
  await page.getByText("The only copy is in this browser.").waitFor();
  // what the browser itself says of keeping it is told there
  const persisted = await page.evaluate(() => navigator.storage.persisted());
  await page
    .getByText(
      persisted
        ? "The browser has agreed not to clear it by itself."
        : "The browser may clear it when it runs out of room.",
    )
    .waitFor();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save a copy" }).click(),
  ]);
  const saved = await textOf(download);
  await page.getByText("Last saved to a file").waitFor();
  await page.keyboard.press("Escape");
  expect(saved).toBe(await planText(page));
  expect(saved).toBe(tender.replace(/(floor lamp:.*?draws: )[^,}\s]+ W/s, (_all, start) => `${start}2 W`));
  await page.goto(rig.address);
  await openAsFile(page, download.suggestedFilename(), saved);
  await settled(page);
  expect(await planText(page)).toBe(saved);
});

test("where it has one, a plan is saved to its own file, and never over what something else has written there", async () => {
  const { page } = await visit(rig);
  // a real file of the browser's own, in place of one the person would choose
  await page.addInitScript(() => {
    const file = async () =>
      (await navigator.storage.getDirectory()).getFileHandle("boat.yaml", { create: true });
    Object.assign(window, { showOpenFilePicker: async () => [await file()], showSaveFilePicker: file });
  });
  await page.reload();
  const onDisk = () =>
    page.evaluate(async () => {
      const handle = await (await navigator.storage.getDirectory()).getFileHandle("boat.yaml");
      return (await handle.getFile()).text();
    });
  const writeToDisk = (text: string) =>
    page.evaluate(async (written) => {
      const folder = await navigator.storage.getDirectory();
      const stream = await (await folder.getFileHandle("boat.yaml", { create: true })).createWritable();
      await stream.write(written);
      await stream.close();
    }, text);
  await writeToDisk(tender);
  await page.locator(".way-in button").click();
  await settled(page);
  await goToView(page, "circuits", "floor lamp");
  await typeInto(page, "draws", "2 W");
  await settled(page);
  const mine = await planText(page);
  const save = async () => {
    await page.getByRole("button", { name: "Tools" }).click();
    await page.getByRole("button", { name: "Save to boat.yaml" }).click();
  };
  await save();
  await page.getByText("Saved to boat.yaml.").waitFor();
  expect(await onDisk()).toBe(mine);
  await page.keyboard.press("Escape");

  await writeToDisk(`${mine}# by another hand\n`);
  await typeInto(page, "draws", "3 W");
  await settled(page);
  await save();
  await page.getByText("boat.yaml was changed by something else").waitFor();
  expect(await onDisk()).toBe(`${mine}# by another hand\n`);
});

test("where the plan's own file is out of reach it is asked where else to, and nothing is passed over in silence", async () => {
  const { page } = await visit(rig);
  await page.addInitScript(() => {
    const file = (name: string) => async () =>
      (await navigator.storage.getDirectory()).getFileHandle(name, { create: true });
    Object.assign(window, {
      showOpenFilePicker: async () => [await file("boat.yaml")()],
      showSaveFilePicker: file("elsewhere.yaml"),
    });
    Object.assign(FileSystemFileHandle.prototype, { requestPermission: async () => "denied" });
  });
  await page.reload();
  await page.evaluate(async (text) => {
    const folder = await navigator.storage.getDirectory();
    const stream = await (await folder.getFileHandle("boat.yaml", { create: true })).createWritable();
    await stream.write(text);
    await stream.close();
  }, tender);
  await page.locator(".way-in button").click();
  await settled(page);
  await page.getByRole("button", { name: "Tools" }).click();
  await page.getByRole("button", { name: "Save to boat.yaml" }).click();
  await page.getByText("Saved to elsewhere.yaml.").waitFor();
  await page.getByRole("button", { name: "Save to elsewhere.yaml" }).waitFor();
  const saved = await page.evaluate(async () => {
    const folder = await navigator.storage.getDirectory();
    return (await (await folder.getFileHandle("elsewhere.yaml")).getFile()).text();
  });
  expect(saved).toBe(tender);
});
