// Bundles the solver's benchmark and runs it: node bench/run-solver.js
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

const top = join(import.meta.dirname, "..");
const folder = join(top, "dist", "bench");
mkdirSync(folder, { recursive: true });
const common = { absWorkingDir: top, bundle: true, platform: "node", target: "node20", logLevel: "warning" };
const program = join(folder, "solver-process.cjs");
// CommonJS, one small file: the quickest thing Node can start.
await build({
  ...common,
  entryPoints: ["bench/solver-process.ts"],
  outfile: program,
  format: "cjs",
  minify: true,
});
await build({
  ...common,
  entryPoints: ["bench/solver.ts"],
  outfile: join(folder, "solver.mjs"),
  format: "esm",
});

const { solverBench, solverTable, emptyProcessMs } = await import(
  pathToFileURL(join(folder, "solver.mjs")).href
);
const rows = await solverBench(program, ({ gear, kind, oursMs, ngspiceMs }) =>
  console.log(`${gear} ${kind}: ${oursMs.toFixed(0)} ms against ${ngspiceMs.toFixed(0)} ms`),
);
console.log(`\n${solverTable(rows, emptyProcessMs())}`);
