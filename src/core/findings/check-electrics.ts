import type { RecordCheck } from "../work/record-check.js";
import type { CheckInput } from "./check-input.js";
import { electricRules } from "./electric-rules.js";
import { factsOf } from "./facts.js";
import type { Finding } from "./finding.js";
import { gravestFirst } from "./merge.js";

const notLookedAt: RecordCheck = { differences: [], problems: [] };
const ids: ReadonlySet<string> = new Set(electricRules.map(({ id }) => id));

/** Findings of the electrics alone, gravest first. */
export function checkElectrics(input: CheckInput): Finding[] {
  const facts = factsOf(input, notLookedAt);
  return gravestFirst(electricRules.flatMap((rule): readonly Finding[] => rule.check(facts)));
}

/** Is it a finding of the electrics alone? */
export function isOfElectrics({ rule }: Finding): boolean {
  return ids.has(rule);
}
