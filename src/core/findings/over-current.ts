import { within } from "../quantity/within.js";
import type { Finding } from "./finding.js";
import type { Load } from "./loads.js";

/** A finding for a conductor that carries more than it may, or whose figures are missing; none if it is well. */
export function overCurrent(rule: string, { run, choice, currentA, sharedReturn }: Load): Finding[] {
  const limit = choice.ampacityA;
  const about = { rule, at: run.name, unit: "A", terms: { size: choice.size.key } } as const;
  if (Number.isNaN(currentA) || Number.isNaN(limit)) return [{ ...about, level: "unchecked" }];
  if (within(currentA, limit)) return [];
  const field = choice.id.endsWith(" / return") ? "return size" : "size";
  return [
    {
      ...about,
      level: "stop",
      figure: currentA,
      limit,
      working: [
        { symbol: sharedReturn ? "ΣI" : "I", value: currentA, unit: "A" },
        { symbol: "I allowed here", value: limit, unit: "A" },
        { symbol: "size", value: choice.size.key },
        { symbol: "insulation", value: run.insulationC, unit: "°C" },
      ],
      ...(choice.fixedByOwner ? { remedies: [{ edit: "remove field", at: run.group, field }] } : {}),
    },
  ];
}
