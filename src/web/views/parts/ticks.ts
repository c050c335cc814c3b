import { useCallback, useState } from "react";
import { smallStorage } from "../../state/preferences.js";

const keyOf = (plan: string) => `skiffloom basket ${plan}`;

function read(plan: string): ReadonlySet<string> {
  try {
    const kept: unknown = JSON.parse(smallStorage()?.getItem(keyOf(plan)) ?? "[]");
    return new Set(Array.isArray(kept) ? kept.filter((item) => typeof item === "string") : []);
  } catch {
    return new Set();
  }
}

/** What lies in the basket, kept in this browser for this plan, so that a reload in the shop loses nothing. */
export function useTicks(plan: string) {
  const [ticked, setTicked] = useState(() => read(plan));
  const keep = useCallback(
    (next: ReadonlySet<string>) => {
      setTicked(next);
      try {
        smallStorage()?.setItem(keyOf(plan), JSON.stringify([...next]));
      } catch {
        // A full or closed store: the ticks hold until the page is left.
      }
    },
    [plan],
  );
  const tick = (item: string, done: boolean) => {
    const next = new Set(ticked);
    if (done) next.add(item);
    else next.delete(item);
    keep(next);
  };
  return { ticked, tick, clear: () => keep(new Set()) };
}
