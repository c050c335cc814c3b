import { hullInEnglish } from "../../words/hull/english.js";
import { inLanguage } from "./in-language.js";

/** What is said of the hull, its survey and its marks, in the person's language. */
export const useHullWords = inLanguage(
  hullInEnglish,
  async () => (await import("../../words/spanish/hull.js")).hullInSpanish,
);
