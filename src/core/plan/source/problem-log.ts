import { revealed } from "../../quantity/look-alike.js";
import { limits } from "./limits.js";
import type { Lines } from "./lines.js";
import type { Path, ReadProblem } from "./problem.js";

/** A path as a chain from the inside out: cheap to make for every value, spelt out only where there is a problem. */
export interface Trail {
  readonly step: string | number;
  readonly outer: Trail | undefined;
}

export function pathOf(trail: Trail | undefined): Path {
  const path: (string | number)[] = [];
  for (let here = trail; here !== undefined; here = here.outer) path.unshift(here.step);
  return path;
}

export type Told = Omit<ReadProblem, "line" | "column" | "path">;

/** Collects problems up to the limit, then says that there are more. */
export class ProblemLog {
  readonly problems: ReadProblem[] = [];
  private readonly heard = new Set<string>();

  constructor(private readonly lines: Lines) {}

  get full(): boolean {
    return this.problems.length > limits.maxProblems;
  }

  /** The same problem met again through an alias is told once. */
  tell(at: number, path: Path, problem: Told): void {
    if (this.full) return;
    const where = this.lines.at(at);
    const key = `${where.line}:${where.column}:${problem.code}:${problem.found ?? ""}`;
    if (this.heard.has(key)) return;
    this.heard.add(key);
    if (this.problems.length === limits.maxProblems)
      this.problems.push({ code: "more problems", ...where, path });
    else {
      const found = problem.found === undefined ? {} : { found: revealed(problem.found) };
      this.problems.push({ ...problem, ...found, ...where, path });
    }
  }

  lineOf(at: number): number {
    return this.lines.at(at).line;
  }
}

/** What was found, cut to what fits a message. */
export function shortened(text: string): string {
  const line = text.slice(0, 200).replace(/\s+/g, " ").trim();
  return line.length > 60 ? `${line.slice(0, 59)}…` : line;
}
