import { writeWhole } from "./files.js";
import type { LoadedPlan } from "./load.js";
import { InputProblem } from "./problem.js";
import { harmless } from "./terminal.js";

const byteOrderMark = "\uFEFF";

/**
 * Writes a changed plan over the file it was read from, or where `--to` says. A byte order mark at its start stays.
 * @returns where, fit to print.
 * @throws InputProblem if it came from standard input, or the file was changed by something else since it was read.
 */
export function writePlan(
  { bytes }: LoadedPlan,
  text: string,
  path: string,
  { to, force }: { readonly to?: string | undefined; readonly force?: boolean },
): string {
  if ((to ?? path) === "-") throw new InputProblem(({ common }) => common.files.sayWhere);
  const marked = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  writeWhole(to ?? path, marked ? byteOrderMark + text : text, to === undefined ? bytes : force === true);
  return harmless(to ?? path);
}
