// What a fresh machine lacks: npm packages from the lock file, Debian packages where the tests need them.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

export const top = resolve(dirname(fileURLToPath(import.meta.url)), "..");

/** Runs a command in the project's folder with its output shown; ends the process with its status if it fails. */
export function run(command, args, options = {}) {
  const result = spawnSync(command, args, { cwd: top, stdio: "inherit", ...options });
  if (result.error) throw result.error;
  if (result.status !== 0) process.exit(result.status ?? 1);
}

export function ensureNode() {
  const [major, minor] = process.versions.node.split(".").map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  console.error(`Skiffloom needs Node 20.19 or later; this is ${process.versions.node}.`);
  process.exit(1);
}

/** Installs the locked npm packages, once for each state of the lock file. */
export function ensureModules() {
  ensureNode();
  const lock = createHash("sha256")
    .update(readFileSync(join(top, "package-lock.json")))
    .digest("hex");
  const stamp = join(top, "node_modules", ".skiffloom-lock");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === lock) return;
  console.log("Installing npm packages (npm ci) …");
  run("npm", ["ci", "--no-audit", "--no-fund", "--loglevel=error"]);
  mkdirSync(dirname(stamp), { recursive: true });
  writeFileSync(stamp, lock);
}

/**
 * Installs Debian packages that are missing. Without root (or apt) it says what to install and ends with status 1.
 * @param {Record<string, () => boolean>} wanted package name → is it there?
 */
export function ensureDebian(wanted) {
  const missing = Object.keys(wanted).filter((name) => !wanted[name]());
  if (missing.length === 0) return;
  const root = typeof process.getuid === "function" && process.getuid() === 0;
  const apt = spawnSync("apt-get", ["--version"], { stdio: "ignore" }).status === 0;
  if (!root || !apt) {
    console.error(
      `The tests need these Debian packages: ${missing.join(" ")}\n  sudo apt-get install ${missing.join(" ")}`,
    );
    process.exit(1);
  }
  console.log(`Installing Debian packages: ${missing.join(" ")} …`);
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  run("apt-get", ["update", "-qq"], { env });
  run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", ...missing], {
    env,
    stdio: ["ignore", "ignore", "inherit"],
  });
}

export const hasCommand = (name) => () =>
  spawnSync("sh", ["-c", `command -v ${name}`], { stdio: "ignore" }).status === 0;
export const hasScipy = () =>
  spawnSync("python3", ["-c", "import scipy.optimize"], { stdio: "ignore" }).status === 0;
