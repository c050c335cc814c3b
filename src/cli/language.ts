import { paperWords } from "../words/paper/fetch.js";
import { type PaperLanguage, paperLanguages } from "../words/paper/languages.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import type { TerminalWords } from "../words/terminal/english.js";
import { InputProblem } from "./problem.js";
import { harmless, type Terminal, terminal } from "./terminal.js";

/**
 * The language the system asks for: of LC_ALL, LC_MESSAGES and LANG the first that is set counts, as POSIX has it (IEEE Std 1003.1, Base
 * Definitions 8.2). `es`, `es_ES.UTF-8`, `es@valencia`; any other is English.
 */
export function languageOf({
  LC_ALL,
  LC_MESSAGES,
  LANG,
}: Readonly<Record<string, string | undefined>>): PaperLanguage {
  const locale = [LC_ALL, LC_MESSAGES, LANG].find((one) => one !== undefined && one !== "") ?? "";
  return /^es([_.@-]|$)/i.test(locale) ? "es" : "en";
}

export interface Asked {
  readonly language: PaperLanguage | undefined;
  /** The words without the option. */
  readonly rest: readonly string[];
}

/**
 * `--language es`, which every command takes, out of its words.
 * @throws InputProblem if there is no such language.
 */
export function languageAsked(words: readonly string[]): Asked {
  const end = words.indexOf("--");
  const last = words.findLastIndex((word, at) => (end < 0 || at < end) && /^--language(=|$)/.test(word));
  const word = words[last];
  if (word === undefined) return { language: undefined, rest: words };
  const inside = word.includes("=");
  const asked = inside ? word.slice("--language=".length) : words[last + 1];
  if (asked === undefined) throw new InputProblem(({ common }) => common.words.needsValue("language"));
  const language = paperLanguages.find((one) => one === asked.toLowerCase());
  if (language === undefined)
    throw new InputProblem(({ common }) => common.words.takes("language", paperLanguages, harmless(asked)));
  const before = languageAsked(words.slice(0, last));
  return { language, rest: [...before.rest, ...words.slice(last + (inside ? 1 : 2))] };
}

/** What is printed to, and in which words. */
export interface Screen extends Terminal {
  readonly told: TerminalWords;
  readonly paper: PaperWords;
}

export const screenIn = async (told: TerminalWords): Promise<Screen> => ({
  ...terminal(),
  told,
  paper: await paperWords(told.language),
});
