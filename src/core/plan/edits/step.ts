import type { Path } from "../source/problem.js";

/** A small change at one place of the plan; a named edit is made of a few. Values are YAML on one line. */
export type Step =
  | { readonly do: "set"; readonly path: Path; readonly to: string }
  | { readonly do: "remove"; readonly path: Path }
  | { readonly do: "rename"; readonly path: Path; readonly to: string };
