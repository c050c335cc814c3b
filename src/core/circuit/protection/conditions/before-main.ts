import { deviceKinds } from "../devices.js";
import type { NearerDevice } from "../guard.js";
import { greatestOperatingS, leastOperatingS } from "../operating-time.js";
import type { PreparedGuard } from "../prepared.js";
import type { ConditionResult } from "../types.js";
import { conditionResult } from "./result.js";

/**
 * At every fault current from the least that opens the branch to the greatest the source can drive, the branch has surely
 * opened before the device nearer the source could. Both limits are straight between rows on logarithms, so the corners decide.
 * The load the main carries besides the fault is left out.
 * @param nearer The device nearer the source; undefined: there is none, and the condition does not apply.
 */
export function beforeMain(
  prepared: PreparedGuard,
  ratingA: number,
  nearer: NearerDevice | undefined,
): ConditionResult | undefined {
  if (nearer === undefined) return undefined;
  const { kind, nearShortA } = prepared;
  const mainA = nearer.ratingA;
  const main = deviceKinds[nearer.device];
  const leastA = (kind.times.rows.find(({ maxS }) => maxS !== undefined)?.share ?? Infinity) * ratingA;
  if (mainA === undefined || nearShortA === undefined || nearShortA < leastA) {
    return conditionResult("before-main", "unchecked", "s", undefined, undefined, nearer.id);
  }
  let [worstBranchS, worstMainS] = [0, Infinity];
  let unknown = false;
  const compare = (currentA: number): void => {
    if (currentA < leastA || currentA > nearShortA) return;
    const mainS = leastOperatingS(main, mainA, currentA);
    if (mainS === Infinity) return;
    const branchS = greatestOperatingS(kind, ratingA, currentA);
    if (mainS === undefined || branchS === undefined) unknown = true;
    else if (branchS / mainS > worstBranchS / worstMainS) [worstBranchS, worstMainS] = [branchS, mainS];
  };
  for (const { share } of kind.times.rows) compare(share * ratingA);
  for (const { share } of main.times.rows) compare(share * mainA);
  compare(nearShortA);
  const failed = !(worstBranchS < worstMainS);
  const state = failed ? "fails" : unknown ? "unchecked" : "holds";
  if (worstMainS === Infinity)
    return conditionResult("before-main", state, "s", undefined, undefined, nearer.id);
  return conditionResult("before-main", state, "s", worstBranchS, worstMainS, nearer.id);
}
