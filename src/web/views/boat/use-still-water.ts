import { usePlan } from "../../app/context.js";
import { useSame } from "../../parts/use-same.js";
import type { StillWater } from "../../state/figures/messages.js";

/** Where still water lies, as the figures last worked out say; undefined while there are none. */
export function useStillWater(): StillWater | undefined {
  return useSame(usePlan(({ outcome }) => (outcome?.is === "figures" ? outcome.water : undefined)));
}
