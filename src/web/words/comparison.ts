import { findings } from "../../words/screen/en/findings.js";
import { working } from "../../words/screen/en/working.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfComparison = wordsOf({ findings, working });
