import type { RuleId } from "../core/findings/rules.js";
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
