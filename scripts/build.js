// Bundles the command line into dist/. Type checking is apart (npm run types).
import { rmSync } from "node:fs";
import { join } from "node:path";
import { ensureModules, top } from "./ensure.js";

ensureModules();
const { build } = await import("esbuild");
rmSync(join(top, "dist", "cli"), { recursive: true, force: true });
await build({
  absWorkingDir: top,
  entryPoints: { skiffloom: "src/cli/main.ts" },
  outdir: "dist/cli",
  bundle: true,
  splitting: true,
  minify: false,
  format: "esm",
  // neutral: the browser build of yaml is a plain ES module; the Node one is not
  platform: "neutral",
  target: "node20",
  external: ["node:*", "pdfkit"],
  logLevel: "warning",
});
