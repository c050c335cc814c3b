import { useCallback, useEffect, useState } from "react";
import { usePlan, usePlanStore } from "../../app/context.js";
import type { LoggedStep } from "../../state/keep/history.js";

/** What was read of the history; undefined while nothing has been. */
export type Read<T> = { readonly is: "read"; readonly found: T } | { readonly is: "failed" } | undefined;

/** So many steps, the last one first, and anew whenever the plan has changed. */
export function useNewestSteps(count: number): Read<readonly LoggedStep[]> {
  const store = usePlanStore();
  const record = usePlan((state) => state.record);
  return useRead(useCallback(() => store.newestSteps(record, count), [store, record, count]));
}

/** The texts of two states. */
export function useTexts(before: number, after: number): Read<readonly (string | undefined)[]> {
  const store = usePlanStore();
  return useRead(
    useCallback(() => Promise.all([store.textOf(before), store.textOf(after)]), [store, before, after]),
  );
}

/** Reads whenever `read` is another; what was read last stays until the next is here. */
function useRead<T>(read: () => Promise<T>): Read<T> {
  const [answer, setAnswer] = useState<Read<T>>();
  useEffect(() => {
    let wanted = true;
    read().then(
      (found) => wanted && setAnswer({ is: "read", found }),
      () => wanted && setAnswer({ is: "failed" }),
    );
    return () => {
      wanted = false;
    };
  }, [read]);
  return answer;
}
