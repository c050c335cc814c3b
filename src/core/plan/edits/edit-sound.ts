import { composed } from "../../quantity/look-alike.js";
import type { Plan } from "../model/plan.js";
import { readPlan } from "../read-text.js";
import { theFullYaml } from "../source/full.js";
import type { PlanDocument } from "../source/open.js";
import type { ReadProblem } from "../source/problem.js";
import { readQuickValue } from "../source/quick.js";
import type { Written } from "../source/written.js";
import type { Edit } from "./edit.js";
import { groupOf } from "./group.js";
import { Locator } from "./locate.js";
import { changedMeaning, type Meaning, meaningOf, sameMeaning } from "./meaning.js";
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
 * Makes several edits in a plan that has been read already; all or none. Edits that do not touch each other are made in one go, so that
 * a column of 2,000 values costs one reading of the plan and not 2,000.
 * @throws FullYamlMissing where the full reader is wanted and not there; nothing is lost by asking again when it is.
 */
export function editSound(sound: SoundPlan, asked: readonly Edit[]): Edited {
  const edits = asked.map(composedEdit);
  let result: Edited = { ok: true, text: sound.document.text, plan: sound.plan, document: sound.document };
  for (let from = 0; from < edits.length && result.ok; ) {
    const locator = new Locator(result.document);
    const [first] = edits.slice(from, from + 1);
    if (first === undefined) break;
    const steps = stepsOf(locator, first);
    if (!Array.isArray(steps)) return { ok: false, problem: { edit: first, ...steps } };
    const group = groupOf(locator, edits, from);
    result = editGroup(result, edits.slice(from, from + group), locator);
    from += group;
  }
  return result;
}

/** An edit with its names as the reader of the plan has them. */
function composedEdit(edit: Edit): Edit {
  const fields = Object.entries(edit);
  if (fields.every(([, value]) => typeof value !== "string" || composed(value) === value)) return edit;
  const said = fields.map(([key, value]) => [key, typeof value === "string" ? composed(value) : value]);
  return Object.fromEntries(said) as Edit;
}

/** Edits that do not touch each other. Where they can't be made in one go, by halves: what is wrong is then told of the one edit that is. */
function editGroup(sound: SoundPlan, edits: readonly Edit[], known?: Locator): Edited {
  const [first] = edits;
  if (first === undefined) return { ok: true, text: sound.document.text, ...sound };
  const locator = known ?? new Locator(sound.document);
  if (edits.length === 1) return editDocument(sound.document, first, locator);
  const steps = edits.flatMap((edit) => {
    const made = stepsOf(locator, edit);
    return Array.isArray(made) ? made : [];
  });
  const together = tryOut(sound.document, steps, spliceSteps(sound.document, steps));
  if (together?.ok) return together.edited;
  const half = Math.ceil(edits.length / 2);
  const begun = editGroup(sound, edits.slice(0, half));
  return begun.ok ? editGroup(begun, edits.slice(half)) : begun;
}

function editDocument(document: PlanDocument, edit: Edit, locator: Locator = new Locator(document)): Edited {
  const steps = stepsOf(locator, edit);
  if (!Array.isArray(steps)) return { ok: false, problem: { edit, ...steps } };
  if (steps.some(({ path }) => passesShared(document.root, path)))
    return { ok: false, problem: { code: "shared value", edit } };
  const tries = [() => spliceSteps(document, steps), () => theFullYaml().rewrite(document.text, steps)];
  let unsound: EditProblem = { code: "not possible", edit };
  for (const attempt of tries) {
    const tried = tryOut(document, steps, attempt());
    if (tried?.ok) return tried.edited;
    if (tried) unsound = { code: "result unsound", edit, problems: tried.problems };
  }
  return { ok: false, problem: unsound };
}

type TriedOut =
  | { readonly ok: true; readonly edited: Edited }
  | { readonly ok: false; readonly problems: readonly ReadProblem[] };

/** Reads a text that should say what the steps say. Undefined where it says something else. */
function tryOut(
  document: PlanDocument,
  steps: readonly Step[],
  text: string | undefined,
): TriedOut | undefined {
  if (text === undefined || steps.some(({ path }) => passesShared(document.root, path))) return undefined;
  const wanted = changedMeaning(meaningOf(document.root), steps, meaningOfText);
  const read = wanted === undefined ? undefined : readPlan(text);
  if (wanted === undefined || read === undefined) return undefined;
  if (!read.ok) return { ok: false, problems: read.problems };
  if (!sameMeaning(meaningOf(read.document.root), wanted)) return undefined;
  return { ok: true, edited: { ok: true, text, plan: read.plan, document: read.document } };
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
  const node = readQuickValue(text) ?? theFullYaml().valueOf(text);
  return node === undefined ? "" : meaningOf(node);
}
