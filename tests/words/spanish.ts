import { expect } from "vitest";

/** Small words of English that are none in Spanish, nor names or keys of a plan. */
const english =
  /(?<![\p{L}\p{N}])(the|of|and|or|is|are|was|were|be|been|has|have|had|which|that|this|these|there|than|then|with|without|from|for|to|at|by|on|it|its|they|not|but|what|where|when|here|while|should|must|may|can|cannot|your|you|usual|more|less|one|each|every|taken|given|expected|written)(?![\p{L}\p{N}])/giu;

/** English words left in a Spanish sentence; what the plan's format calls something, `in ticks`, is left out. */
export function englishLeftIn(sentence: string): readonly string[] {
  return sentence.replace(/`[^`]*`/g, "").match(english) ?? [];
}

/** Keys of an object as what they are. */
export function keysOf<K extends string>(of: Readonly<Record<K, unknown>>): K[] {
  return Object.keys(of) as K[];
}

const figuresIn = (sentence: string) => (sentence.match(/\d+(\.\d+)?/g) ?? []).toSorted();

/** No outside check of a translation is possible: that both languages tell the same figures is what a machine can see. */
export function sameFigures(inSpanish: string, inEnglish: string): void {
  expect(figuresIn(inSpanish), inSpanish).toEqual(figuresIn(inEnglish));
}

/** Two words in a row, as often as there are: `no room` of `no room behind`. */
export const pairsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}'’ \u00a0-]+/u)
    .flatMap((part) => {
      const words = part.split(/[ \u00a0]+/).filter((word) => /^\p{L}[\p{L}'’-]+$/u.test(word));
      return words.slice(1).map((word, index) => `${words[index]} ${word}`);
    });
