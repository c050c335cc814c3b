import { type Finding, levels } from "./finding.js";

/** Findings that one change would mend, or that say the same of several things. */
export interface Cause {
  /** Stays the same while the findings do, to tell causes apart. */
  readonly id: string;
  /** Gravest first. */
  readonly findings: readonly Finding[];
}

const grave = ({ level }: Finding) => levels.indexOf(level);

/** Groups findings by what lies behind them: the first remedy they share, else their rule. Causes in the order of their gravest finding. */
export function causesOf(findings: readonly Finding[]): Cause[] {
  const causes = new Map<string, Finding[]>();
  for (const finding of findings) {
    const [remedy] = finding.remedies ?? [];
    const id = remedy === undefined ? finding.rule : JSON.stringify(remedy);
    const cause = causes.get(id);
    if (cause) cause.push(finding);
    else causes.set(id, [finding]);
  }
  return [...causes]
    .map(([id, found]) => ({ id, findings: found.sort((a, b) => grave(a) - grave(b)) }))
    .sort((a, b) => gravest(a) - gravest(b));
}

const gravest = ({ findings: [first] }: Cause) => (first ? grave(first) : levels.length);
