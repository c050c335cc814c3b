import { sourcesInEnglish } from "../../words/source-words.js";
import { inLanguage } from "./in-language.js";

/** How sources are told, in the person's language. */
export const useSourceWords = inLanguage(
  sourcesInEnglish,
  async () => (await import("../../words/spanish/sources.js")).sourcesInSpanish,
);
