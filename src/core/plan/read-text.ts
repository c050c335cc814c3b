import type { Plan } from "./model/plan.js";
import { checkReferences } from "./references/check.js";
import { formatVersion, planShape } from "./schema/plan.js";
import { decodeUtf8 } from "./source/decode.js";
import { limits } from "./source/limits.js";
import { openDocument, type PlanDocument } from "./source/open.js";
import type { ReadCode, ReadProblem } from "./source/problem.js";
import { formatSteps } from "./versions/steps.js";
import { bringUpToDate } from "./versions/version.js";

export type ReadPlan =
  | {
      readonly ok: true;
      readonly plan: Plan;
      readonly document: PlanDocument;
      /** Format the file was written in, where that is an older one; `document` then holds the text as brought up to date. */
      readonly migratedFrom?: number;
    }
  | { readonly ok: false; readonly problems: readonly ReadProblem[] };

/**
 * Reads a plan from its text: every problem with its place, or the plan in SI units.
 * What is only a fault of the boat (gear on no way, a fuse too large) is no problem here but a finding later.
 * @throws FullYamlMissing where the full reader is wanted and not there, and nothing else.
 */
export function readPlan(text: string): ReadPlan {
  const opened = openDocument(text);
  if (!opened.ok) return opened;
  const current = bringUpToDate(opened, formatSteps, formatVersion);
  if (!current.ok) return current;
  const { document, log } = current.opened;
  const plan = planShape.read({ node: document.root, trail: undefined, log });
  if (plan !== undefined) checkReferences(plan, document, log);
  if (log.problems.length > 0 || plan === undefined) return { ok: false, problems: inOrder(log.problems) };
  return {
    ok: true,
    plan,
    document,
    ...(current.migratedFrom === undefined ? {} : { migratedFrom: current.migratedFrom }),
  };
}

/** Reads a plan from the bytes of a file, which must be UTF-8. */
export function readPlanBytes(bytes: Uint8Array): ReadPlan {
  if (bytes.length > limits.maxBytes) return refused("too large", 1, 1);
  const decoded = decodeUtf8(bytes);
  return decoded.ok ? readPlan(decoded.text) : refused("not utf-8", decoded.line, decoded.column);
}

function refused(code: ReadCode, line: number, column: number): ReadPlan {
  return { ok: false, problems: [{ code, line, column, path: [] }] };
}

function inOrder(problems: readonly ReadProblem[]): readonly ReadProblem[] {
  const rest = problems.filter((problem) => problem.code !== "more problems");
  const last = problems.filter((problem) => problem.code === "more problems");
  return [...rest.sort((a, b) => a.line - b.line || a.column - b.column), ...last];
}
