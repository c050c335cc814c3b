import { parseArgs } from "node:util";
import { composed } from "../core/quantity/look-alike.js";
import { nearestOf } from "../core/quantity/nearest.js";
import type { TerminalWords } from "../words/terminal/english.js";
import { InputProblem } from "./problem.js";
import { harmless } from "./terminal.js";

/** What a command takes. `plan` is its one file; flags are by name. */
export interface Takes {
  readonly plan?: boolean;
  readonly rest?: Rest;
  /** `name`: of something in the plan, brought to the letters it has there. */
  readonly flags: Readonly<Record<string, "value" | "name" | "switch">>;
}

interface Rest {
  readonly least: number;
  readonly most: number;
  /** What they are called in the words. */
  readonly named: "needsRemedy" | "needsTwoPlans";
}
const noRest: Rest = { least: 0, most: 0, named: "needsRemedy" };

export interface Given {
  readonly plan: string;
  readonly rest: readonly string[];
  readonly values: Readonly<Record<string, string | undefined>>;
  readonly switches: ReadonlySet<string>;
}

/**
 * Reads a command's words against what it takes.
 * @throws InputProblem naming the word that does not fit.
 */
export function readArguments(command: string, words: readonly string[], takes: Takes): Given {
  const options = Object.fromEntries(
    Object.entries(takes.flags).map(([name, kind]) => [
      name,
      { type: kind === "switch" ? ("boolean" as const) : ("string" as const) },
    ]),
  );
  const parsed = parseArgs({
    args: [...words],
    options,
    allowPositionals: true,
    strict: false,
    tokens: true,
  });
  for (const token of parsed.tokens ?? []) {
    if (token.kind !== "option") continue;
    const { name, rawName, value } = token;
    const kind = Object.hasOwn(takes.flags, name) ? takes.flags[name] : undefined;
    if (kind === undefined)
      throw wrong(
        command,
        (say) => say.common.words.noOption(harmless(rawName)) + meant(name, takes, say.common.words),
      );
    if (kind !== "switch" && value === undefined)
      throw wrong(command, ({ common: { words: say } }) => say.needsValue(name));
    if (kind === "switch" && value !== undefined)
      throw wrong(command, ({ common: { words: say } }) => say.takesNoValue(name));
  }
  const positionals = [...parsed.positionals];
  const plan = takes.plan === true ? positionals.shift() : "";
  if (plan === undefined) throw wrong(command, ({ common: { words: say } }) => say.needsPlan(command));
  const { least, most, named } = takes.rest ?? noRest;
  if (positionals.length < least)
    throw wrong(command, ({ common: { words: say } }) => say.needs(command, say[named]));
  const tooMany = positionals[most];
  if (tooMany !== undefined)
    throw wrong(command, ({ common: { words: say } }) => say.tooMany(command, tooMany));
  const values: Record<string, string | undefined> = {};
  const switches = new Set<string>();
  for (const [name, value] of Object.entries(parsed.values)) {
    if (typeof value === "string") values[name] = takes.flags[name] === "name" ? composed(value) : value;
    else if (value === true) switches.add(name);
  }
  return { plan, rest: positionals, values, switches };
}

/** What is wrong with a command's words, and where to read how it is done. */
const wrong = (command: string, what: (say: TerminalWords) => string): InputProblem =>
  new InputProblem((say) => [what(say), say.common.words.see(command)]);

/** The option that was probably meant, or all there are. */
function meant(name: string, { flags }: Takes, say: TerminalWords["common"]["words"]): string {
  const names = Object.keys(flags);
  const asked = sameMeaning.get(name);
  const nearest = asked !== undefined && names.includes(asked) ? asked : nearestOf(name, names);
  if (nearest !== undefined) return say.meantOption(nearest);
  const all = names.map((each) => `--${each}`).join(", ");
  return names.length === 0 ? say.takesNone : say.thereAre(all, names.length === 1);
}

/** What other commands of the world call them. */
const sameMeaning: ReadonlyMap<string, string> = new Map([
  ["out", "to"],
  ["output", "to"],
  ["o", "to"],
  ["f", "force"],
  ["j", "json"],
]);
