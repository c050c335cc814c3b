import type { RuleId } from "../core/findings/rules.js";
import type { RuleWords } from "./rule-words.js";
import { batteryRules, chargingRules } from "./rules-batteries.js";
import { conductorRules } from "./rules-conductors.js";
import { jointRules } from "./rules-joints.js";
import { layoutRules } from "./rules-layout.js";
import { protectionRules } from "./rules-protection.js";
import { supplyRules } from "./rules-supply.js";
import { voltageRules } from "./rules-voltage.js";

/** The words of every rule; one that is missing does not compile. */
export const ruleWords: Readonly<Record<RuleId, RuleWords>> = {
  ...supplyRules,
  ...voltageRules,
  ...conductorRules,
  ...protectionRules,
  ...jointRules,
  ...batteryRules,
  ...chargingRules,
  ...layoutRules,
};

const byId: ReadonlyMap<string, RuleWords> = new Map(Object.entries(ruleWords));

/**
 * Title, reason and mend of a rule.
 * @throws RangeError if there is no such rule.
 */
export function ruleText(ruleId: string): RuleWords {
  const words = byId.get(ruleId);
  if (!words) throw new RangeError(`a rule's id required, got ${ruleId}`);
  return words;
}
