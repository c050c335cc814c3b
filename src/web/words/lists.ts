import { asking } from "../../words/screen/en/asking.js";
import { fields } from "../../words/screen/en/fields.js";
import { lists } from "../../words/screen/en/lists.js";
import { wordsOf } from "../app/context.js";
import { useInMeasures } from "./in-measures.js";

const useSaid = wordsOf({ asking, fields, lists });

export const useWordsOfLists = () => useInMeasures(useSaid());

export type ListWords = ReturnType<typeof useWordsOfLists>;
