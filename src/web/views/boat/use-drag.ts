import { useEffect, useState, useSyncExternalStore } from "react";
import { usePlanStore } from "../../app/context.js";
import type { Drag } from "./drag.js";
import { Hand, type HandAround } from "./hand.js";
import { usePreview } from "./use-preview.js";

/** The hand of this view. Who has it hears nothing of its steps: `useInHand` does. */
export function useDrag(around: HandAround): Hand {
  const store = usePlanStore();
  const preview = usePreview(store);
  const [hand] = useState(() => new Hand(store, preview, around));
  hand.movesIn(around);
  useEffect(() => {
    // leaving the view or the page puts down what is in hand
    addEventListener("pagehide", hand.drop);
    return () => {
      removeEventListener("pagehide", hand.drop);
      hand.drop();
    };
  }, [hand]);
  return hand;
}

/** What is in the hand, step by step. */
export function useInHand(hand: Hand): Drag | undefined {
  return useSyncExternalStore(hand.subscribe, hand.now);
}

/** Names of all that is in the hand, a line each. */
export function useNamesInHand(hand: Hand): string | undefined {
  return useSyncExternalStore(hand.subscribe, hand.names);
}
