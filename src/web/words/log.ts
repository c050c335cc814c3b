import { edits } from "../../words/screen/en/edits.js";
import { log } from "../../words/screen/en/log.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfLog = wordsOf({ edits, log });
