import { type DeviceKind, deviceKinds } from "../devices.js";
import type { NearerDevice } from "../guard.js";
import { greatestOperatingS, leastOperatingS } from "../operating-time.js";
import type { PreparedGuard } from "../prepared.js";
import type { ConditionResult } from "../types.js";
import { conditionResult } from "./result.js";

/** Both devices of the comparison, at their ratings [A]. */
interface Pair {
  readonly branch: DeviceKind;
  readonly branchA: number;
  readonly main: DeviceKind;
  readonly mainA: number;
}

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
  const leastA = leastOpeningA(kind, ratingA);
  if (nearer.ratingA === undefined || nearShortA === undefined || nearShortA < leastA)
    return conditionResult("before-main", "unchecked", "s", undefined, undefined, nearer.id);
  const pair = { branch: kind, branchA: ratingA, main: deviceKinds[nearer.device], mainA: nearer.ratingA };
  let worstBranchS = 0;
  let worstMainS = Infinity;
  let unknown = false;
  for (let corner = 0; corner < cornersOf(pair); corner += 1) {
    const faultA = cornerA(pair, corner, nearShortA);
    if (faultA < leastA || faultA > nearShortA) continue;
    const mainS = leastOperatingS(pair.main, pair.mainA, faultA);
    if (mainS === Infinity) continue;
    const branchS = greatestOperatingS(kind, ratingA, faultA);
    if (mainS === undefined || branchS === undefined) unknown = true;
    else if (branchS / mainS > worstBranchS / worstMainS) {
      worstBranchS = branchS;
      worstMainS = mainS;
    }
  }
  const failed = !(worstBranchS < worstMainS);
  const state = failed ? "fails" : unknown ? "unchecked" : "holds";
  if (worstMainS === Infinity)
    return conditionResult("before-main", state, "s", undefined, undefined, nearer.id);
  return conditionResult("before-main", state, "s", worstBranchS, worstMainS, nearer.id);
}

/** Does `beforeMain` fail at a rating of the device nearer the source? Asked of every pair of standard ratings, so it makes no result. */
export function failsBeforeMain(
  { kind, nearShortA }: PreparedGuard,
  ratingA: number,
  nearer: NearerDevice["device"],
  nearerA: number,
): boolean {
  if (nearShortA === undefined) return false;
  const main = deviceKinds[nearer];
  // up to its first row the main never opens
  const leastA = Math.max(leastOpeningA(kind, ratingA), (main.times.rows[0]?.share ?? 0) * nearerA);
  if (nearShortA < leastA) return false;
  const pair = { branch: kind, branchA: ratingA, main, mainA: nearerA };
  // the greatest fault is its last corner and the likeliest to fail
  for (let corner = cornersOf(pair) - 1; corner >= 0; corner -= 1) {
    const faultA = cornerA(pair, corner, nearShortA);
    if (faultA < leastA || faultA > nearShortA) continue;
    const mainS = leastOperatingS(main, nearerA, faultA);
    if (mainS === undefined || mainS === Infinity) continue;
    const branchS = greatestOperatingS(kind, ratingA, faultA);
    if (branchS !== undefined && !(branchS < mainS)) return true;
  }
  return false;
}

/** Least fault current that surely opens a device [A]. */
function leastOpeningA({ times }: DeviceKind, ratingA: number): number {
  return (times.rows.find(({ maxS }) => maxS !== undefined)?.share ?? Infinity) * ratingA;
}

/** Fault currents at which one of the two limits bends, and the greatest. */
function cornersOf({ branch, main }: Pair): number {
  return branch.times.rows.length + main.times.rows.length + 1;
}

function cornerA({ branch, branchA, main, mainA }: Pair, corner: number, greatestA: number): number {
  const ofBranch = branch.times.rows[corner];
  if (ofBranch) return ofBranch.share * branchA;
  const ofMain = main.times.rows[corner - branch.times.rows.length];
  return ofMain ? ofMain.share * mainA : greatestA;
}
