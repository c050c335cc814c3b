// npm run bench: builds and runs every bench, one table each. Figures are as measured; nothing is asserted on time.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { ensureModules, run, top } from "./ensure.js";

ensureModules();
const { build } = await import("esbuild");
const folder = join(top, "dist", "bench");
mkdirSync(folder, { recursive: true });
const benches = {
  figures: ["figures.ts", "figuresBench"],
  "big-plan": ["big-plan.ts", "bigPlanBench"],
  marks: ["marks.ts", "marksBench"],
  parts: ["parts.ts", "partsBench"],
  proving: ["proving.ts", "provingBench"],
  drag: ["page/drag.ts", "dragBench", pages],
  work: ["work.ts", "workBench"],
  fuzz: ["fuzz.ts", "fuzzBench"],
};
/** Only these, if any are named: `npm run bench -- drag`. */
const wanted = process.argv.slice(2);
for (const [name, [entry, made, prepare]] of Object.entries(benches)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  const outfile = join(folder, `${name}.mjs`);
  await build({
    absWorkingDir: top,
    entryPoints: [`bench/${entry}`],
    outfile,
    bundle: true,
    format: "esm",
    // neutral: the browser build of yaml is a plain ES module; the Node one is not
    platform: "neutral",
    external: ["node:*", "playwright-core"],
    logLevel: "warning",
  });
  const bench = await import(pathToFileURL(outfile).href);
  const rows = await bench[made](prepare && (await prepare()));
  show(name, rows);
}
for (const [name, measure] of Object.entries(await import("./bench-page.js")))
  if (wanted.length === 0 || wanted.includes(name)) show(name, await measure(await pages()));

// whole processes against ngspice (Debian package `ngspice`): the largest networks take it minutes
if (wanted.length === 0 || wanted.includes("solver")) {
  console.log("\nsolver");
  run(process.execPath, ["bench/run-solver.js"]);
}

function show(name, rows) {
  console.log(`\n${name}`);
  console.table(rows);
  writeFileSync(join(folder, `${name}.json`), JSON.stringify(rows, null, 2));
}

/** Builds the page, and an empty one of the same framework to measure beside it. */
async function pages() {
  const { buildWeb, webFolder } = await import("./build-web.js");
  await buildWeb();
  const empty = join(folder, "empty");
  mkdirSync(empty, { recursive: true });
  await build({
    absWorkingDir: top,
    entryPoints: ["bench/page/empty-page.ts"],
    outfile: join(empty, "empty.js"),
    bundle: true,
    minify: true,
    format: "esm",
    define: { "process.env.NODE_ENV": '"production"' },
    logLevel: "warning",
  });
  const html =
    '<!doctype html><title>empty</title><div id="page"></div><script type="module" src="empty.js"></script>';
  writeFileSync(join(empty, "index.html"), html);
  return { page: webFolder, empty };
}
