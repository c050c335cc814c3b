// Takes pictures of every view of the page to be looked at: node scripts/pictures.js [folder] [view …]. With no folder: those kept in docs/pictures,
// and docs/pictures.md, which shows them.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { chromium } from "playwright-core";
import { buildWeb, webFolder } from "./build-web.js";
import { chromiumArguments, chromiumPath } from "./chromium.js";
import { top } from "./ensure.js";
import { serve } from "./serve.js";

const sizes = { phone: [360, 780], tablet: [768, 1024], desk: [1440, 900] };
/** What each picture shows. */
const views = {
  start: "The start view: examples, a new plan, a file, plans kept here",
  new: "A new plan: a few questions",
  survey: "Survey: the form of the boat, faces and zones, and where things are",
  tape: "Station by station: the figure measured now, the table, and how well the figures agree",
  gear: "Gear: lists that behave like a spreadsheet",
  layout: "Layout: the boat to scale, things to drag, runs along their way",
  circuits: "Circuits: the map, with voltage, current and rating at each point",
  boxes: "Boxes: faces at scale, holes to drag, what binds",
  parts: "Parts: the shopping list with ticks",
  build: "Build: one step at a time",
  proof: "Proof: readings to take, and what they tell",
  log: "Log: every edit, named moments, any two compared",
  findings: "Findings, one opened to figure, limit, working and source",
  outing: "Outing: what is on and when, and the batteries followed",
  print: "Print: packet, sheets, tables, templates, circuit, plan",
  text: "The plan as text",
  terms: "Words of the trade",
  working: "The working of a figure",
  slip: "A thing of the plan, its slip open",
};
/** By dusk few are kept: each is in the history for good. */
const keptByDusk = ["layout-desk", "findings-tablet", "outing-phone"];
/** Share of what a picture could be, for `webp`: small, and still sharp to read. */
const quality = 0.72;

const [folder, ...wanted] = process.argv.slice(2);
const to = folder ? resolve(folder) : join(top, "docs", "pictures");

await buildWeb();
if (!folder) rmSync(to, { recursive: true, force: true });
mkdirSync(to, { recursive: true });
const server = await serve({ folder: webFolder });
const browser = await chromium.launch({
  executablePath: chromiumPath,
  args: chromiumArguments,
});
const darkroom = await (await browser.newContext()).newPage();
for (const size of Object.keys(sizes))
  for (const light of ["day", "dusk"]) {
    const mine = Object.keys(views).filter((view) =>
      folder
        ? wanted.length === 0 || wanted.includes(view)
        : light === "day" || keptByDusk.includes(`${view}-${size}`),
    );
    if (mine.length > 0) await take(size, light, mine);
  }
await browser.close();
await server.close();
if (!folder) writeFileSync(join(top, "docs", "pictures.md"), picturesPage());

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
      if (view === "log") await makeHistory(page);
      const [at, select = ""] = { slip: ["circuits", "/fore bilge pump"], working: ["findings"] }[view] ?? [
        view,
      ];
      await goTo(page, at, select);
      if (view === "working") await page.locator(".ledger .figure").first().click();
      if (view === "findings") await page.locator(".finding summary").first().click();
      await shot(view);
      if (view === "working") await page.keyboard.press("Escape");
    }
  }
}

/** A few edits, so that there is something to go back to. */
async function makeHistory(page) {
  await goTo(page, "circuits", "/fore bilge pump");
  for (const [field, value] of [
    ["draws", "2.4 A at 12 V"],
    ["largest fuse", "4 A"],
  ]) {
    const input = page.locator(".slip").getByLabel(field, { exact: true });
    await input.fill(value);
    await input.press("Enter");
    await page.locator('.ledger[data-fresh="true"]').waitFor();
  }
}

async function goTo(page, view, select = "") {
  await page.evaluate(
    (place) => {
      location.hash = `${location.hash.split("/").slice(0, 3).join("/")}/${place}`;
    },
    encodeURI(view + select),
  );
  await page.locator(`main[data-view="${view}"]`).waitFor();
  await page.locator("main .loading").waitFor({ state: "detached" });
  if (select !== "") await page.locator(".slip").waitFor();
}

/** docs/pictures.md, as text. */
function picturesPage() {
  const shown = (view, size, light, width) =>
    `<img src="pictures/${view}-${size}-${light}.webp" width="${width}" alt="${views[view]}, ${sizes[size][0]} px wide, by ${light}">`;
  const rows = Object.keys(views).map((view) => {
    const byDay = [
      ["phone", 180],
      ["tablet", 280],
      ["desk", 480],
    ].map(([size, width]) => shown(view, size, "day", width));
    return `## ${views[view]}\n\n${byDay.join("\n")}\n`;
  });
  const dusk = keptByDusk.map((name) => {
    const [view, size] = name.split("-");
    return shown(view, size, "dusk", size === "desk" ? 480 : size === "tablet" ? 280 : 180);
  });
  return `# The page in pictures

Every view at 360, 768 and 1440 px, by day; a few by dusk at the end. The boats are the project's own, invented. \`node scripts/pictures.js\` takes them anew and writes this page;
with a folder it takes all of them there, by day and by dusk, to be looked at.

${rows.join("\n")}
## By dusk

${dusk.join("\n")}
`;
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
