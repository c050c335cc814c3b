import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Navigation lights have a way to themselves, so that nothing else can put them out. */
export const navigationLightsWay = rule({
  id: "navigation-lights-way",
  theme: "layout",
  level: "mend",
  sources: both(practice),
  check: ({ gearOn }) =>
    [...gearOn].flatMap(([circuit, gear]): Finding[] => {
      const lights = gear.filter(({ role }) => role === "navigation light");
      const others = gear.filter(({ role }) => role !== "navigation light");
      if (lights.length === 0 || others.length === 0) return [];
      return [
        { rule: "navigation-lights-way", level: "mend", at: circuit, with: others.map(({ name }) => name) },
      ];
    }),
});
