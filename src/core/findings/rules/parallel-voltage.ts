import { parallelPairs } from "../parallel.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Batteries in parallel have one voltage. */
export const parallelVoltage = rule({
  id: "parallel-voltage",
  theme: "batteries",
  level: "stop",
  sources: both(physics("the difference of voltage over the two internal resistances")),
  check: (facts) =>
    parallelPairs(facts)
      .filter(([one, other]) => one.nominalV !== other.nominalV)
      .map(([one, other]) => {
        const differenceV = Math.abs(one.nominalV - other.nominalV);
        const ohm = one.internalOhm + other.internalOhm;
        return {
          rule: "parallel-voltage",
          level: "stop",
          at: one.name,
          with: [other.name],
          figure: differenceV,
          limit: 0,
          unit: "V",
          working: [
            { symbol: "ΔU", value: differenceV, unit: "V" },
            { symbol: "R of both", value: ohm, unit: "Ω" },
            { symbol: "I between them", value: differenceV / ohm, unit: "A" },
          ],
          remedies: [{ edit: "remove field", at: one.name, field: "parallel with" }],
        };
      }),
});
