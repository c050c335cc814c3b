import { edits } from "../../words/screen/en/edits.js";
import { fields } from "../../words/screen/en/fields.js";
import { findings } from "../../words/screen/en/findings.js";
import { lists } from "../../words/screen/en/lists.js";
import { working } from "../../words/screen/en/working.js";
import { wordsOf } from "../app/context.js";

/** Findings with what answers and mends them. */
export const useWordsOfRemedies = wordsOf({ edits, fields, findings, lists, working });
