import type { Path } from "../source/problem.js";
import type { Edit } from "./edit.js";
import type { Locator } from "./locate.js";
import type { Step } from "./step.js";
import { stepsOf } from "./steps-of.js";

/**
 * How many edits, from one on, can be made in one go: each at a place of its own, none inside or around what another changes,
 * so that their order makes no difference. At least one.
 */
export function groupOf(locator: Locator, edits: readonly Edit[], from: number): number {
  const taken = new Set<string>();
  const around = new Set<string>();
  for (let at = from; at < edits.length; at += 1) {
    const edit = edits[at];
    const steps = edit === undefined ? undefined : stepsOf(locator, edit);
    if (!Array.isArray(steps)) return Math.max(at - from, 1);
    const paths = steps.map(placeOf);
    if (paths.some((path) => meets(path, taken, around))) return Math.max(at - from, 1);
    for (const path of paths) {
      taken.add(keyOf(path));
      for (let length = 1; length < path.length; length += 1) around.add(keyOf(path.slice(0, length)));
    }
  }
  return edits.length - from;
}

/** Items that come or go move those behind them: such a step takes its whole list. */
function placeOf(step: Step): Path {
  const last = step.path.at(-1);
  return typeof last === "number" ? step.path.slice(0, -1) : step.path;
}

function meets(path: Path, taken: ReadonlySet<string>, around: ReadonlySet<string>): boolean {
  if (around.has(keyOf(path))) return true;
  for (let length = 1; length <= path.length; length += 1)
    if (taken.has(keyOf(path.slice(0, length)))) return true;
  return false;
}

const keyOf = (path: Path): string => JSON.stringify(path);
