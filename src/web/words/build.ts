import { build } from "../../words/screen/en/build.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfBuild = wordsOf({ build });
