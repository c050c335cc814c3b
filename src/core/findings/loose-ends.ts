import type { LooseEnd } from "../plan/completed.js";
import type { Facts } from "./facts.js";
import type { Finding, Level } from "./finding.js";

/** A rule's check that reports the loose ends of some kinds. */
export function looseEnds(rule: string, level: Level, kinds: readonly LooseEnd["kind"][]) {
  return ({ plan }: Facts): Finding[] =>
    plan.looseEnds
      .filter(({ kind }) => kinds.includes(kind))
      .map(({ kind, at, with: others }) => ({
        rule,
        level,
        at,
        ...(others.length ? { with: others } : {}),
        terms: { kind },
      }));
}
