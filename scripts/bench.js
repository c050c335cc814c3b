// npm run bench: builds and runs every bench, one table each. Figures are as measured; nothing is asserted on time.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { ensureModules, top } from "./ensure.js";

ensureModules();
const { build } = await import("esbuild");
const folder = join(top, "dist", "bench");
mkdirSync(folder, { recursive: true });
const benches = { figures: "figuresBench", marks: "marksBench", parts: "partsBench" };
for (const [name, run] of Object.entries(benches)) {
  const outfile = join(folder, `${name}.mjs`);
  await build({
    absWorkingDir: top,
    entryPoints: [`bench/${name}.ts`],
    outfile,
    bundle: true,
    format: "esm",
    // neutral: the browser build of yaml is a plain ES module; the Node one is not
    platform: "neutral",
    external: ["node:*"],
    logLevel: "warning",
  });
  const bench = await import(pathToFileURL(outfile).href);
  const rows = bench[run]();
  console.log(`\n${name}`);
  console.table(rows);
  writeFileSync(join(folder, `${name}.json`), JSON.stringify(rows, null, 2));
}
