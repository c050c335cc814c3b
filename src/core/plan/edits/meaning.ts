import { isMap, isScalar, parseDocument } from "yaml";
import { yamlOptions } from "../source/compose.js";
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

/** What the plan should say after the steps. `value` gives the meaning of a value's text. @returns undefined where a step leads nowhere. */
export function changedMeaning(
  before: Meaning,
  steps: readonly Step[],
  value: (text: string) => Meaning,
): Meaning | undefined {
  let meaning: Meaning | undefined = before;
  for (const step of steps)
    meaning = meaning === undefined ? undefined : changed(meaning, step.path, step, value);
  return meaning;
}

function changed(
  node: Meaning,
  path: Path,
  step: Step,
  value: (text: string) => Meaning,
): Meaning | undefined {
  const [first, ...rest] = path;
  if (first === undefined) return undefined;
  if (Array.isArray(node)) {
    // One past the last puts a new item at the end.
    if (first === node.length && rest.length === 0 && step.do === "set") return [...node, value(step.to)];
    const item = typeof first === "number" ? node[first] : undefined;
    if (item === undefined) return undefined;
    const put =
      rest.length > 0 ? changed(item, rest, step, value) : step.do === "set" ? value(step.to) : undefined;
    return put === undefined ? undefined : node.map((each, index) => (index === first ? put : each));
  }
  const section = node === "" ? new Map<string, Meaning>() : node;
  if (typeof section === "string" || typeof first === "number") return undefined;
  if (rest.length > 0) {
    const inner = section.get(first);
    const put = inner === undefined ? undefined : changed(inner, rest, step, value);
    return put === undefined ? undefined : new Map([...section, [first, put]]);
  }
  if (step.do === "set") return new Map([...section, [first, value(step.to)]]);
  if (!section.has(first)) return undefined;
  if (step.do === "remove") return new Map([...section].filter(([key]) => key !== first));
  return new Map([...section].map(([key, each]) => [key === first ? step.to : key, each]));
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

/** The same steps by the YAML library, for writing that the splicer does not know; it may lay out the file anew. */
export function rewriteSteps(text: string, steps: readonly Step[]): string | undefined {
  const document = parseDocument(text, yamlOptions);
  for (const { path, ...step } of steps) {
    const last = path.at(-1);
    const parent = path.length > 1 ? document.getIn(path.slice(0, -1), true) : document.contents;
    if (last === undefined) return undefined;
    if (step.do === "set") document.setIn(path, parseDocument(step.to, yamlOptions).contents);
    else if (step.do === "remove") document.deleteIn(path);
    else {
      const pair = isMap(parent)
        ? parent.items.find(({ key }) => isScalar(key) && key.source === last)
        : undefined;
      if (pair === undefined) return undefined;
      pair.key = document.createNode(step.to);
    }
  }
  return document.toString({ lineWidth: 0 });
}
