import type { BatteryModel } from "./battery-model.js";
import { type ChargeCells, cellOf } from "./cells.js";
import type { Draws } from "./draws.js";
import type { OutingBattery } from "./outing.js";
import type { Interval, OnState } from "./timeline.js";

/** Outings followed one after another; past these the last one's use is taken on. */
const maxOutings = 200;
/** A state that uses up less than this share of a battery's charge is solved at full charge only. */
const smallUse = 0.02;
/** An outing that uses less of the charge than this could be repeated for ever. */
const noUse = 1e-9;

interface Battery {
  readonly plan: OutingBattery;
  readonly model: BatteryModel;
  readonly cells: ChargeCells;
}

/** Charge in the middle of a cell. */
function middle({ bounds }: ChargeCells, cell: number): number {
  return ((bounds[cell] ?? 1) + (bounds[cell + 1] ?? 0)) / 2;
}

/** Use of charge by state, solved with all batteries full and with all at their reserve [A]. */
function usesOf(
  intervals: readonly Interval[],
  batteries: readonly Battery[],
  draws: Draws,
): ReadonlyMap<OnState, { readonly full: Float64Array; readonly low: Float64Array }> {
  const hours = new Map<OnState, number>();
  for (const { fromH, toH, state } of intervals) hours.set(state, (hours.get(state) ?? 0) + toH - fromH);
  const fullCells = batteries.map(() => 0);
  const lowCells = batteries.map(({ cells, plan }) => cellOf(cells, plan.reserveShare));
  const full = new Map([...hours.keys()].map((state) => [state, draws.at(state, fullCells).effectiveA]));
  const total = batteries.map((_battery, index) =>
    [...hours].reduce((sum, [state, hour]) => sum + hour * Math.abs(full.get(state)?.[index] ?? 0), 0),
  );
  return new Map(
    [...hours].map(([state, hour]) => {
      const fullA = full.get(state) ?? new Float64Array(batteries.length);
      const matters = fullA.some((use, index) => hour * Math.abs(use) > smallUse * (total[index] ?? 0));
      return [state, { full: fullA, low: matters ? draws.at(state, lowCells).effectiveA : fullA }];
    }),
  );
}

/** Use of charge that rises by a constant share for each hour, as it does on a straight line of the charge: du/dt = growth · u. */
interface Use {
  /** At the beginning [1/h]; negative: it is charged. */
  readonly perH: number;
  /** [1/h]. */
  readonly growthPerH: number;
}

function fallAfter({ perH, growthPerH }: Use, hours: number): number {
  if (Math.abs(growthPerH) * hours < 1e-9) return perH * hours;
  return (perH * Math.expm1(growthPerH * hours)) / growthPerH;
}

/** Hours until the charge has fallen by so much; Infinity where it never does. */
function hoursToFall({ perH, growthPerH }: Use, fall: number): number {
  if (fall <= 0) return 0;
  if (!(perH > 0)) return Infinity;
  const share = (growthPerH * fall) / perH;
  if (Math.abs(share) < 1e-9) return fall / perH;
  return share > -1 ? Math.log1p(share) / growthPerH : Infinity;
}

/**
 * Hours until each battery reaches its reserve if the outing is repeated as it stands, beginning full. Between full and reserve the use of
 * charge is taken on a straight line of the battery's own charge.
 * @returns Batteries that would ever reach it; others are left out.
 */
export function hoursToReserve(
  intervals: readonly Interval[],
  batteries: readonly Battery[],
  draws: Draws,
): readonly { readonly battery: string; readonly hours: number }[] {
  const uses = usesOf(intervals, batteries, draws);
  return batteries.flatMap((battery, index) => {
    const { plan, model, cells } = battery;
    const fullCharge = middle(cells, 0);
    const span = fullCharge - middle(cells, cellOf(cells, plan.reserveShare));
    const usageAt = (state: OnState, charge: number): Use => {
      const [full, low] = [uses.get(state)?.full[index] ?? 0, uses.get(state)?.low[index] ?? 0];
      const slope = span > 0 ? (low - full) / span : 0;
      return {
        perH: (full + slope * (fullCharge - charge)) / model.capacityAh,
        growthPerH: slope / model.capacityAh,
      };
    };
    const hours = repeatUntil(intervals, plan.reserveShare, usageAt);
    return hours === undefined ? [] : [{ battery: plan.id, hours }];
  });
}

/** Hours from full until the reserve; undefined: an outing uses up nothing. */
function repeatUntil(
  intervals: readonly Interval[],
  reserveShare: number,
  usageAt: (state: OnState, charge: number) => Use,
): number | undefined {
  const lastsH = intervals.at(-1)?.toH ?? 0;
  let charge = 1;
  let used = 0;
  for (let outing = 0; outing < maxOutings; outing += 1) {
    const before = charge;
    for (const { fromH, toH, state } of intervals) {
      const use = usageAt(state, charge);
      const reachedH = hoursToFall(use, charge - reserveShare);
      if (reachedH <= toH - fromH) return outing * lastsH + fromH + reachedH;
      charge = Math.min(1, charge - fallAfter(use, toH - fromH));
    }
    used = before - charge;
    if (!(used > noUse)) return undefined;
  }
  return maxOutings * lastsH + ((charge - reserveShare) / used) * lastsH;
}
