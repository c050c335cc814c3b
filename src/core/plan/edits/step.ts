import type { Path } from "../source/problem.js";
import type { EditProblem } from "./problem.js";

/** A small change at one place of the plan; a named edit is made of a few. Values are YAML on one line. */
export type Step =
  | { readonly do: "set"; readonly path: Path; readonly to: string }
  | { readonly do: "remove"; readonly path: Path }
  | { readonly do: "rename"; readonly path: Path; readonly to: string };

/** The steps a named edit is made of, or why it cannot be made. */
export type Steps = Step[] | Omit<EditProblem, "edit">;
