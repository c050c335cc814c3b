import { planJsonSchema } from "../../core/plan/schema/publish.js";
import { readArguments } from "../arguments.js";
import { printJson } from "../print.js";
import { exit } from "../problem.js";

export const help = `skiffloom schema

Prints the JSON Schema of the plan format, for editors that complete and check as one types.`;

export function run(words: readonly string[]): number {
  readArguments("schema", words, { flags: {} });
  printJson(planJsonSchema());
  return exit.fine;
}
