import type { Finding } from "../finding.js";
import { oneEachGroup } from "../merge.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** 12 V gear hangs on a 12 V supply. */
export const nominalVoltage = rule({
  id: "nominal-voltage",
  theme: "voltage",
  level: "stop",
  sources: both(physics("the gear's working range against its supply's nominal voltage")),
  check: (facts) => {
    const found = [...facts.unlikeSupply].map(([at, supply]): Finding => {
      const gear = facts.gear.get(at);
      const limit = gear && supply.nominalV > gear.maxV ? gear.maxV : gear?.minV;
      return {
        rule: "nominal-voltage",
        level: "stop",
        at,
        with: [supply.supply],
        figure: supply.nominalV,
        ...(limit === undefined ? {} : { limit }),
        unit: "V",
      };
    });
    return oneEachGroup(found, (at) => facts.gear.get(at)?.group ?? at);
  },
});
