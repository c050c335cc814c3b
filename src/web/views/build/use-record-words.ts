import { recordInEnglish } from "../../../words/difference-words.js";
import { inLanguage } from "../../parts/in-language.js";

/** What is said of the record of the work, in the person's language. */
export const useRecordWords = inLanguage(
  recordInEnglish,
  async () => (await import("../../../words/spanish/difference-words.js")).recordInSpanish,
);
