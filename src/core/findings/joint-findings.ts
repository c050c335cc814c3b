import type { Edit } from "../plan/edits/edit.js";
import type { JointKind } from "../plan/model/common.js";
import type { Facts } from "./facts.js";
import type { Finding, Level } from "./finding.js";
import type { JointFact } from "./joints.js";

/**
 * One finding for each entry of the plan that says a joint of a kind is used where it should not be.
 * @param better Joint to write instead; undefined: another kind does not help.
 * @param judge Level, or undefined where the joint is well.
 */
export function jointFindings(
  facts: Facts,
  rule: string,
  better: JointKind | undefined,
  judge: (fact: JointFact) => Level | undefined,
  limitOf: (fact: JointFact) => number | undefined = () => undefined,
): Finding[] {
  const found = new Map<string, Finding>();
  for (const fact of facts.joints) {
    const level = judge(fact);
    if (level === undefined) continue;
    const saidBy = fact.run ?? fact.gear ?? fact.place;
    const key = `${saidBy}\n${fact.end ?? ""}\n${level}`;
    if (found.has(key)) continue;
    const limit = limitOf(fact);
    const currentA = limit === undefined ? undefined : currentThrough(facts, fact);
    found.set(key, {
      rule,
      level,
      at: saidBy,
      ...(fact.place === saidBy ? {} : { with: [fact.place] }),
      ...(limit === undefined || currentA === undefined ? {} : { figure: currentA, limit, unit: "A" }),
      terms: { joint: fact.joint, surroundings: fact.surroundings, place: fact.place },
      ...(better === undefined ? {} : { remedies: remedy(fact, better) }),
    });
  }
  return [...found.values()];
}

function remedy({ run, end, gear }: JointFact, to: JointKind): Edit[] {
  if (run !== undefined && end !== undefined) return [{ edit: "set run joint", at: run, end, to }];
  return gear === undefined ? [] : [{ edit: "set gear joint", at: gear, to }];
}

/** Greatest current through the run that ends in a joint, or through the gear whose leads it joins [A]. */
export function currentThrough({ currents }: Facts, { runName, place, gear }: JointFact): number | undefined {
  return (gear === undefined ? undefined : currents.gear.get(place)) ?? currents.out.get(runName);
}
