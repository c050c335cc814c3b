import { type PaperLanguage, paperLanguages } from "../words/paper/paper-words.js";
import { InputProblem } from "./problem.js";
import { harmless } from "./terminal.js";

/** The language of `--language` that pages are written in; English where it is left out. */
export function languageAsked(asked: string | undefined): PaperLanguage {
  if (asked === undefined) return "en";
  const found = paperLanguages.find((one) => one === asked);
  if (found !== undefined) return found;
  throw new InputProblem([`--language takes ${paperLanguages.join(" or ")}, not ${harmless(asked)}`]);
}
