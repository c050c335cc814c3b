import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** Conductors are stranded: solid ones break where a boat shakes them. */
export const solidConductor = rule({
  id: "solid-conductor",
  theme: "conductors",
  level: "mend",
  sources: { us: [cfr("183.425(a)")], iso: [iso10133("stranded copper", "memory")] },
  check: ({ groups }) =>
    groups
      .filter(({ conductor }) => conductor === "solid")
      .map(({ group }) => ({
        rule: "solid-conductor",
        level: "mend",
        at: group,
        remedies: [{ edit: "set field", at: group, field: "conductor", to: "stranded" }],
      })),
});
