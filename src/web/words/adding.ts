import { asking } from "../../words/screen/en/asking.js";
import { fields } from "../../words/screen/en/fields.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfAdding = wordsOf({ asking, fields });
