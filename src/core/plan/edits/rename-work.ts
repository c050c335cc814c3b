import type { Path } from "../source/problem.js";
import type { Written } from "../source/written.js";
import type { Locator } from "./locate.js";
import type { Step } from "./step.js";
import { keyText } from "./value.js";

/** Keys of records under which a name stands. */
const named = new Set(["step", "for", "run", "at", "against", "on", "hole", "box", "device"]);

/**
 * Steps that carry a new name into the record of work: steps done and noted, readings, what was built, finished projects too. A record is
 * about the thing, and the thing is still the same.
 * @param renamed The text with the new name in it, wherever a part of it between slashes is the old one.
 */
export function workRenameSteps(locator: Locator, renamed: (text: string) => string): Step[] {
  return ["work done", "work notes", "readings", "mends", "as built", "projects"].flatMap((section) =>
    [...texts(locator.node([section]), [section])].flatMap(({ path, text }): Step[] => {
      const now = text
        .split(" / ")
        .map((part, index, parts) => (index === 0 && parts.length > 1 ? part : renamedPart(part, renamed)))
        .join(" / ");
      const whole = text.includes(" / ") ? renamedFirst(now, path, renamed) : now;
      return whole === text ? [] : [{ do: "set", path, to: keyText(whole) }];
    }),
  );
}

const renamedPart = (part: string, renamed: (text: string) => string): string => {
  // a point of the circuit has its pole behind its name: `helm +`
  const [, name = part, pole = ""] = /^(.*?)( [+−-])?$/.exec(part) ?? [];
  return `${renamed(name)}${pole}`;
};

/** The first part of a step is what is done (`draw`); of anything else it is a name. */
function renamedFirst(text: string, path: Path, renamed: (text: string) => string): string {
  const key = path.findLast((step) => typeof step === "string");
  if (key === "step") return text;
  const [first = "", ...rest] = text.split(" / ");
  return [renamedPart(first, renamed), ...rest].join(" / ");
}

function* texts(node: Written | undefined, path: Path): Generator<{ path: Path; text: string }> {
  if (node?.kind === "scalar") {
    const key = path.findLast((step) => typeof step === "string");
    if (path.length > 1 && typeof key === "string" && named.has(key)) yield { path, text: node.text };
  }
  if (node?.kind === "list")
    for (const [index, item] of node.items.entries()) yield* texts(item, [...path, index]);
  if (node?.kind === "section")
    for (const { key, value } of node.entries) yield* texts(value, [...path, key]);
}
