// npm start: builds the page and serves it on this machine. Where nobody looks on (stdout is not a terminal) the main job is done
// instead, and ends: the figures of an example plan on screen, its packet on disk.
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { buildWeb, webFolder } from "./build-web.js";
import { ensureModules, run, top } from "./ensure.js";
import { serve } from "./serve.js";

const help = `npm start                         builds the page, serves it on this machine only, and prints its address
npm start -- --port 8080          the same, at a port of your choice
npm start -- --page --once        builds, serves, fetches the page once, and ends
npm start -- --print              prints the figures of an example plan, and writes its packet to out/packet.pdf
npm start -- --print PLAN         the same for a plan of your choice

Without a terminal to print to, npm start does what --print does, and ends; --page serves the page there too.`;

const usualPort = 8412;
const words = process.argv.slice(2);
const plan = words.find((word) => /\.(ya?ml|json)$/.test(word));
const at = words.indexOf("--port");
const port = at < 0 ? undefined : Number(words[at + 1]);

const looked = process.stdout.isTTY || words.includes("--page") || at >= 0;

if (words.includes("--help")) console.log(help);
else if (words.includes("--print") || plan !== undefined || !looked)
  await printPlan(plan ?? "examples/utility.yaml");
else if (port !== undefined && !(Number.isInteger(port) && port >= 0 && port < 65536)) {
  console.error(`--port takes a number from 0 to 65535, got ${words[at + 1]}`);
  process.exitCode = 2;
} else await showPage(words.includes("--once"));

async function printPlan(file) {
  ensureModules();
  await import("./build.js");
  mkdirSync(join(top, "out"), { recursive: true });
  const skiffloom = (...args) => run(process.execPath, ["bin/skiffloom.js", ...args]);
  skiffloom("figures", file);
  skiffloom("packet", file, "--to", join("out", "packet.pdf"), "--force");
}

async function showPage(once) {
  ensureModules();
  console.log("Building the page …");
  await buildWeb();
  const server = await openPort();
  console.log(`Skiffloom is at ${server.address} (this machine only; Control-C ends it).`);
  if (once) {
    const page = await fetch(server.address);
    console.log(`The page answers with ${page.status}.`);
    process.exitCode = page.ok ? 0 : 1;
    await server.close();
  }
}

/** The same port each time, since a browser keeps plans by address; another only where that one is taken. */
async function openPort() {
  try {
    return await serve({ folder: webFolder, port: port ?? usualPort });
  } catch (error) {
    if (error.code !== "EADDRINUSE" || port !== undefined) throw error;
    console.log(
      `Port ${usualPort} is taken. Plans kept in the browser belong to that address; another one has its own.`,
    );
    return serve({ folder: webFolder });
  }
}
