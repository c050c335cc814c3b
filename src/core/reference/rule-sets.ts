import { isoRules } from "./rule-set-iso.js";
import type { RuleSet } from "./rule-set-type.js";
import { usRules } from "./rule-set-us.js";

export type { RuleSet } from "./rule-set-type.js";

export const ruleSets = { us: usRules, iso: isoRules } as const satisfies Readonly<
  Record<"us" | "iso", RuleSet>
>;

/** The rules a plan is held to, by the plan's word for them. */
export function ruleSet(name: "us" | "iso"): RuleSet {
  return ruleSets[name];
}

/** Drop limit for a role of `plan/model/gear.ts`, as a share of nominal, with its source. */
export function maxDropFor(rules: RuleSet, role: string): RuleSet["maxDropOther"] {
  return rules.safetyRoles.value.includes(role) ? rules.maxDropSafety : rules.maxDropOther;
}
