import { changesInEnglish } from "../../../words/change-words.js";
import { inLanguage } from "../../parts/in-language.js";

/** What is said of a change of plan, in the person's language. */
export const useChangeWords = inLanguage(
  changesInEnglish,
  async () => (await import("../../../words/spanish/change-words.js")).changesInSpanish,
);
