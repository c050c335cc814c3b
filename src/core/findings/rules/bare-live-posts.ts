import type { Finding } from "../finding.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** Posts and studs that are live are covered: a dropped spanner welds itself to them. */
export const bareLivePosts = rule({
  id: "bare-live-posts",
  theme: "joints",
  level: "mend",
  sources: { us: [cfr("183.445(b)")], iso: [iso10133("protection of live terminals", "memory")] },
  check: ({ plan }) => {
    const things = [
      ...plan.batteries.map(({ name, covered }) => ({ name, covered, kind: "battery" })),
      ...plan.panels.map(({ name, covered }) => ({ name, covered, kind: "panel" })),
      ...plan.boxes.map(({ name, covered }) => ({ name, covered, kind: "box" })),
    ];
    const bare = things
      .filter(({ covered }) => covered === false)
      .map(
        ({ name, kind }): Finding => ({
          rule: "bare-live-posts",
          level: "mend",
          at: name,
          terms: { kind },
          remedies: [{ edit: "set field", at: name, field: "covered", to: true }],
        }),
      );
    const unknown = things.filter(({ covered }) => covered === undefined).map(({ name }) => name);
    return [...bare, ...uncheckedTogether("bare-live-posts", unknown)];
  },
});
