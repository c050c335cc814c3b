import { useEffect, useState } from "react";
import { usePlan, usePlanStore } from "../../app/context.js";
import type { LoggedStep } from "../../state/keep/history.js";

/** What was read of the history; undefined while nothing has been. */
export type Read<T> = { readonly is: "read"; readonly found: T } | { readonly is: "failed" } | undefined;

/** So many steps, the last one first, and anew whenever the plan has changed. */
export function useNewestSteps(count: number): Read<readonly LoggedStep[]> {
  const store = usePlanStore();
  const record = usePlan((state) => state.record);
  return useRead(() => store.newestSteps(record, count), [store, record, count]);
}

/** The texts of two states. */
export function useTexts(before: number, after: number): Read<readonly (string | undefined)[]> {
  const store = usePlanStore();
  return useRead(() => Promise.all([store.textOf(before), store.textOf(after)]), [store, before, after]);
}

/** What was read last stays until the next is here. */
function useRead<T>(read: () => Promise<T>, asked: readonly unknown[]): Read<T> {
  const [answer, setAnswer] = useState<Read<T>>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is asked for says when to read anew
  useEffect(() => {
    let wanted = true;
    read().then(
      (found) => wanted && setAnswer({ is: "read", found }),
      () => wanted && setAnswer({ is: "failed" }),
    );
    return () => {
      wanted = false;
    };
  }, asked);
  return answer;
}
