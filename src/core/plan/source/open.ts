import { isCollection } from "yaml";
import { composeYaml, yamlMistakes } from "./compose.js";
import { convert } from "./convert.js";
import { limits } from "./limits.js";
import { Lines } from "./lines.js";
import type { ReadProblem } from "./problem.js";
import { ProblemLog, shortened, type Told } from "./problem-log.js";
import { readQuick } from "./quick.js";
import { PastLimit } from "./quick-flow.js";
import type { WrittenSection } from "./written.js";

/** A plan file that is sound YAML: its text, and its tree with the places of all that is in it. */
export interface PlanDocument {
  readonly text: string;
  readonly root: WrittenSection;
  readonly lines: Lines;
}

export type Opened =
  | { readonly ok: true; readonly document: PlanDocument; readonly log: ProblemLog }
  | { readonly ok: false; readonly problems: readonly ReadProblem[] };

/** Opens the text as YAML 1.2 within the limits. Never throws. */
export function openDocument(text: string): Opened {
  if (text.length > limits.maxBytes) return refused(text.slice(0, 1), 0, { code: "too large" });
  try {
    const root = readQuick(text);
    if (root === undefined) return openFully(text);
    const lines = new Lines(text);
    return { ok: true, document: { text, root, lines }, log: new ProblemLog(lines) };
  } catch (error) {
    if (error instanceof PastLimit) return refused(text, error.at, { code: error.code });
    throw error;
  }
}

/** By the full YAML reader, which knows all writing and names all mistakes. @throws PastLimit where the text goes past a limit. */
export function openFully(text: string): Opened {
  const composed = composeYaml(text);
  if ("problem" in composed) return refused(text, 0, composed.problem);
  const [yaml, second] = composed.documents;
  if (yaml === undefined) return refused(text, 0, { code: "empty" });
  const lines = new Lines(text);
  const log = new ProblemLog(lines);
  for (const { at, ...problem } of yamlMistakes(yaml)) log.tell(at, [], problem);
  if (log.problems.length > 0) return { ok: false, problems: log.problems };
  if (second !== undefined) return refused(text, second.range[0], { code: "several documents" });
  const contents = yaml.contents;
  if (contents === null || (!isCollection(contents) && contents.source === ""))
    return refused(text, 0, { code: "empty" });
  const root = convert(contents, log);
  if (root === undefined || root.kind !== "section") {
    if (log.problems.length === 0)
      log.tell(root?.start ?? 0, [], {
        code: "wrong form",
        found: root?.kind === "scalar" ? shortened(root.text) : "list",
        expected: { kind: "form", form: "section" },
      });
    return { ok: false, problems: log.problems };
  }
  return { ok: true, document: { text, root, lines }, log };
}

function refused(text: string, at: number, problem: Told): Opened {
  const where = new Lines(text).at(at);
  return { ok: false, problems: [{ ...problem, ...where, path: [] }] };
}
