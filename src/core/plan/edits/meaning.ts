import type { Path } from "../source/problem.js";
import type { Written } from "../source/written.js";
import type { Step } from "./step.js";

/** What a plan says, without how it is written; order of keys included. */
export type Meaning = string | Meaning[] | Map<string, Meaning>;

export function meaningOf(node: Written): Meaning {
  if (node.kind === "scalar") return node.text;
  if (node.kind === "list") return node.items.map(meaningOf);
  return new Map(node.entries.map(({ key, value }) => [key, meaningOf(value)]));
}

/** What the plan should say after the steps; `before` is used up. `value` gives the meaning of a value's text. @returns undefined where a step leads nowhere. */
export function changedMeaning(
  before: Meaning,
  steps: readonly Step[],
  value: (text: string) => Meaning,
): Meaning | undefined {
  const whole: Meaning[] = [before];
  for (const step of steps) if (!change(whole, [0, ...step.path], step, value)) return undefined;
  return whole[0];
}

/** Makes one step in place. Nothing written yet (`spare:`) becomes a section of one key. @returns whether the step led anywhere. */
function change(top: Meaning[], path: Path, step: Step, value: (text: string) => Meaning): boolean {
  let parent: Meaning[] | Map<string, Meaning> = top;
  for (const key of path.slice(0, -1)) {
    const inner: Meaning | undefined = childOf(parent, key);
    const section: Meaning | undefined = inner === "" ? new Map<string, Meaning>() : inner;
    if (section === undefined || typeof section === "string") return false;
    if (inner === "") put(parent, key, section);
    parent = section;
  }
  const last = path.at(-1);
  if (last === undefined) return false;
  if (Array.isArray(parent)) return changeItem(parent, last, step, value);
  if (typeof last === "number") return false;
  if (step.do === "set") parent.set(last, value(step.to));
  else if (!parent.has(last)) return false;
  else if (step.do === "remove") parent.delete(last);
  else {
    const entries = [...parent];
    parent.clear();
    for (const [key, each] of entries) parent.set(key === last ? step.to : key, each);
  }
  return true;
}

/** One past the last puts a new item at the end. */
function changeItem(
  list: Meaning[],
  at: string | number,
  step: Step,
  value: (text: string) => Meaning,
): boolean {
  if (typeof at !== "number" || at > list.length || step.do === "rename") return false;
  if (step.do === "set") list[at] = value(step.to);
  else if (at === list.length) return false;
  else list.splice(at, 1);
  return true;
}

function childOf(parent: Meaning[] | Map<string, Meaning>, key: string | number): Meaning | undefined {
  if (Array.isArray(parent)) return typeof key === "number" ? parent[key] : undefined;
  return typeof key === "string" ? parent.get(key) : undefined;
}

function put(parent: Meaning[] | Map<string, Meaning>, key: string | number, meaning: Meaning): void {
  if (Array.isArray(parent) && typeof key === "number") parent[key] = meaning;
  else if (!Array.isArray(parent) && typeof key === "string") parent.set(key, meaning);
}

export function sameMeaning(a: Meaning, b: Meaning): boolean {
  if (typeof a === "string" || typeof b === "string") return a === b;
  if (Array.isArray(a) || Array.isArray(b))
    return (
      Array.isArray(a) &&
      Array.isArray(b) &&
      a.length === b.length &&
      a.every((each, index) => sameMeaning(each, b[index] ?? ""))
    );
  if (a.size !== b.size) return false;
  const others = [...b];
  return [...a].every(([key, value], index) => {
    const [otherKey, other] = others[index] ?? ["", ""];
    return key === otherKey && sameMeaning(value, other);
  });
}
