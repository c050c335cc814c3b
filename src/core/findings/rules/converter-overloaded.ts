import { within } from "../../quantity/within.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** A converter is not asked for more than it can give. */
export const converterOverloaded = rule({
  id: "converter-overloaded",
  theme: "supply",
  level: "mend",
  sources: both(physics("the converter's own greatest output")),
  check: ({ corners, converters }) => {
    const worst = new Map<string, Finding>();
    for (const corner of corners) {
      if (corner.status !== "solved") continue;
      for (const { id, outputA, over } of corner.converters) {
        const limit = converters.get(id)?.maxOutputA;
        if (limit === undefined || !(over || !within(outputA, limit))) continue;
        if (!(outputA > (worst.get(id)?.figure ?? 0))) continue;
        const terms = { corner: corner.name };
        worst.set(id, {
          rule: "converter-overloaded",
          level: "mend",
          at: id,
          figure: outputA,
          limit,
          unit: "A",
          terms,
        });
      }
    }
    return [...worst.values()];
  },
});
