import { theFullYaml } from "./full.js";
import { limits } from "./limits.js";
import { Lines } from "./lines.js";
import type { Opened } from "./opened.js";
import { ProblemLog, type Told } from "./problem-log.js";
import { readQuick } from "./quick.js";
import { PastLimit } from "./quick-flow.js";

export type { Opened, PlanDocument } from "./opened.js";

/** Opens the text as YAML 1.2 within the limits. @throws FullYamlMissing, and nothing else. */
export function openDocument(text: string): Opened {
  if (text.length > limits.maxBytes) return refused(text.slice(0, 1), 0, { code: "too large" });
  try {
    const root = readQuick(text);
    if (root === undefined) return theFullYaml().open(text);
    const lines = new Lines(text);
    return { ok: true, document: { text, root, lines }, log: new ProblemLog(lines) };
  } catch (error) {
    if (error instanceof PastLimit) return refused(text, error.at, { code: error.code });
    throw error;
  }
}

/** A text that can't be opened, and where and why. */
export function refused(text: string, at: number, problem: Told): Opened {
  const where = new Lines(text).at(at);
  return { ok: false, problems: [{ ...problem, ...where, path: [] }] };
}
