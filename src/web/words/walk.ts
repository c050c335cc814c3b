import { walk } from "../../words/screen/en/walk.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfWalk = wordsOf({ walk });
