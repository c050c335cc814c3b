import { batteryModel } from "./battery-model.js";
import { chargeCells } from "./cells.js";
import { Draws } from "./draws.js";
import { FollowedBattery } from "./followed-battery.js";
import type { OutingInput } from "./outing.js";
import { passOuting } from "./passage.js";
import { hoursToReserve } from "./repeated.js";
import { intervalsOf } from "./timeline.js";
import type { BatteryTrace, OutingFigures } from "./types.js";

function traceOf(battery: FollowedBattery): BatteryTrace {
  return {
    battery: battery.plan.id,
    points: battery.points,
    usedAh: battery.usedAh,
    chargeLeft: battery.charge,
    ...(battery.reserveAtH !== undefined && { reserveAtH: battery.reserveAtH }),
    ...(battery.cutOffAtH !== undefined && { cutOffAtH: battery.cutOffAtH }),
    usableAh: battery.model.capacityAh,
  };
}

/** Where this very outing began with all batteries full and took each to its reserve, it has told the hours itself. */
function fromFull(batteries: readonly FollowedBattery[]): OutingFigures["hoursToReserve"] | undefined {
  const hours = batteries.flatMap(({ plan, reserveAtH }) =>
    plan.startCharge === 1 && reserveAtH !== undefined ? [{ battery: plan.id, hours: reserveAtH }] : [],
  );
  return hours.length === batteries.length ? hours : undefined;
}

/**
 * Follows every battery through an outing with the network solved along the way.
 * Currents are those of the middle of a narrow stretch of charge (0.6 % of nominal in EMF), so they are off by 0.3 % at most at any
 * moment where gear keeps its power or its resistance, and even out as the battery passes through.
 * @throws RangeError if a figure of a battery, a period or the outing is impossible, or gear names a battery that is not there.
 */
export function followOuting(input: OutingInput): OutingFigures {
  const intervals = intervalsOf(input);
  const known = input.batteries.map((plan) => {
    const model = batteryModel(plan);
    return { plan, model, cells: chargeCells(model, plan.nominalV) };
  });
  const indexOf = new Map(input.batteries.map(({ id }, index) => [id, index]));
  const batteryOf = input.gear.map(({ id, battery }) => {
    const index = indexOf.get(battery);
    if (index === undefined)
      throw new RangeError(`${id}: must live on a battery of the outing, got "${battery}"`);
    return index;
  });
  const draws = new Draws(
    input,
    known.map(({ model }) => model),
    known.map(({ cells }) => cells),
    batteryOf,
  );
  const batteries = known.map(({ plan, model, cells }) => new FollowedBattery(plan, model, cells));
  const { brownOuts, gearAh } = passOuting(input, intervals, batteries, draws, batteryOf);
  return {
    name: input.name,
    lastsH: input.lastsH,
    ...(input.startClockH !== undefined && { startClockH: input.startClockH }),
    batteries: batteries.map(traceOf),
    brownOuts,
    uses: input.gear
      .map(({ id, battery }, index) => ({ gear: id, battery, usedAh: gearAh[index] ?? 0 }))
      .filter(({ usedAh }) => usedAh > 0)
      .sort((a, b) => b.usedAh - a.usedAh),
    hoursToReserve: fromFull(batteries) ?? hoursToReserve(intervals, known, draws),
  };
}
