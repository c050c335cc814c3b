#!/usr/bin/env node
import { existsSync } from "node:fs";
import module from "node:module";
import { fileURLToPath } from "node:url";

const built = new URL("../dist/cli/skiffloom.js", import.meta.url);
// what was compiled once is kept beside what was built, where Node can (from 22.1); where it can't be written, nothing is lost
module.enableCompileCache?.(fileURLToPath(new URL("../dist/compiled", import.meta.url)));
if (!existsSync(fileURLToPath(built))) {
  const { spawnSync } = await import("node:child_process");
  const build = fileURLToPath(new URL("../scripts/build.js", import.meta.url));
  const made = spawnSync(process.execPath, [build], { stdio: ["ignore", 2, 2] });
  if (made.status !== 0) process.exit(2);
}
await import(built.href);
