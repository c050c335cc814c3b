import { readFileSync } from "node:fs";
import type { TerminalWords } from "../words/terminal/english.js";
import { terminalWords } from "../words/terminal/fetch.js";
import { helpLines } from "./help-lines.js";
import { languageAsked, languageOf } from "./language.js";
import { print } from "./print.js";
import { exit, InputProblem } from "./problem.js";
import { harmless, terminal } from "./terminal.js";
import { meantOf } from "./unknown.js";

interface Command {
  readonly run: (words: readonly string[], told: TerminalWords) => number | Promise<number>;
}

/** Each has its help in the words. */
type CommandName = Exclude<keyof TerminalWords["help"], "main">;

/** Each command is loaded when it is called, so that a quick one stays quick. */
const commands: Readonly<Record<CommandName, () => Promise<Command>>> = {
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

function noCommand(name: string): InputProblem {
  const asked = harmless(name);
  if (/\.(ya?ml|json)$/i.test(name)) return new InputProblem(({ common }) => common.words.sayFirst(asked));
  const meant = meantOf(name, [...Object.keys(commands), "--help", "--version"]);
  return new InputProblem(({ common }) => common.words.noCommand(asked, meant));
}

const isCommand = (name: string): name is CommandName => Object.hasOwn(commands, name);

async function command(words: readonly string[], told: TerminalWords): Promise<number> {
  const [name, ...rest] = words;
  const asksHelp = name === "help" || name === "--help" || name === "-h";
  const [about] = rest;
  if (asksHelp && about !== undefined) return await command([about, "--help"], told);
  if (name === undefined || asksHelp) {
    printHelp(told.help.main);
    return name === undefined ? exit.unusable : exit.fine;
  }
  if (name === "--version" || name === "-v" || name === "-V") {
    process.stdout.write(`skiffloom ${version()}\n`);
    return exit.fine;
  }
  if (!isCommand(name)) throw noCommand(name);
  if (rest.includes("--help") || rest.includes("-h")) {
    printHelp(told.help[name]);
    return exit.fine;
  }
  const { run } = await commands[name]();
  return await run(rest, told);
}

/** Runs one command as typed after `skiffloom`, in the language asked for; what can't be used is told on standard error. The exit status. */
export async function commandLine(words: readonly string[]): Promise<number> {
  let told = await terminalWords(languageOf(process.env));
  try {
    const { language, rest } = languageAsked(words);
    if (language !== undefined) told = await terminalWords(language);
    return await command(rest, told);
  } catch (error) {
    if (!(error instanceof InputProblem)) throw error;
    for (const line of [error.told(told)].flat()) process.stderr.write(`${harmless(line)}\n`);
    return exit.unusable;
  }
}
