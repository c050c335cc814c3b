import { boxes } from "../../words/screen/en/boxes.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfBoxes = wordsOf({ boxes });
