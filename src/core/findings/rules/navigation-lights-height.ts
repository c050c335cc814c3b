import { lightKindsOf } from "../../plan/light-kind.js";
import { overSidelights } from "../../reference/navigation-lights.js";
import type { Finding } from "../finding.js";
import { uncheckedTogether } from "../merge.js";
import { movedBy } from "../moved-by.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

const id = "navigation-lights-height";

/** Under power the white light that is seen from ahead stands over the sidelights, and far enough. */
export const navigationLightsHeight = rule({
  id,
  theme: "layout",
  level: "mend",
  sources: both(overSidelights.source),
  check: ({ plan }) => {
    if (movedBy(plan) !== "motor") return [];
    const lights = plan.gear.filter(({ role }) => role === "navigation light");
    const of = (...kinds: readonly string[]) =>
      lights.filter(({ name }) => lightKindsOf(name).some((kind) => kinds.includes(kind)));
    const [white, sides] = [of("masthead", "all-round"), of("sidelight")];
    if (white.length === 0 || sides.length === 0) return [];
    const untold = [...white, ...sides].filter(({ standsAtM }) => standsAtM === undefined);
    if (untold.length > 0)
      return uncheckedTogether(
        id,
        untold.map(({ name }) => name),
      );
    const upM = ({ standsAtM }: (typeof white)[number]) => standsAtM?.[2] ?? Number.NaN;
    const highest = white.reduce((high, one) => (upM(one) > upM(high) ? one : high));
    const overM = upM(highest) - Math.max(...sides.map(upM));
    const { leastM } = overSidelights;
    if (overM >= leastM - 1e-9) return [];
    return [
      {
        rule: id,
        level: "mend",
        at: highest.name,
        with: sides.map(({ name }) => name),
        figure: overM,
        limit: leastM,
        unit: "m",
      } satisfies Finding,
    ];
  },
});
