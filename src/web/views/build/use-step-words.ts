import { english } from "../../../words/steps/english.js";
import { spanish } from "../../../words/steps/spanish.js";
import type { StepWords } from "../../../words/steps/step-words.js";
import { usePreferences } from "../../app/context.js";

const languages: Readonly<Record<ReturnType<typeof usePreferences>[0]["language"], StepWords>> = {
  en: english,
  es: spanish,
};

/** What is said of the steps, in the person's language. */
export function useStepWords(): StepWords {
  const [{ language }] = usePreferences();
  return languages[language];
}
