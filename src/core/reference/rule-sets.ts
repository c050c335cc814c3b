import { isoRules } from "./rule-set-iso.js";
import type { RuleFigures, RuleSet } from "./rule-set-type.js";
import { usRules } from "./rule-set-us.js";

export type { RuleSet } from "./rule-set-type.js";

/** Drop limit for a role of `plan/model/gear.ts`, as a share of nominal, with its source. */
function maxDropFor(rules: RuleFigures, role: string): RuleFigures["maxDropOther"] {
  return rules.safetyRoles.value.includes(role) ? rules.maxDropSafety : rules.maxDropOther;
}

function complete(figures: RuleFigures): RuleSet {
  return { ...figures, dropShare: (role) => maxDropFor(figures, role).value };
}

export const ruleSets: Readonly<Record<"us" | "iso", RuleSet>> = {
  us: complete(usRules),
  iso: complete(isoRules),
};

/** The rules a plan is held to, by the plan's word for them. */
export function ruleSet(name: "us" | "iso"): RuleSet {
  return ruleSets[name];
}
