import { findingsInEnglish } from "../../words/rules.js";
import { inLanguage } from "./in-language.js";

/** What is said of findings, in the person's language. */
export const useFindingWords = inLanguage(
  findingsInEnglish,
  async () => (await import("../../words/spanish/findings.js")).findingsInSpanish,
);
