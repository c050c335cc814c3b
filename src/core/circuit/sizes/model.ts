import { type Box, type Paths, pathsOf } from "./paths.js";
import type { Program } from "./program.js";
import { type Touching, touchingOf } from "./repair.js";

/** A program with what its methods look things up in. */
export interface Model {
  readonly program: Program;
  readonly paths: Paths;
  readonly touching: Touching;
}

export function modelOf(program: Program): Model {
  return { program, paths: pathsOf(program), touching: touchingOf(program) };
}

/** Every option of every group. */
export function wholeBox({ options }: Program): Box {
  return { low: options.map(() => 0), high: options.map(({ cost }) => cost.length - 1) };
}
