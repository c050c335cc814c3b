import { editSentence } from "../../edits.js";

/** Edits as something one does: remedies, and the history. */
export const edits = { sentence: editSentence };
