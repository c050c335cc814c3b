import { circuits } from "../../words/screen/en/circuits.js";
import { outing } from "../../words/screen/en/outing.js";
import { terms } from "../../words/screen/en/terms.js";
import { working } from "../../words/screen/en/working.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfWorking = wordsOf({ circuits, outing, terms, working });
