import { settings } from "../../words/screen/en/settings.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfSettings = wordsOf({ settings });
