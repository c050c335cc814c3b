import { asking } from "../../words/screen/en/asking.js";
import { boat } from "../../words/screen/en/boat.js";
import { survey } from "../../words/screen/en/survey.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfSurvey = wordsOf({ asking, boat, survey });
