// Bundles the solver's benchmark and runs it; part of npm run bench. Alone, with other sizes: node bench/run-solver.js 60 1000
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

const { solverBench, solverLine, solverTable, emptyProcessMs } = await import(
  pathToFileURL(join(folder, "solver.mjs")).href
);
const asked = process.argv.slice(2).map(Number);
const sizes = asked.length > 0 ? asked : [60, 1000, 10000, 20000];
// each row as it is known: the largest take ngspice minutes
const rows = await solverBench(program, sizes, (row) => console.log(solverLine(row)));
console.log(`\n${solverTable(rows, emptyProcessMs())}`);
