// Holds what modules may know of one another: a folder imports from itself and from what is named for it, nothing else; no modules import
// one another in a ring; what is exported is wanted.
import { ensureModules } from "./ensure.js";

ensureModules();
const { readModules } = await import("./modules/read.js");
const { rings } = await import("./modules/rings.js");
const { unwanted } = await import("./modules/exports.js");

/** Layers, lowest first: each may import any layer on a line before its own. Layers on one line do not know each other. */
const layers = [["core"], ["words"], ["drawing"], ["packet"], ["cli", "web"]];
const layerOf = (name) => layers.findIndex((row) => row.includes(name));
/** Rooms of the core, lowest first: each may import its own line and those before it. */
const rooms = [
  ["quantity", "reference", "way"],
  ["plan"],
  ["circuit", "hull", "box", "route", "terminations"],
  ["energy", "parts"],
  ["proving", "work"],
  ["findings", "hull-figures.ts"],
  ["figures.ts", "figures-types.ts", "figures-json.ts", "held-figures.ts", "layout-figures.ts"],
  ["ledger.ts", "working"],
];
/** Types of a finding are shared upwards: a result may carry them. The plan's edits are values too. */
const open = new Set(["findings/finding.ts"]);

const roomOf = (inCore) => rooms.findIndex((row) => row.includes(inCore.split("/")[0]));
const faults = [];
let seen = 0;
const modules = readModules();
for (const [path, { takes }] of modules) {
  if (!path.startsWith("src/")) continue;
  const from = path.slice("src/".length);
  const layer = from.split("/")[0];
  for (const { from: taken } of takes) {
    seen += 1;
    const to = taken.replace(/^src\//, "");
    const target = to.split("/")[0];
    // the page carries the examples as text
    if (layer === "web" && /^examples\/[^/]+\.yaml\?raw$/.test(to)) continue;
    const [own, other] = [layerOf(layer), layerOf(target)];
    if (other < 0 || other > own || (other === own && target !== layer)) {
      faults.push(`${from} imports ${to}: ${layer} must not know ${target}`);
      continue;
    }
    if (layer !== "core" || target !== "core") continue;
    const [fromRoom, toRoom] = [from.slice(5), to.slice(5)];
    if (open.has(toRoom)) continue;
    const [a, b] = [roomOf(fromRoom), roomOf(toRoom)];
    if (a < 0 || b < 0) faults.push(`${from} or ${to}: not a room that scripts/layers.js knows`);
    else if (b > a) faults.push(`${from} imports ${to}: the core's rooms go one way`);
  }
}
if (seen === 0) faults.push("no imports found: is src/ there?");
faults.push(...rings(modules), ...unwanted(modules));
for (const fault of faults) console.error(fault);
console.log(`modules: ${seen} imports, ${faults.length} faults`);
process.exitCode = faults.length ? 1 : 0;
