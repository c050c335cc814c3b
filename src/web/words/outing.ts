import { outing } from "../../words/screen/en/outing.js";
import { slip } from "../../words/screen/en/slip.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfOuting = wordsOf({ outing, slip });
