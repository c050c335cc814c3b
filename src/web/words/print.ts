import { boxes } from "../../words/screen/en/boxes.js";
import { circuits } from "../../words/screen/en/circuits.js";
import { print } from "../../words/screen/en/print.js";
import { settings } from "../../words/screen/en/settings.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfPrint = wordsOf({ boxes, circuits, print, settings });
