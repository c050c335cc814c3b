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
  if (nearShortA === undefined || nearShortA < leastOpeningA(kind, ratingA)) return false;
  const main = deviceKinds[nearer];
  const leastA = leastFailingShare(kind, main, nearerA / ratingA) * ratingA;
  return leastA <= nearShortA || failsAt(kind, ratingA, main, nearerA, nearShortA);
}

function failsAt(
  branch: DeviceKind,
  branchA: number,
  main: DeviceKind,
  mainA: number,
  faultA: number,
): boolean {
  const mainS = leastOperatingS(main, mainA, faultA);
  if (mainS === undefined || mainS === Infinity) return false;
  const branchS = greatestOperatingS(branch, branchA, faultA);
  return branchS !== undefined && !(branchS < mainS);
}

/** Of two kinds, by the ratio of their ratings. It follows from the reference tables alone, so it never goes stale. */
const leastFailing = new Map<DeviceKind, Map<DeviceKind, Map<number, number>>>();

/** Least fault at which one of the two limits bends and the main may open first, as a share of the branch's rating; Infinity: none. */
function leastFailingShare(branch: DeviceKind, main: DeviceKind, ratio: number): number {
  const byMain = leastFailing.get(branch) ?? new Map<DeviceKind, Map<number, number>>();
  leastFailing.set(branch, byMain);
  const byRatio = byMain.get(main) ?? new Map<number, number>();
  byMain.set(main, byRatio);
  const known = byRatio.get(ratio);
  if (known !== undefined) return known;
  const leastShare = leastOpeningA(branch, 1);
  const bends = [
    ...branch.times.rows.map(({ share }) => share),
    ...main.times.rows.map(({ share }) => share * ratio),
  ];
  const failing = bends.filter((share) => share >= leastShare && failsAt(branch, 1, main, ratio, share));
  const least = failing.reduce((low, share) => Math.min(low, share), Infinity);
  byRatio.set(ratio, least);
  return least;
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
