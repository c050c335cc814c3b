import type { HoleFigures } from "../../hull/figures.js";
import { holeDistanceSources } from "../hole-sources.js";
import { hullGroup } from "../hull.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** A hole's size, its sheet and the rule for its material are known. */
export const holeUnknown = rule({
  id: "hole-unknown",
  theme: "holes",
  level: "unchecked",
  sources: both(...holeDistanceSources),
  check: (facts) => {
    const missing = new Map<string, string[]>();
    for (const hole of facts.hull?.holes ?? []) {
      const what = hole.there ? undefined : missingOf(hole);
      if (what === undefined) continue;
      const group = hullGroup(facts, hole.name);
      const names = missing.get(what) ?? [];
      if (!names.includes(group)) names.push(group);
      missing.set(what, names);
    }
    return [...missing].flatMap(([what, names]) => uncheckedTogether("hole-unknown", names, { what }));
  },
});
function missingOf({ material, thicknessM, cut, problems, face }: HoleFigures): string | undefined {
  if (cut === undefined) return "the size of the hole";
  if (material === undefined) return `the material of ${face}`;
  if (thicknessM === undefined) return `the thickness of ${face}`;
  return problems.some(({ problem }) => problem === "edge rule not known")
    ? `a rule for the distances of holes in ${material}`
    : undefined;
}
