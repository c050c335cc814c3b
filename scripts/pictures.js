// Takes pictures of every view of the page to be looked at: node scripts/pictures.js [folder] [view …]. With no folder: those kept in docs/pictures.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { chromium } from "playwright-core";
import { buildWeb, webFolder } from "./build-web.js";
import { top } from "./ensure.js";
import { serve } from "./serve.js";

const sizes = { phone: [360, 780], tablet: [768, 1024], desk: [1440, 900] };
const stages = ["survey", "gear", "layout", "circuits", "boxes", "parts", "build", "proof", "log"];
const views = ["start", "new", ...stages, "findings", "outing", "print", "text", "terms", "working", "slip"];
/** By dusk few are kept: each is in the history for good. */
const keptByDusk = ["layout-desk", "findings-tablet", "outing-phone"];
/** Share of what a picture could be, for `webp`: small, and still sharp to read. */
const quality = 0.72;

const [folder, ...wanted] = process.argv.slice(2);
const to = folder ? resolve(folder) : join(top, "docs", "pictures");

await buildWeb();
mkdirSync(to, { recursive: true });
const server = await serve({ folder: webFolder });
const browser = await chromium.launch({
  executablePath: "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu"],
});
const darkroom = await (await browser.newContext()).newPage();
for (const size of Object.keys(sizes))
  for (const light of ["day", "dusk"]) {
    const mine = views.filter((view) =>
      folder
        ? wanted.length === 0 || wanted.includes(view)
        : light === "day" || keptByDusk.includes(`${view}-${size}`),
    );
    if (mine.length > 0) await take(size, light, mine);
  }
await browser.close();
await server.close();

async function take(size, light, these) {
  const [width, height] = sizes[size];
  const colorScheme = light === "dusk" ? "dark" : "light";
  const context = await browser.newContext({
    viewport: { width, height },
    colorScheme,
    hasTouch: size === "phone",
    reducedMotion: "reduce",
  });
  const page = await context.newPage();
  page.setDefaultTimeout(180_000);
  const shot = async (view) => {
    await atRest(page);
    const picture = await page.screenshot();
    writeFileSync(join(to, `${view}-${size}-${light}.webp`), await developed(picture));
    console.log(`${view} ${size} ${light}`);
  };
  await page.goto(server.address);
  await page.locator(".start h1").waitFor();
  if (these.includes("start")) await shot("start");
  if (these.includes("new")) {
    await page.goto(`${server.address}#/new`);
    await page.locator(".gear-row").first().waitFor();
    await shot("new");
  }
  await pictureViews(
    these.filter((view) => view !== "start" && view !== "new" && view !== "findings"),
    "launch.yaml",
  );
  // the examples are sound: what is found is shown on one that is not
  if (these.includes("findings")) await pictureViews(["findings"], "wrong/drop-at-the-last-lamp.yaml");
  await context.close();

  async function pictureViews(shown, example) {
    if (shown.length === 0) return;
    await page.goto(server.address);
    const buffer = readFileSync(join(top, "examples", example));
    await page
      .locator('.start input[type="file"]')
      .setInputFiles({ name: "plan.yaml", mimeType: "application/yaml", buffer });
    await page.locator('.ledger[data-fresh="true"]').waitFor();
    for (const view of shown) {
      const [at, select = ""] = { slip: ["circuits", "/fore bilge pump"], working: ["findings"] }[view] ?? [
        view,
      ];
      await page.evaluate(
        (place) => {
          location.hash = `${location.hash.split("/").slice(0, 3).join("/")}/${place}`;
        },
        encodeURI(at + select),
      );
      await page.locator(`main[data-view="${at}"]`).waitFor();
      await page.locator("main .loading").waitFor({ state: "detached" });
      if (view === "working") await page.locator(".ledger .figure").first().click();
      if (view === "findings") await page.locator(".finding summary").first().click();
      await shot(view);
      if (view === "working") await page.keyboard.press("Escape");
    }
  }
}

/** Until nothing is being fetched or worked out any more. */
async function atRest(page) {
  await page.waitForFunction(() => !document.querySelector('[aria-busy="true"], .loading'));
  await page.waitForTimeout(300);
}

/** A picture as WebP, which the browser writes: a third of what it is as PNG. */
async function developed(picture) {
  const base64 = await darkroom.evaluate(
    async ([png, share]) => {
      const bitmap = await createImageBitmap(await (await fetch(`data:image/png;base64,${png}`)).blob());
      const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
      canvas.getContext("2d").drawImage(bitmap, 0, 0);
      const blob = await canvas.convertToBlob({ type: "image/webp", quality: share });
      const bytes = new Uint8Array(await blob.arrayBuffer());
      return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
    },
    [picture.toString("base64"), quality],
  );
  return Buffer.from(base64, "base64");
}
