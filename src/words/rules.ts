import type { RuleId } from "../core/findings/rules.js";
import type { FindingWords } from "./finding-words.js";
import { workingInEnglish } from "./finding-working.js";
import { joinedInEnglish } from "./listed.js";
import { pathInEnglish } from "./path-words.js";
import type { RuleWords } from "./rule-words.js";
import { batteryRules, chargingRules } from "./rules-batteries.js";
import { boxRules } from "./rules-boxes.js";
import { conductorRules } from "./rules-conductors.js";
import { endRules } from "./rules-ends.js";
import { formRules, markRules } from "./rules-form.js";
import { floatRules, holeRules } from "./rules-holes.js";
import { jointRules } from "./rules-joints.js";
import { layoutRules } from "./rules-layout.js";
import { partRules } from "./rules-parts.js";
import { protectionRules } from "./rules-protection.js";
import { readingRules } from "./rules-readings.js";
import { supplyRules } from "./rules-supply.js";
import { voltageRules } from "./rules-voltage.js";
import { wayRules } from "./rules-ways.js";
import { workRules } from "./rules-work.js";

const rules: Readonly<Record<RuleId, RuleWords>> = {
  ...supplyRules,
  ...voltageRules,
  ...conductorRules,
  ...protectionRules,
  ...jointRules,
  ...batteryRules,
  ...chargingRules,
  ...layoutRules,
  ...boxRules,
  ...wayRules,
  ...endRules,
  ...partRules,
  ...formRules,
  ...markRules,
  ...holeRules,
  ...floatRules,
  ...workRules,
  ...readingRules,
};

/** Findings in English, as the command line and the packet tell them. */
export const findingsInEnglish: FindingWords = {
  rules,
  plan: "the plan",
  corner: (corner) => {
    switch (corner) {
      case "nominal":
        return "in ordinary use";
      case "worst drop":
        return "with the battery low, the copper hot and everything on";
      case "highest voltage":
        return "while the battery is on charge";
      default:
        return `in the corner ${corner}`;
    }
  },
  joining: joinedInEnglish,
  path: pathInEnglish,
  working: workingInEnglish,
  units: { years: "years", days: "days" },
};

/**
 * Title, reason and mend of a rule.
 * @throws RangeError if there is no such rule.
 */
export function ruleText(ruleId: string, words = findingsInEnglish): RuleWords {
  const known: Readonly<Partial<Record<string, RuleWords>>> = words.rules;
  const found = Object.hasOwn(known, ruleId) ? known[ruleId] : undefined;
  if (!found) throw new RangeError(`a rule's id required, got ${ruleId}`);
  return found;
}
