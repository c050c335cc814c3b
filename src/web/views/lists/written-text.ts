import { keyText } from "../../../core/plan/edits/value.js";
import { entryOf, type Written } from "../../../core/plan/source/written.js";

/** The value a key leads to; `leads / size` reaches inside. */
export function valueAt(node: Written | undefined, key: string): Written | undefined {
  let here = node;
  for (const step of key.split(" / ")) {
    if (here?.kind !== "section") return undefined;
    here = entryOf(here, step)?.value;
  }
  return here;
}

/** A value on one line, as it may stand in a plan: `{device: breaker, rating: 5 A}`. */
export function flowText(node: Written): string {
  if (node.kind === "scalar") return node.text === "" ? '""' : keyText(node.text);
  if (node.kind === "list") return `[${node.items.map(flowText).join(", ")}]`;
  return `{${node.entries.map(({ key, value }) => `${keyText(key)}: ${flowText(value)}`).join(", ")}}`;
}

/** A value as one types it into a cell: plain where it is one value, with commas where it is a list of them. */
export function cellText(node: Written | undefined): string {
  if (node === undefined) return "";
  if (node.kind === "scalar") return node.text;
  if (node.kind === "section") return flowText(node);
  const texts = node.items.flatMap((item) => (item.kind === "scalar" ? [item.text] : []));
  const plain = texts.length === node.items.length && !texts.some((text) => /[,[\]{}]/.test(text));
  return plain ? texts.join(", ") : flowText(node);
}
