import { readPlan } from "../read.js";
import type { Edit } from "./edit.js";
import { type Edited, editSound } from "./edit-sound.js";

/**
 * Makes one edit in the text of a plan. Only the characters concerned change; comments, order and the owner's way of
 * writing stay. The result is read again: it is a sound plan that says what the edit says and nothing else anew, or the edit is refused.
 */
export function applyEdit(text: string, edit: Edit): Edited {
  return applyEdits(text, [edit]);
}

/** Makes several edits, one after the other; all or none. */
export function applyEdits(text: string, edits: readonly Edit[]): Edited {
  const read = readPlan(text);
  if (!read.ok) {
    const edit = edits[0] ?? { edit: "remove", at: "" };
    return { ok: false, problem: { code: "plan unsound", edit, problems: read.problems } };
  }
  return editSound(read, edits);
}
