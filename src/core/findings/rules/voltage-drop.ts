import { within } from "../../quantity/within.js";
import type { Facts } from "../facts.js";
import type { Finding } from "../finding.js";
import { oneEachGroup } from "../merge.js";
import { sizeRemedies } from "../remedies.js";
import { rule } from "../rule.js";
import { e11, iso10133 } from "../sources.js";

/** Drop from the source to the gear and back, in the worst corner, within the gear's own limit. */
export const voltageDrop = rule({
  id: "voltage-drop",
  theme: "voltage",
  level: "mend",
  sources: {
    us: [e11("3 % and 10 % drop, as quoted by a maker", "published")],
    iso: [iso10133("4.8 note, 3 %"), iso10133("10 % elsewhere", "memory")],
  },
  check: (facts) => {
    const drops = facts.drops;
    const found = facts.plan.gear.flatMap((gear): Finding[] => {
      if (!facts.plan.circuitOf.has(gear.name)) return [];
      const limit = gear.maxDropShare * 100;
      const about = { rule: "voltage-drop", at: gear.name, limit, unit: "%" } as const;
      const drop = drops.get(gear.name);
      if (drop === undefined || Number.isNaN(drop.dropShare)) return [{ ...about, level: "unchecked" }];
      if (within(drop.dropShare, gear.maxDropShare)) return [];
      const figure = drop.dropShare * 100;
      return [{ ...about, level: "mend", figure, ...explained(facts, gear.name, drop) }];
    });
    return oneEachGroup(found, (at) => facts.gear.get(at)?.group ?? at);
  },
});

function explained(
  facts: Facts,
  at: string,
  drop: {
    readonly dropV: number;
    readonly dropShare: number;
    readonly currentA: number;
    readonly corner: string;
  },
): Partial<Finding> {
  return {
    terms: { corner: drop.corner },
    working: [
      { symbol: "I", value: drop.currentA, unit: "A" },
      { symbol: "ΔU out and back", value: drop.dropV, unit: "V" },
      { symbol: "ΔU / U nominal", value: drop.dropShare * 100, unit: "%" },
    ],
    remedies: sizeRemedies(facts, at),
  };
}
