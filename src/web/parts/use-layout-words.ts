import { layoutInEnglish } from "../../words/layout/english.js";
import { inLanguage } from "./in-language.js";

/** What is said of boxes, parts and cuts, in the person's language. */
export const useLayoutWords = inLanguage(
  layoutInEnglish,
  async () => (await import("../../words/spanish/layout.js")).layoutInSpanish,
);
