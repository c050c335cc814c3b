import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { cfrVentilation, practice } from "../sources.js";

/** With petrol on board, a closed engine space has a blower that clears it of vapour before anything in it is switched on. */
export const blowerMissing = rule({
  id: "blower-missing",
  theme: "layout",
  level: "mind",
  sources: { us: [cfrVentilation("183.610(a)"), cfrVentilation("183.605")], iso: [practice] },
  check: ({ plan }) => {
    if (plan.source.craft.petrolOnBoard !== true) return [];
    if (plan.gear.some(({ role }) => role === "blower")) return [];
    const there = [...plan.gear, ...plan.batteries, ...plan.panels, ...plan.boxes].flatMap(
      ({ name, surroundings }) => (surroundings === "engine space" ? [name] : []),
    );
    const passing = plan.runs.flatMap(({ group, inEngineSpace }) => (inEngineSpace ? [group] : []));
    const [at, ...others] = [...new Set([...there, ...passing])];
    if (at === undefined) return [];
    return [{ rule: "blower-missing", level: "mind", at, with: others } satisfies Finding];
  },
});
