import { fields } from "../../words/screen/en/fields.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfFields = wordsOf({ fields });
