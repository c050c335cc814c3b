import { shortCircuitPerAh } from "../../reference/batteries.js";
import { boltedFuses } from "../../reference/fuses.js";
import type { Protection } from "../model/common.js";
import type { Chemistry } from "../model/supply.js";

/**
 * Kind of main fuse taken where the owner names none: one that is made to break what the battery drives into a dead short.
 * A cartridge's own figure must still come from its maker; until it is in the plan, that condition is not checked.
 * @param shortCircuitA The battery's own figure [A]; undefined: the usual for its chemistry and capacity.
 */
export function usualMainDevice(
  chemistry: Chemistry,
  capacityAh: number,
  shortCircuitA: number = shortCircuitPerAh[chemistry] * capacityAh,
): Protection["device"] {
  const boltedCan = chemistry !== "lifepo4" && shortCircuitA <= boltedFuses.interruptingA;
  return boltedCan ? "bolted fuse" : "cartridge fuse";
}
