import { readMoment } from "../core/quantity/moments.js";
import { InputProblem } from "./problem.js";
import { harmless } from "./terminal.js";

/** Minutes since 1970 on the owner's own clock: of `--now`, else what a wall clock here shows. */
export function momentAsked(text: string | undefined): number {
  if (text === undefined) {
    const now = new Date();
    return Math.floor(now.getTime() / 60_000) - now.getTimezoneOffset();
  }
  const read = readMoment(text);
  if (!read.ok) throw new InputProblem(({ common }) => common.words.takesMoment(harmless(text)));
  return read.value.atMin;
}
