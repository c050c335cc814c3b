import { bondingColours } from "../../reference/fitting-out.js";
import type { Facts } from "../facts.js";
import type { Finding } from "../finding.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { e11, iso10133 } from "../sources.js";

/** Colours tell the truth: red is never a return, black or yellow never live, green is kept for bonding, and the two differ. */
export const conductorColour = rule({
  id: "conductor-colour",
  theme: "conductors",
  level: "mend",
  sources: { us: [e11("colour table")], iso: [iso10133("colours of conductors", "memory")] },
  check: (facts) => {
    const runs = facts.groups;
    const silent = runs
      .filter(
        ({ colours, legs }) => (legs !== "return" && !colours?.out) || (legs !== "out" && !colours?.return),
      )
      .map(({ group }) => group);
    return [
      ...runs.flatMap(({ group, colours }) => wrong(facts, group, colours?.out, colours?.return)),
      ...uncheckedTogether("conductor-colour", silent),
    ];
  },
});

function wrong({ ruleSet }: Facts, at: string, out: string | undefined, back: string | undefined): Finding[] {
  const returns = ruleSet.returnColours.value;
  const bonding: readonly string[] = bondingColours.colours;
  const fault =
    back !== undefined && back === out
      ? "same"
      : back === "red"
        ? "red return"
        : out !== undefined && returns.includes(out)
          ? "dark live"
          : [out, back].some((colour) => colour !== undefined && bonding.includes(colour))
            ? "bonding"
            : undefined;
  if (fault === undefined) return [];
  const terms = { fault, ...(out ? { out } : {}), ...(back ? { return: back } : {}) };
  const [usual = "black"] = returns;
  return [
    {
      rule: "conductor-colour",
      level: "mend",
      at,
      terms,
      remedies: [{ edit: "set run colours", at, out: "red", return: usual }],
    },
  ];
}
