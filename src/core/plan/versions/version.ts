import { theFullYaml } from "../source/full.js";
import { type Opened, openDocument, type PlanDocument } from "../source/open.js";
import type { ReadProblem } from "../source/problem.js";
import { entryOf } from "../source/written.js";
import type { FormatStep } from "./format-step.js";

export type UpToDate =
  | { readonly ok: true; readonly opened: Extract<Opened, { ok: true }>; readonly migratedFrom?: number }
  | { readonly ok: false; readonly problems: readonly ReadProblem[] };

/**
 * Brings an opened plan to the newest format by the steps given. A newer plan is refused as it stands;
 * a plan without a version is left for the reader to complain about.
 */
export function bringUpToDate(
  opened: Extract<Opened, { ok: true }>,
  steps: readonly FormatStep[],
  newest: number,
): UpToDate {
  const { document } = opened;
  const from = versionOf(document);
  if (from === undefined || from === newest) return { ok: true, opened };
  if (from > newest) return refused(opened, "newer format", from, newest);
  const needed = Array.from(
    { length: newest - from },
    (_, index) => steps.find((step) => step.from === from + index) ?? [],
  ).flat();
  if (needed.length < newest - from) return refused(opened, "no such format", from, newest);
  const migrated = openDocument(theFullYaml().migrate(document.text, needed));
  return migrated.ok ? { ok: true, opened: migrated, migratedFrom: from } : migrated;
}

function versionOf(document: PlanDocument): number | undefined {
  const node = entryOf(document.root, "skiffloom")?.value;
  const value = node?.kind === "scalar" ? node.value : undefined;
  return typeof value === "number" && Number.isInteger(value) && Math.abs(value) < 1e6 ? value : undefined;
}

function refused(
  { document, log }: Extract<Opened, { ok: true }>,
  code: "newer format" | "no such format",
  found: number,
  newest: number,
): UpToDate {
  const at = entryOf(document.root, "skiffloom")?.value.start ?? 0;
  log.tell(at, ["skiffloom"], { code, found: String(found), expected: { kind: "count", of: [newest] } });
  return { ok: false, problems: log.problems };
}
