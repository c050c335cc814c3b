import { parts } from "../../words/screen/en/parts.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfParts = wordsOf({ parts });
