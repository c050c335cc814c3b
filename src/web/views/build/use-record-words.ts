import { differenceSentence, tickProblemSentence } from "../../../words/difference-words.js";
import { inLanguage } from "../../parts/in-language.js";

/** What is said of the record of the work, in the person's language. */
export const useRecordWords = inLanguage(
  { difference: differenceSentence, tick: tickProblemSentence },
  async () => {
    const said = await import("../../../words/spanish/difference-words.js");
    return { difference: said.differenceInSpanish, tick: said.tickProblemInSpanish };
  },
);
