import { asking } from "../../words/screen/en/asking.js";
import { fields } from "../../words/screen/en/fields.js";
import { lists } from "../../words/screen/en/lists.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfLists = wordsOf({ asking, fields, lists });

export type ListWords = ReturnType<typeof useWordsOfLists>;
