import { circuits } from "../../words/screen/en/circuits.js";
import { findings } from "../../words/screen/en/findings.js";
import { slip } from "../../words/screen/en/slip.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfCircuits = wordsOf({ circuits, findings, slip });
