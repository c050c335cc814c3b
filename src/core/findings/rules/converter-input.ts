import { atLeast, within } from "../../quantity/within.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** The voltage at a converter's input stays within what it works at; too much destroys it. */
export const converterInput = rule({
  id: "converter-input",
  theme: "supply",
  level: "stop",
  sources: both(physics("the converter's own input range")),
  check: ({ corners, converters }) => {
    const found = new Map<string, Finding>();
    for (const corner of corners) {
      if (corner.status !== "solved") continue;
      for (const { id, inputV, off } of corner.converters) {
        const converter = converters.get(id);
        if (!converter) continue;
        const high = !within(inputV, converter.maxInputV);
        if (!high && !off && atLeast(inputV, converter.minInputV)) continue;
        const key = `${id} ${high}`;
        if (found.has(key)) continue;
        found.set(key, {
          rule: "converter-input",
          level: high ? "stop" : "mend",
          at: id,
          figure: inputV,
          limit: high ? converter.maxInputV : converter.minInputV,
          unit: "V",
          terms: { corner: corner.name, side: high ? "over" : "under" },
        });
      }
    }
    return [...found.values()];
  },
});
