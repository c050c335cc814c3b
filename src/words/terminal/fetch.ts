import type { ChangeLanguage } from "../change-language.js";
import { changesInEnglish } from "../change-words.js";
import type { PaperLanguage } from "../paper/languages.js";
import { type TerminalWords, terminalInEnglish } from "./english.js";

/** What the command line says; Spanish is fetched only where it is asked for. */
export const terminalWords = async (language: PaperLanguage): Promise<TerminalWords> =>
  language === "en" ? terminalInEnglish : (await import("./spanish.js")).terminalInSpanish;

/** What a change of plan does, in words. */
export const changeLanguage = async (language: PaperLanguage): Promise<ChangeLanguage> =>
  language === "en" ? changesInEnglish : (await import("../spanish/change-words.js")).changesInSpanish;
