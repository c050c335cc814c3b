import { keysInEnglish } from "../../words/key-words.js";
import { inLanguage } from "./in-language.js";

/** Keys of a thing, what they mean and the words they take, in the person's language. */
export const useKeyWords = inLanguage(
  keysInEnglish,
  async () => (await import("../../words/spanish/keys.js")).keysInSpanish,
);
