import { isScalar, parseDocument } from "yaml";
import { yamlOptions } from "../source/compose.js";

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
  const document = parseDocument(text, yamlOptions);
  const { contents } = document;
  if (document.errors.length > 0 || document.warnings.length > 0 || contents === null) return false;
  // nothing may follow the value, not even a comment: it would swallow what stands behind it
  return contents.range[1] === text.length && (!isScalar(contents) || typeof contents.value === "string");
}
