// npm start: the main job on an example plan: the summary on screen, the packet on disk.
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { ensureModules, run, top } from "./ensure.js";

ensureModules();
await import("./build.js");
const plan = process.argv[2] ?? "examples/utility.yaml";
const packet = join("out", "packet.pdf");
mkdirSync(join(top, "out"), { recursive: true });
const skiffloom = (...args) => run(process.execPath, ["bin/skiffloom.js", ...args]);
skiffloom("figures", plan);
skiffloom("packet", plan, "--to", packet, "--force");
