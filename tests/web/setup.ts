import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import type { TestProject } from "vitest/node";
import { webFolder } from "../../scripts/build-web.js";
import { chromiumArguments, chromiumPath } from "../../scripts/chromium.js";
import { run, top } from "../../scripts/ensure.js";
import { serve } from "../../scripts/serve.js";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the page is served. */
    readonly page: string;
    /** Where the browser listens for the tests. */
    readonly browser: string;
  }
}

/** Newest change of any file below a folder [ms since 1970]. */
function newestIn(folder: string): number {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((each) => each.isFile());
  return Math.max(0, ...files.map(({ parentPath, name }) => statSync(join(parentPath, name)).mtimeMs));
}

/** Builds the page where its sources are newer than it, and starts one server and one browser for all tests of the page. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const built = join(webFolder, "offline-worker.js");
  const sources = ["src", "examples", "assets"].map((folder) => newestIn(join(top, folder)));
  if (!existsSync(built) || statSync(built).mtimeMs < Math.max(...sources))
    run(process.execPath, ["scripts/build-web.js"]);
  const server = await serve({ folder: webFolder });
  const browser = await chromium.launchServer({
    executablePath: chromiumPath,
    args: chromiumArguments,
  });
  project.provide("page", server.address);
  project.provide("browser", browser.wsEndpoint());
  return async () => {
    await browser.close();
    await server.close();
  };
}
