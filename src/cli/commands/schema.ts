import { planJsonSchema } from "../../core/plan/schema/publish.js";
import { readArguments } from "../arguments.js";
import { printJson } from "../print.js";
import { exit } from "../problem.js";

export function run(words: readonly string[]): number {
  readArguments("schema", words, { flags: {} });
  printJson(planJsonSchema());
  return exit.fine;
}
