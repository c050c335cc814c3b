import type { Finding } from "../finding.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** Where a run passes an edge it is protected from chafe. */
export const chafe = rule({
  id: "chafe",
  theme: "conductors",
  level: "mend",
  sources: { us: [cfr("183.445(a)")], iso: [iso10133("protection from abrasion", "memory")] },
  check: ({ groups: runs }) => {
    const bare = runs
      .filter(({ protectedFromChafe }) => protectedFromChafe === false)
      .map(({ group }): Finding => ({ rule: "chafe", level: "mend", at: group, remedies: [protect(group)] }));
    const unknown = runs.filter(({ protectedFromChafe }) => protectedFromChafe === undefined);
    return [
      ...bare,
      ...uncheckedTogether(
        "chafe",
        unknown.map(({ group }) => group),
      ),
    ];
  },
});

const protect = (at: string) => ({ edit: "set field", at, field: "protected from chafe", to: true }) as const;
