import { circuits } from "../../words/screen/en/circuits.js";
import { findings } from "../../words/screen/en/findings.js";
import { slip } from "../../words/screen/en/slip.js";
import { terms } from "../../words/screen/en/terms.js";
import { working } from "../../words/screen/en/working.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfSlip = wordsOf({ circuits, findings, slip, terms, working });
