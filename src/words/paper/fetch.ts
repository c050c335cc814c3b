import { paperInEnglish } from "./english.js";
import type { PaperLanguage } from "./languages.js";
import type { PaperWords } from "./paper-words.js";

/** Words for paper; the Spanish ones are fetched by whoever asks for them. */
export const paperWords = async (language: PaperLanguage): Promise<PaperWords> =>
  language === "en" ? paperInEnglish : (await import("../spanish/paper.js")).paperInSpanish;
