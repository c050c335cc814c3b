import { terms } from "../../words/screen/en/terms.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfTerms = wordsOf({ terms });
