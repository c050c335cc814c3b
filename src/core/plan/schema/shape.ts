import type { Expected, Form, ReadProblem } from "../source/problem.js";
import { type ProblemLog, pathOf, shortened, type Trail } from "../source/problem-log.js";
import type { Written } from "../source/written.js";
import type { Definitions, JsonSchema } from "./json.js";

/**
 * One description of a part of the plan, from which both its reader and its JSON Schema come.
 * `read` gives undefined where the part cannot be used; the problem then stands in the log.
 */
export interface Shape<T> {
  readonly read: (spot: Spot) => T | undefined;
  readonly json: (definitions: Definitions) => JsonSchema;
  /** How the docs name what may be written: `length`, `dry | splash`. */
  readonly label: string;
}

/** A value in the file, with the way to it. */
export interface Spot {
  readonly node: Written;
  readonly trail: Trail | undefined;
  readonly log: ProblemLog;
}

export type Told = Omit<ReadProblem, "line" | "column" | "path">;

export function tell({ node, trail, log }: Spot, problem: Told): undefined {
  const found = node.kind === "scalar" ? shortened(node.text) : node.kind;
  log.tell(node.start, pathOf(trail), { found, ...problem });
  return undefined;
}

/** Tells that another form was expected; nothing at all after the colon is a problem of its own. */
export function wrongForm(spot: Spot, form: Form, expected: Expected = { kind: "form", form }): undefined {
  const nothing = spot.node.kind === "scalar" && spot.node.text === "";
  return tell(spot, { code: nothing ? "nothing written" : "wrong form", expected });
}

/** The text of a scalar, however YAML understood it (`5`, `true`, `12 V`), or undefined with the problem told. */
export function scalarText(spot: Spot, form: Form, expected?: Expected): string | undefined {
  if (spot.node.kind !== "scalar" || spot.node.text === "") return wrongForm(spot, form, expected);
  return spot.node.text;
}
