import type { KeyWords } from "../key-words.js";
import { choiceIn } from "./key-choices.js";
import { supplyHints } from "./key-hints.js";
import { boatHints } from "./key-hints-boat.js";
import { keyLabels } from "./key-labels.js";

const hints: ReadonlyMap<string, string> = new Map([...supplyHints, ...boatHints]);

/** Keys of a thing in Spanish. */
export const keysInSpanish: KeyWords = {
  label: (key) => keyLabels.get(key) ?? key,
  hint: (says) => hints.get(says) ?? says,
  choice: choiceIn,
};
