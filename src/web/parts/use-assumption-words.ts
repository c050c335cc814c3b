import { assumptionWords } from "../../words/assumptions.js";
import { inLanguage } from "./in-language.js";

/** Why a value was taken that the plan leaves out, in the person's language. */
export const useAssumptionWords = inLanguage(
  assumptionWords,
  async () => (await import("../../words/spanish/assumptions.js")).assumptionWords,
);
