import { asking } from "../../words/screen/en/asking.js";
import { boat } from "../../words/screen/en/boat.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfAsking = wordsOf({ asking, boat });
