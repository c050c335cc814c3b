import { assumedInEnglish } from "../../words/assumptions.js";
import { inLanguage } from "./in-language.js";

/** Which value was taken where the plan leaves one out, and why, in the person's language. */
export const useAssumptionWords = inLanguage(
  assumedInEnglish,
  async () => (await import("../../words/spanish/assumed.js")).assumedInSpanish,
);
