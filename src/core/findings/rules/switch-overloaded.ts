import type { Switch } from "../../plan/model/common.js";
import { within } from "../../quantity/within.js";
import type { Facts } from "../facts.js";
import type { Finding } from "../finding.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Every switch is rated for what passes it. */
export const switchOverloaded = rule({
  id: "switch-overloaded",
  theme: "protection",
  level: "mend",
  sources: both(practice),
  check: (facts) => {
    const unrated: string[] = [];
    const over = switches(facts).flatMap(({ at, device, currentA }): Finding[] => {
      if (currentA === undefined || currentA === 0) return [];
      if (device.ratingA === undefined) {
        unrated.push(at);
        return [];
      }
      if (within(currentA, device.ratingA)) return [];
      return [
        { rule: "switch-overloaded", level: "mend", at, figure: currentA, limit: device.ratingA, unit: "A" },
      ];
    });
    return [...over, ...uncheckedTogether("switch-overloaded", unrated)];
  },
});

interface Switched {
  readonly at: string;
  readonly device: Switch;
  readonly currentA: number | undefined;
}

function switches({ plan, currents }: Facts): Switched[] {
  const found: Switched[] = [];
  for (const { name, master } of plan.batteries) {
    if (master) found.push({ at: name, device: master, currentA: currents.batteries.get(name) });
  }
  for (const panel of plan.panels) {
    if (panel.master)
      found.push({ at: panel.name, device: panel.master, currentA: currents.panels.get(panel.name) });
    for (const way of panel.ways) {
      const at = `${panel.name} / ${way.name}`;
      if (way.switch !== "none") found.push({ at, device: way.switch, currentA: currents.ways.get(at) });
    }
  }
  for (const run of plan.runs) {
    if (run.switch) found.push({ at: run.name, device: run.switch, currentA: currents.out.get(run.name) });
  }
  return found;
}
