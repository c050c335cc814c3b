// Writes the icons a home screen wants from the mark: node scripts/icons.js. They are kept, since the build needs no browser.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { chromiumArguments, chromiumPath } from "./chromium.js";
import { top } from "./ensure.js";

const folder = join(top, "src", "web", "public");
const mark = readFileSync(join(folder, "mark.svg"), "utf8");
const paper = "#faf8f2";
/** A maskable icon may be cut to a circle of four fifths its width: the mark stands inside of that. */
const icons = [
  { name: "mark-192.png", sizePx: 192, markShare: 1 },
  { name: "mark-512.png", sizePx: 512, markShare: 1 },
  { name: "mark-maskable-512.png", sizePx: 512, markShare: 0.72, background: paper },
];

const browser = await chromium.launch({ executablePath: chromiumPath, args: chromiumArguments });
for (const { name, sizePx, markShare, background = "transparent" } of icons) {
  const page = await browser.newPage({ viewport: { width: sizePx, height: sizePx } });
  await page.setContent(
    `<style>body{margin:0;height:100vh;display:grid;place-items:center;background:${background}}svg{width:${100 * markShare}%}</style>${mark}`,
  );
  await page.screenshot({ path: join(folder, name), omitBackground: true });
  await page.close();
}
await browser.close();
