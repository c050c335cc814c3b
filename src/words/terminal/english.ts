import type { PaperLanguage } from "../paper/languages.js";
import { problemsInEnglish } from "../problems/english.js";
import type { ExpectedWords, ProblemTeller } from "../problems/problem-words.js";
import { expectedInEnglish } from "../read-expected.js";
import type { Said } from "../said.js";
import { type TableWords, tablesInEnglish } from "../tables/english.js";
import { common } from "./en/common.js";
import { electrics } from "./en/electrics.js";
import { help } from "./en/help.js";
import { hull } from "./en/hull.js";
import { layout } from "./en/layout.js";
import { work } from "./en/work.js";

const words = { common, electrics, help, hull, layout, work };

/** All that the command line says itself, in one language; what it tells of the plan comes from the words for paper. One that leaves something out does not compile. */
export interface TerminalWords extends Said<typeof words> {
  readonly language: PaperLanguage;
  readonly problems: ProblemTeller;
  /** Kinds of quantity, with their article. */
  readonly kinds: ExpectedWords["kinds"];
  /** Headings of tables for a spreadsheet. */
  readonly tables: TableWords;
}

export const terminalInEnglish: TerminalWords = {
  language: "en",
  ...words,
  problems: problemsInEnglish,
  kinds: expectedInEnglish.kinds,
  tables: tablesInEnglish,
};
