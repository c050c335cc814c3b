import { asking } from "../../words/screen/en/asking.js";
import { fields } from "../../words/screen/en/fields.js";
import { lists } from "../../words/screen/en/lists.js";
import { survey } from "../../words/screen/en/survey.js";
import { tape } from "../../words/screen/en/tape.js";
import { wordsOf } from "../app/context.js";
import { useInMeasures } from "./in-measures.js";

const useSaid = wordsOf({ asking, fields, lists, survey, tape });

export const useWordsOfTape = () => useInMeasures(useSaid());
