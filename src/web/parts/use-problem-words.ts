import { problemsInEnglish } from "../../words/problems/english.js";
import { inLanguage } from "./in-language.js";

/** How problems of the plan and of edits are told, in the person's language. */
export const useProblemWords = inLanguage(
  problemsInEnglish,
  async () => (await import("../../words/spanish/problems.js")).problemsInSpanish,
);
