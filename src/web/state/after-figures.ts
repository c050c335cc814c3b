import type { PlanStore } from "./plan-store.js";

/** Time for the first paint of the figures to be over [ms]. */
const paintedMs = 800;

/** Does what can wait once the plan is on screen with its figures. @returns how to let it be. */
export function afterFigures(store: PlanStore, work: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const look = () => {
    if (store.get().outcome === undefined || timer !== undefined) return;
    timer = setTimeout(work, paintedMs);
  };
  const stop = store.subscribe(look);
  look();
  return () => {
    stop();
    clearTimeout(timer);
  };
}
