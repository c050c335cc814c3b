import { copyFileSync, cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { serve } from "../../scripts/serve.js";
import {
  goToView,
  openExample,
  openRig,
  planText,
  type Rig,
  settled,
  typeInto,
  visit,
  webFolder,
  withOffline,
} from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

test("once it has been open, it opens and works with the server gone", async () => {
  const server = await serve({ folder: webFolder });
  const { page } = await visit({ ...rig, address: server.address }, withOffline);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await openExample(page, "tender");
  await server.close();
  await page.goto(server.address);
  await page.locator(".kept-plan .card").first().click();
  await settled(page);
  for (const view of ["findings", "log", "circuits"] as const) await goToView(page, view);
  await goToView(page, "circuits", "floor lamp");
  await typeInto(page, "draws", "2 W");
  await settled(page);
  expect(await planText(page)).toContain("draws: 2 W");
  await page.goto(server.address);
  await openExample(page, "launch");
});

test("a newer version waits until it is taken, and no work is lost", async () => {
  const folder = mkdtempSync(join(tmpdir(), "skiffloom-page-"));
  cpSync(webFolder, folder, { recursive: true });
  const server = await serve({ folder });
  const { page } = await visit({ ...rig, address: server.address }, withOffline);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await openExample(page, "tender");
  await goToView(page, "circuits", "floor lamp");
  const index = join(folder, "index.html");
  writeFileSync(
    index,
    readFileSync(index, "utf8").replace("<title>Skiffloom</title>", "<title>Skiffloom 2</title>"),
  );
  const worker = join(folder, "offline-worker.js");
  writeFileSync(worker, readFileSync(worker, "utf8").replace(/[0-9a-f]{16}/, "0123456789abcdef"));
  await page.evaluate(async () => {
    await (await navigator.serviceWorker.ready).update();
  });
  await page.getByText("A newer version of this page is ready.").waitFor();
  expect(await page.title()).not.toContain("2");
  await typeInto(page, "draws", "3 W");
  await settled(page);
  await page.getByText("Take it now").click();
  await page.waitForFunction(() => document.title === "Skiffloom 2");
  await settled(page);
  expect(await planText(page)).toContain("draws: 3 W");
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

test("it can be installed: a manifest with name, start and icons that are there", async () => {
  const manifest = JSON.parse(readFileSync(join(webFolder, "skiffloom.webmanifest"), "utf8"));
  expect(manifest.name).toBe("Skiffloom");
  expect(manifest.start_url).toBe("./");
  for (const { src } of manifest.icons) copyFileSync(join(webFolder, src), join(tmpdir(), "skiffloom-icon"));
  expect(manifest.icons.length).toBeGreaterThanOrEqual(3);
});
