import { checkRecord } from "../work/record-check.js";
import type { CheckInput } from "./check-input.js";
import { factsOf } from "./facts.js";
import type { Finding } from "./finding.js";
import { gravestFirst } from "./merge.js";
import { rules } from "./rules.js";

/** Every finding of every rule, gravest first. A fault in the boat never throws. */
export function checkPlan(input: CheckInput): Finding[] {
  const facts = factsOf(input, checkRecord(input, input));
  return gravestFirst(rules.flatMap((rule): readonly Finding[] => rule.check(facts)));
}
