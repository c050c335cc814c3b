// Builds the page into dist/web, and the worker that keeps it in the browser with the list of its files.
import { createHash } from "node:crypto";
import { copyFileSync, readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { pathToFileURL } from "node:url";
import { ensureModules, top } from "./ensure.js";

export const webFolder = join(top, "dist", "web");
const workerName = "offline-worker.js";

/** Every file of the built page, by its address below the page's own. */
export function builtFiles(folder = webFolder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .filter((name) => name !== workerName)
    .sort();
}

export async function buildWeb() {
  ensureModules();
  // a test runner sets its own, and the page would be built of parts meant for finding faults
  process.env.NODE_ENV = "production";
  const vite = await import("vite");
  await vite.build({
    root: join(top, "src", "web"),
    configFile: join(top, "src", "web", "vite.config.ts"),
    logLevel: "warn",
  });
  copyFileSync(join(top, "assets", "fonts", "LICENSE-OFL.txt"), join(webFolder, "fonts-LICENSE.txt"));
  const files = builtFiles();
  const version = createHash("sha256");
  for (const name of files) version.update(name).update(readFileSync(join(webFolder, name)));
  const { build } = await import("esbuild");
  await build({
    absWorkingDir: top,
    entryPoints: [join("src", "web", "offline", "offline-worker.ts")],
    outfile: join(webFolder, workerName),
    bundle: true,
    minify: true,
    format: "iife",
    target: "es2022",
    define: {
      pageVersion: JSON.stringify(version.digest("hex").slice(0, 16)),
      pageFiles: JSON.stringify(files.map((name) => `./${name}`)),
    },
    logLevel: "warning",
  });
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) await buildWeb();
