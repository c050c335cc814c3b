import { problemsInSpanish } from "../spanish/problems.js";
import { expectedInSpanish } from "../spanish/read-expected.js";
import { tablesInSpanish } from "../tables/spanish.js";
import type { TerminalWords } from "./english.js";
import { common } from "./es/common.js";
import { electrics } from "./es/electrics.js";
import { help } from "./es/help.js";
import { hull } from "./es/hull.js";
import { layout } from "./es/layout.js";
import { work } from "./es/work.js";

export const terminalInSpanish: TerminalWords = {
  language: "es",
  common,
  electrics,
  help,
  hull,
  layout,
  work,
  problems: problemsInSpanish,
  kinds: expectedInSpanish.kinds,
  tables: tablesInSpanish,
};
