import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** In a metal boat every stray milliampere eats the boat. */
export const metalHull = rule({
  id: "metal-hull",
  theme: "layout",
  level: "mind",
  sources: both(practice),
  check: ({ plan }) => {
    const hull = plan.source.craft.hullMaterial;
    if (hull !== "aluminium" && hull !== "steel") return [];
    const mains = plan.chargers.filter(({ kind }) => kind === "mains").map(({ name }) => name);
    return [
      {
        rule: "metal-hull",
        level: "mind",
        at: "plan",
        ...(mains.length ? { with: mains } : {}),
        terms: { hull },
      },
    ];
  },
});
