import { isDeepStrictEqual } from "node:util";
import { workOut } from "../../src/core/figures.js";
import { readPlan, readPlanBytes } from "../../src/core/plan/read.js";
import { fullYaml } from "../../src/core/plan/source/full-yaml.js";
import { limits } from "../../src/core/plan/source/limits.js";

import { readQuick } from "../../src/core/plan/source/quick.js";
import { PastLimit } from "../../src/core/plan/source/quick-flow.js";
import type { Written } from "../../src/core/plan/source/written.js";
import { readProblemLine } from "../../src/words/read-problems.js";

/** What became of a spoilt plan. */
export type Judged = "sound" | "refused";

/**
 * Reads one spoilt plan, which must be refused with a place and a sentence for each problem, or else be sound: then every figure and finding
 * of it can be worked out. Quick and full reader must agree.
 * @throws Error where any of that does not hold.
 */
export function judgeSpoilt(text: string): Judged {
  const quick = quickly(text);
  if (quick !== undefined) {
    const full = fullYaml.open(text);
    if (!full.ok)
      throw new Error(`the full reader refuses: ${full.problems.map(readProblemLine).join("; ")}`);
    if (!isDeepStrictEqual(quick, full.document.root))
      throw new Error("the quick reader reads something else");
  }
  return judgeRead(readPlan(text));
}

/** The same for bytes that need not be text. */
export function judgeSpoiltBytes(bytes: Uint8Array): Judged {
  return judgeRead(readPlanBytes(bytes));
}

/** What the quick reader makes of it; a text past the limits is none of its. */
function quickly(text: string): Written | undefined {
  try {
    return readQuick(text);
  } catch (error) {
    if (error instanceof PastLimit) return undefined;
    throw error;
  }
}

function judgeRead(read: ReturnType<typeof readPlan>): Judged {
  if (read.ok) {
    if (!Array.isArray(workOut(read.plan).figures.findings)) throw new Error("no findings");
    return "sound";
  }
  if (read.problems.length === 0 || read.problems.length > limits.maxProblems + 1)
    throw new Error("how many problems?");
  for (const problem of read.problems) {
    const line = readProblemLine(problem);
    if (!(problem.line >= 1 && problem.column >= 1) || line.length > 1500 || /undefined|\[object/.test(line))
      throw new Error(`no good sentence: ${line}`);
  }
  return "refused";
}
