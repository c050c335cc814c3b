import { parseDocument } from "yaml";
import type { Plan } from "../model/plan.js";
import { readPlan } from "../read.js";
import { yamlOptions } from "../source/compose.js";
import { convert } from "../source/convert.js";
import { Lines } from "../source/lines.js";
import type { PlanDocument } from "../source/open.js";
import { ProblemLog } from "../source/problem-log.js";
import type { Written } from "../source/written.js";
import type { Edit } from "./edit.js";
import { changedMeaning, type Meaning, meaningOf, rewriteSteps, sameMeaning } from "./meaning.js";
import type { EditProblem } from "./problem.js";
import { spliceSteps } from "./splice.js";
import type { Step } from "./step.js";
import { stepsOf } from "./steps-of.js";

/** A plan that was read: its values, and the document they stand in. */
export interface SoundPlan {
  readonly plan: Plan;
  readonly document: PlanDocument;
}

export type Edited =
  | ({ readonly ok: true; readonly text: string } & SoundPlan)
  | { readonly ok: false; readonly problem: EditProblem };

/**
 * Makes one edit in the text of a plan. Only the characters concerned change; comments, order and the owner's way of
 * writing stay. The result is read again: it is a sound plan that says what the edit says and nothing else anew, or the edit is refused.
 */
export function applyEdit(text: string, edit: Edit): Edited {
  const read = readPlan(text);
  if (!read.ok) return { ok: false, problem: { code: "plan unsound", edit, problems: read.problems } };
  return editDocument(read.document, edit);
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

/** Makes several edits in a plan that has been read already; all or none. */
export function editSound(sound: SoundPlan, edits: readonly Edit[]): Edited {
  let result: Edited = { ok: true, text: sound.document.text, plan: sound.plan, document: sound.document };
  for (const edit of edits) {
    if (!result.ok) return result;
    result = editDocument(result.document, edit);
  }
  return result;
}

function editDocument(document: PlanDocument, edit: Edit): Edited {
  const steps = stepsOf(document, edit);
  if (!Array.isArray(steps)) return { ok: false, problem: { edit, ...steps } };
  if (steps.some(({ path }) => passesShared(document.root, path)))
    return { ok: false, problem: { code: "shared value", edit } };
  const wanted = changedMeaning(meaningOf(document.root), steps, meaningOfText);
  const tries = [() => spliceSteps(document, steps), () => rewriteSteps(document.text, steps)];
  let unsound: EditProblem = { code: "not possible", edit };
  for (const attempt of tries) {
    const text = attempt();
    if (text === undefined || wanted === undefined) continue;
    const read = readPlan(text);
    if (read.ok && sameMeaning(meaningOf(read.document.root), wanted))
      return { ok: true, text, plan: read.plan, document: read.document };
    if (!read.ok) unsound = { code: "result unsound", edit, problems: read.problems };
  }
  return { ok: false, problem: unsound };
}

/** Would the step change a value that an alias repeats elsewhere? */
function passesShared(root: Written, path: Step["path"]): boolean {
  let node: Written | undefined = root;
  for (const step of path) {
    if (node?.kind === "list" && typeof step === "number") node = node.items[step];
    else if (node?.kind === "section") node = node.entries.find((entry) => entry.key === step)?.value;
    else return false;
    if (node?.shared === true) return true;
  }
  return false;
}

function meaningOfText(text: string): Meaning {
  const { contents } = parseDocument(text, yamlOptions);
  const node = contents === null ? undefined : convert(contents, new ProblemLog(new Lines(text)));
  return node === undefined ? "" : meaningOf(node);
}
