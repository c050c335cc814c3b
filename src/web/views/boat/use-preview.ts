import { useEffect, useRef } from "react";
import { afterFigures } from "../../state/after-figures.js";
import type { PlanStore } from "../../state/plan-store.js";
import { Preview } from "./preview.js";

/** Figures that follow what is in the hand, until the view is left. */
export function usePreview(store: PlanStore): Pick<Preview, "getReady" | "follow" | "stop"> {
  const preview = useRef<Preview>(undefined);
  preview.current ??= new Preview(store);
  const { current } = preview;
  useEffect(() => {
    const letBe = afterFigures(store, () => void current.getReady());
    return () => {
      letBe();
      current.close();
    };
  }, [current, store]);
  return current;
}
