import type { PaperWords } from "../paper/paper-words.js";
import { edits } from "../screen/es/edits.js";
import { spanish as steps } from "../steps/spanish.js";
import { tablesInSpanish } from "../tables/spanish.js";
import { assumedInSpanish } from "./assumed.js";
import { cautionsInSpanish } from "./cautions.js";
import { recordInSpanish } from "./difference-words.js";
import { drawnInSpanish } from "./drawn.js";
import { findingsInSpanish } from "./findings.js";
import { hullInSpanish } from "./hull.js";
import { labelsInSpanish } from "./labels.js";
import { layoutInSpanish } from "./layout.js";
import { electrics } from "./paper/electrics.js";
import { findings } from "./paper/findings.js";
import { frame } from "./paper/frame.js";
import { hull } from "./paper/hull.js";
import { layout } from "./paper/layout.js";
import { work } from "./paper/work.js";
import { proofInSpanish } from "./proof.js";
import { sourcesInSpanish } from "./sources.js";

/** Paper in Spanish. */
export const paperInSpanish: PaperWords = {
  language: "es",
  frame,
  electrics,
  findings,
  hull,
  layout,
  work,
  tables: tablesInSpanish,
  of: {
    assumed: assumedInSpanish,
    cautions: cautionsInSpanish,
    drawn: drawnInSpanish,
    edit: edits.sentence,
    findings: findingsInSpanish,
    hull: hullInSpanish,
    labels: labelsInSpanish,
    layout: layoutInSpanish,
    proof: proofInSpanish,
    record: recordInSpanish,
    sources: sourcesInSpanish,
    steps,
  },
};
