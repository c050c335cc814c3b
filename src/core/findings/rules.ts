import { apartRules } from "./apart-rules.js";
import { electricRules } from "./electric-rules.js";
import { type Rule, themes } from "./rule.js";

type KnownRule = (typeof electricRules)[number] | (typeof apartRules)[number];
export type RuleId = KnownRule["id"];

/** Every rule, chapter by chapter, by id; findings of one level come in this order. */
export const rules: readonly KnownRule[] = [...electricRules, ...apartRules].sort(
  (a, b) => themes.indexOf(a.theme) - themes.indexOf(b.theme) || (a.id < b.id ? -1 : 1),
);

const byId: ReadonlyMap<string, Rule> = new Map(rules.map((rule) => [rule.id, rule]));

/** The rule of an id; undefined if there is none. */
export function ruleOf(id: string): Rule | undefined {
  return byId.get(id);
}
