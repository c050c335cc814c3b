import type { CompleteBattery } from "../plan/completed.js";
import type { Facts } from "./facts.js";

/** Pairs of batteries wired in parallel, each pair once, however often the owner wrote it. */
export function parallelPairs({ plan, batteries }: Facts): [CompleteBattery, CompleteBattery][] {
  const seen = new Set<string>();
  return plan.batteries.flatMap((battery) =>
    battery.parallelWith.flatMap((name): [CompleteBattery, CompleteBattery][] => {
      const other = batteries.get(name);
      const key = [battery.name, name].sort().join("\n");
      if (!other || seen.has(key)) return [];
      seen.add(key);
      return [[battery, other]];
    }),
  );
}

export const isLithium = ({ chemistry }: { readonly chemistry: string }) => chemistry === "lifepo4";
