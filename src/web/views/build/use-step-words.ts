import { english } from "../../../words/steps/english.js";
import type { StepWords } from "../../../words/steps/step-words.js";
import { inLanguage } from "../../parts/in-language.js";

const useToldSteps = inLanguage<StepWords>(
  english,
  async () => (await import("../../../words/steps/spanish.js")).spanish,
);

/** What is said of the steps, in the person's language. */
export const useStepWords = (): StepWords => useToldSteps().words;
