import type { Agreement } from "../../../core/hull/form/agreement.js";
import { unlikely } from "../../../core/hull/form/fair-survey.js";
import type { Shows } from "../../../core/plan/model/plan.js";
import type { HullWords } from "../../../words/hull/english.js";
import { smallWords, surveyWords } from "../../../words/hull-words.js";
import type { ScreenWords } from "../../../words/screen/en.js";

/** How a figure goes with the others, in a sentence; what nothing checks is said to be so. */
export function agreementSentence(
  { verdict, against, coordinate }: Agreement,
  shows: Shows,
  words: ScreenWords["tape"],
  hull: HullWords,
): string {
  if (against === undefined || verdict === "not checked") return words.notChecked;
  const off = words.off[coordinate][against.differsM < 0 ? "less" : "more"](
    smallWords(Math.abs(against.differsM), shows, hull),
  );
  const fair = surveyWords(against.fairM, shows);
  const limit = smallWords(unlikely * against.sigmaM, shows, hull);
  return verdict === "differs" ? words.differs(off, fair, limit) : words.agrees(off, fair, limit);
}
