import type { Meaning } from "../plan/edits/meaning.js";

/** Longer values are cut: a comparison shows that they differ, not all they say. */
const mostLetters = 160;

/** The entries of a section; none where it is no section. */
export function entriesOf(meaning: Meaning | undefined): Map<string, Meaning> {
  return meaning instanceof Map ? meaning : new Map();
}

/** What a value says, on one line, as it would stand in braces: `{size: 22 AWG, length: 8 in}`. */
export function meaningText(meaning: Meaning): string {
  if (typeof meaning === "string") return meaning;
  if (Array.isArray(meaning)) return `[${meaning.map(meaningText).join(", ")}]`;
  return `{${[...meaning].map(([key, value]) => `${key}: ${meaningText(value)}`).join(", ")}}`;
}

/** The same, cut where it is long. */
export function shortText(meaning: Meaning): string {
  const text = meaningText(meaning);
  return text.length <= mostLetters ? text : `${text.slice(0, mostLetters - 1)}…`;
}
