import { assumedInEnglish } from "../assumptions.js";
import { cautionsInEnglish } from "../cautions.js";
import { recordInEnglish } from "../difference-words.js";
import { drawnInEnglish } from "../drawn/english.js";
import { editSentence } from "../edits.js";
import { hullInEnglish } from "../hull/english.js";
import { labelsInEnglish } from "../labels.js";
import { layoutInEnglish } from "../layout/english.js";
import { english as proof } from "../proof/english.js";
import { findingsInEnglish } from "../rules.js";
import { sourcesInEnglish } from "../source-words.js";
import { english as steps } from "../steps/english.js";
import { tablesInEnglish } from "../tables/english.js";
import { electrics } from "./en/electrics.js";
import { findings } from "./en/findings.js";
import { frame } from "./en/frame.js";
import { hull } from "./en/hull.js";
import { layout } from "./en/layout.js";
import { work } from "./en/work.js";
import type { PaperWords } from "./paper-words.js";

/** Paper in English. */
export const paperInEnglish: PaperWords = {
  language: "en",
  frame,
  electrics,
  findings,
  hull,
  layout,
  work,
  tables: tablesInEnglish,
  of: {
    assumed: assumedInEnglish,
    cautions: cautionsInEnglish,
    drawn: drawnInEnglish,
    edit: editSentence,
    findings: findingsInEnglish,
    hull: hullInEnglish,
    labels: labelsInEnglish,
    layout: layoutInEnglish,
    proof,
    record: recordInEnglish,
    sources: sourcesInEnglish,
    steps,
  },
};
