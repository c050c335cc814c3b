import { readFileSync } from "node:fs";
import { helpLines } from "./help-lines.js";
import { print } from "./print.js";
import { exit, InputProblem } from "./problem.js";
import { harmless, terminal } from "./terminal.js";
import { meantOf } from "./unknown.js";

interface Command {
  readonly help: string;
  readonly run: (words: readonly string[]) => number | Promise<number>;
}

/** Each command is loaded when it is called, so that a quick one stays quick. */
const commands: Readonly<Record<string, () => Promise<Command>>> = {
  check: () => import("./commands/check.js"),
  figures: () => import("./commands/figures.js"),
  prove: () => import("./commands/prove.js"),
  netlist: () => import("./commands/netlist.js"),
  packet: () => import("./commands/packet.js"),
  sheet: () => import("./commands/sheet.js"),
  boxes: () => import("./commands/boxes.js"),
  routes: () => import("./commands/routes.js"),
  cuts: () => import("./commands/cuts.js"),
  parts: () => import("./commands/parts.js"),
  form: () => import("./commands/form.js"),
  marks: () => import("./commands/marks.js"),
  float: () => import("./commands/float.js"),
  work: () => import("./commands/work.js"),
  changes: () => import("./commands/changes.js"),
  schema: () => import("./commands/schema.js"),
  new: () => import("./commands/new.js"),
  apply: () => import("./commands/apply.js"),
};

const help = `skiffloom plans, checks and prints the 12 V or 24 V electrics of a small open boat.

  skiffloom check PLAN      what is wrong with it, and what would be right
  skiffloom figures PLAN    every current, voltage, size, fuse and hour
  skiffloom packet PLAN     the pages for the garage, as PDF
  skiffloom sheet PLAN      one part of the packet by itself, as PDF or SVG
  skiffloom boxes PLAN      each box: glands, holes, order of drilling; templates at true scale
  skiffloom routes PLAN     how every run lies, its slack, what to cut
  skiffloom cuts PLAN       what to cut from which length, and the flags for the ends
  skiffloom parts PLAN      what to take from the shelf and what to buy
  skiffloom form PLAN       the hull as measured, what does not fit, what to measure next
  skiffloom marks PLAN      where to drill: tape readings, checks, and what your readings say
  skiffloom float PLAN      draft, trim, freeboard, levers; each hole over the water
  skiffloom work PLAN       what to do next, the order of all that is left, what was built
  skiffloom changes OLD NEW what a change of plan does, in words and figures
  skiffloom prove PLAN      what your meter says: test sheet, what is wrong, what to measure next
  skiffloom netlist PLAN    the circuit as SPICE text
  skiffloom new             asks a few questions and writes a plan to start from
  skiffloom apply PLAN N    makes the change that finding N proposes, and keeps your comments
  skiffloom schema          the JSON Schema of a plan
  skiffloom --version       which one this is

PLAN is a YAML file (docs/plan-format.md; examples/ has some), or - for standard input.
skiffloom COMMAND --help tells more. Figures are planning aids: local rules, makers' instructions
and licensed practice come first.`;

/** As the package has it, which lies two folders up, bundled or not. */
function version(): string {
  const about: { readonly version: string } = JSON.parse(
    readFileSync(new URL("../../package.json", import.meta.url), "utf8"),
  );
  return about.version;
}

/** On a terminal to its width, else as it is written. */
function printHelp(text: string): void {
  print(process.stdout.isTTY ? helpLines(text, terminal().width) : [text]);
}

function noCommand(name: string): string {
  const words = harmless(name);
  if (/\.(ya?ml|json)$/i.test(name))
    return `say first what to do with ${words}: skiffloom check ${words}, for one; skiffloom --help lists the rest`;
  const meant = meantOf(name, [...Object.keys(commands), "--help", "--version"]);
  const which = meant === undefined ? "skiffloom --help lists them" : `did you mean ${meant}?`;
  return `there is no command ${words}; ${which}`;
}

async function command(words: readonly string[]): Promise<number> {
  const [name, ...rest] = words;
  const asksHelp = name === "help" || name === "--help" || name === "-h";
  const [about] = rest;
  if (asksHelp && about !== undefined) return await command([about, "--help"]);
  if (name === undefined || asksHelp) {
    printHelp(help);
    return name === undefined ? exit.unusable : exit.fine;
  }
  if (name === "--version" || name === "-v" || name === "-V") {
    process.stdout.write(`skiffloom ${version()}\n`);
    return exit.fine;
  }
  const load = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (!load) throw new InputProblem([noCommand(name)]);
  const loaded = await load();
  if (rest.includes("--help") || rest.includes("-h")) {
    printHelp(loaded.help);
    return exit.fine;
  }
  return await loaded.run(rest);
}

/** Runs one command as typed after `skiffloom`; what can't be used is told on standard error. The exit status. */
export async function commandLine(words: readonly string[]): Promise<number> {
  try {
    return await command(words);
  } catch (error) {
    if (!(error instanceof InputProblem)) throw error;
    for (const line of error.lines) process.stderr.write(`${harmless(line)}\n`);
    return exit.unusable;
  }
}
