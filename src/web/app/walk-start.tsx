import { lazy, Suspense, useEffect, useState } from "react";
import { figuresShown } from "../state/plan-state.js";
import { usePlan, usePlanStore, usePreferences } from "./context.js";
import { useSelection } from "./place.js";

const Walk = lazy(() => import("../views/walk/walk.js"));
const wanted = "skiffloom-walk";

/** Starts the walk for whoever asks for it. */
export function askForWalk(): void {
  dispatchEvent(new Event(wanted));
}

/** The walk through the page: by itself on the first example a person opens, and whenever it is asked for. */
export function WalkStart() {
  const store = usePlanStore();
  const head = usePlan(({ record }) => record.head);
  const ready = usePlan((state) => figuresShown(state) !== undefined);
  const [{ walk }] = usePreferences();
  const [, select] = useSelection();
  const [asked, setAsked] = useState(false);
  useEffect(() => {
    const ask = () => setAsked(true);
    addEventListener(wanted, ask);
    return () => removeEventListener(wanted, ask);
  }, []);
  const about = head === 1 ? store.made : undefined;
  const first = walk === "new" && about?.did === "made" && about.from === "example";
  const [begun, setBegun] = useState(first);
  if (!ready || !(asked || begun)) return null;
  const leave = () => {
    setAsked(false);
    setBegun(false);
  };
  return (
    <Suspense fallback={null}>
      <Walk selectFirst={() => select(figuresShown(store.get())?.plan.gear[0]?.name)} leave={leave} />
    </Suspense>
  );
}
