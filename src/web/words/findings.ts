import { findings } from "../../words/screen/en/findings.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfFindings = wordsOf({ findings });
