import { boat } from "../../words/screen/en/boat.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfBoat = wordsOf({ boat });
