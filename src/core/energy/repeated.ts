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
  return batteries.flatMap(({ plan, model, cells }, index) => {
    const fullCharge = middle(cells, 0);
    const lowCharge = middle(cells, cellOf(cells, plan.reserveShare));
    const effectiveA = (state: OnState, charge: number): number => {
      const use = uses.get(state);
      const [full, low] = [use?.full[index] ?? 0, use?.low[index] ?? 0];
      return fullCharge === lowCharge
        ? full
        : full + ((low - full) * (fullCharge - charge)) / (fullCharge - lowCharge);
    };
    let charge = 1;
    let beganH = 0;
    const lastsH = intervals.at(-1)?.toH ?? 0;
    for (let outing = 0; outing < maxOutings; outing += 1) {
      const before = charge;
      for (const { fromH, toH, state } of intervals) {
        const fall = (at: number): number => (effectiveA(state, at) * (toH - fromH)) / model.capacityAh;
        const step = fall(charge - fall(charge) / 2);
        if (charge - step <= plan.reserveShare) {
          const part = step > 0 ? (charge - plan.reserveShare) / step : 0;
          return [{ battery: plan.id, hours: beganH + fromH + part * (toH - fromH) }];
        }
        charge = Math.min(1, charge - step);
      }
      beganH += lastsH;
      const used = before - charge;
      if (!(used > noUse)) return [];
      if (outing === maxOutings - 1) {
        return [{ battery: plan.id, hours: beganH + ((charge - plan.reserveShare) / used) * lastsH }];
      }
    }
    return [];
  });
}
