// npm test: everything CI holds. Installs what it needs, then layers, types, lint, and the tests.
import { buildWeb } from "./build-web.js";
import { ensureDebian, ensureModules, hasCommand, hasScipy, run } from "./ensure.js";

ensureModules();
ensureDebian({
  chromium: hasCommand("chromium"),
  ngspice: hasCommand("ngspice"),
  "poppler-utils": hasCommand("pdftotext"),
  "python3-scipy": hasScipy,
});
run(process.execPath, ["scripts/layers.js"]);
run("npx", ["tsc", "-b"]);
run("npx", ["biome", "ci", "."]);
await import("./build.js");
await buildWeb();
run("npx", ["vitest", "run", ...process.argv.slice(2)]);
