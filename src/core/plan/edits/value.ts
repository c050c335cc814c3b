import { theFullYaml } from "../source/full.js";
import { readQuickValue } from "../source/quick.js";

const plain = /^(?:[^\s\-?:,[\]{}#&*!|>'"%@`]|-(?=[^\s,[\]{}#:]))[^,[\]{}#:\n]*(?::(?=\d)[^,[\]{}#:\n]*)*$/;
const maxLength = 20_000;

/**
 * A value as the owner would write it, made safe to stand anywhere in a plan: `5 A` stays, `{rating: 5 A}` stays,
 * text with signs that YAML would take for its own is put in quotes.
 * @returns undefined where it is no value on one line.
 */
export function valueText(given: string | number | boolean): string | undefined {
  if (typeof given !== "string") return Number.isNaN(given) ? undefined : String(given);
  const text = given.trim();
  if (text.length > maxLength || /[\n\r]/.test(text)) return undefined;
  if (/^[[{"']/.test(text))
    return soundFlow(text) ? text : /^[[{]/.test(text) ? undefined : JSON.stringify(text);
  return keyText(text);
}

/** A name as a key or a plain value. */
export function keyText(text: string): string {
  return plain.test(text) && !/\s$/.test(text) ? text : JSON.stringify(text);
}

function soundFlow(text: string): boolean {
  const quick = readQuickValue(text);
  return quick === undefined ? theFullYaml().isValue(text) : true;
}
