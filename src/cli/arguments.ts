import { parseArgs } from "node:util";
import { nearestOf } from "../core/quantity/nearest.js";
import { InputProblem } from "./problem.js";
import { harmless } from "./terminal.js";

/** What a command takes. `plan` is its one file; flags are by name. */
export interface Takes {
  readonly plan?: boolean;
  readonly rest?: { readonly least: number; readonly most: number; readonly named: string };
  readonly flags: Readonly<Record<string, "value" | "switch">>;
}

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
      { type: kind === "value" ? ("string" as const) : ("boolean" as const) },
    ]),
  );
  const see = `skiffloom ${command} --help tells how`;
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
      throw new InputProblem([`there is no option ${harmless(rawName)}${meant(name, takes)}`, see]);
    if (kind === "value" && value === undefined)
      throw new InputProblem([`--${name} needs a value after it`, see]);
    if (kind === "switch" && value !== undefined) throw new InputProblem([`--${name} takes no value`, see]);
  }
  const positionals = [...parsed.positionals];
  const plan = takes.plan === true ? positionals.shift() : "";
  if (plan === undefined) throw new InputProblem([`${command} needs a plan file`, see]);
  const { least, most, named } = takes.rest ?? { least: 0, most: 0, named: "" };
  if (positionals.length < least) throw new InputProblem([`${command} needs ${named}`, see]);
  if (positionals.length > most)
    throw new InputProblem([`${command} does not know what to do with "${positionals[most]}"`, see]);
  const values: Record<string, string | undefined> = {};
  const switches = new Set<string>();
  for (const [name, value] of Object.entries(parsed.values)) {
    if (typeof value === "string") values[name] = value;
    else if (value === true) switches.add(name);
  }
  return { plan, rest: positionals, values, switches };
}

/** The option that was probably meant, or all there are. */
function meant(name: string, { flags }: Takes): string {
  const names = Object.keys(flags);
  const asked = sameMeaning.get(name);
  const nearest = asked !== undefined && names.includes(asked) ? asked : nearestOf(name, names);
  if (nearest !== undefined) return `; did you mean --${nearest}?`;
  const all = names.map((each) => `--${each}`).join(", ");
  return names.length === 0 ? "; it takes none" : `; there ${names.length === 1 ? "is only" : "are"} ${all}`;
}

/** What other commands of the world call them. */
const sameMeaning: ReadonlyMap<string, string> = new Map([
  ["out", "to"],
  ["output", "to"],
  ["o", "to"],
  ["f", "force"],
  ["j", "json"],
]);
