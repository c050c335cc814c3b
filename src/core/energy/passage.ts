import { BrownOutWatch } from "./brown-outs.js";
import type { Drawn, Draws } from "./draws.js";
import type { FollowedBattery } from "./followed-battery.js";
import type { OutingInput } from "./outing.js";
import type { Interval } from "./timeline.js";
import type { BrownOut } from "./types.js";

/** Batteries that charge each other could cross a bound for ever: after so many steps for each, steps are no shorter than a share of the outing. */
const boundStepsEach = 300;
const leastStepShare = 1 / 2000;

export interface Passed {
  readonly brownOuts: readonly BrownOut[];
  /** By index of gear [Ah]. */
  readonly gearAh: Float64Array;
}

/**
 * Follows the batteries through the intervals of an outing. Within a stretch of charge the currents are constant, so each step
 * runs to the next bound, stop or change and is exact; steps are bounded in number.
 */
export function passOuting(
  input: OutingInput,
  intervals: readonly Interval[],
  batteries: readonly FollowedBattery[],
  draws: Draws,
  batteryOf: readonly number[],
): Passed {
  const watch = new BrownOutWatch(input.gear, batteries, batteryOf);
  const gearAh = new Float64Array(input.gear.length);
  let boundSteps = boundStepsEach * batteries.length;
  for (const { fromH, toH, state } of intervals) {
    let atH = fromH;
    let begins = true;
    while (atH < toH) {
      const drawn = draws.at(
        state,
        batteries.map(({ cell }) => cell),
      );
      const falls = batteries.map((battery, index) => battery.fallPerH(drawn.effectiveA[index] ?? 0));
      if (begins) note(batteries, atH, drawn);
      begins = false;
      const leastH = boundSteps > 0 ? 0 : input.lastsH * leastStepShare;
      const step = stepOf(batteries, falls, drawn, toH - atH, leastH);
      if (step.stepH < toH - atH) boundSteps -= 1;
      const nextH = step.stepH < toH - atH ? atH + step.stepH : toH;
      watch.look(state, drawn, falls, atH, step.stepH);
      for (let gear = 0; gear < gearAh.length; gear += 1) {
        gearAh[gear] = (gearAh[gear] ?? 0) + (drawn.gearA[gear] ?? 0) * step.stepH;
      }
      batteries.forEach((battery, index) => {
        if (battery.stopped) return;
        battery.advance(atH, step.stepH, falls[index] ?? 0, drawn.batteryA[index] ?? 0);
        if (step.stops.includes(index)) {
          battery.note(nextH, drawn.batteryA[index] ?? 0);
          battery.stop(nextH);
        }
      });
      if (nextH > atH) note(batteries, nextH, drawn);
      atH = nextH;
    }
  }
  return { brownOuts: watch.found(), gearAh };
}

function note(batteries: readonly FollowedBattery[], atH: number, drawn: Drawn): void {
  batteries.forEach((battery, index) => {
    battery.note(atH, drawn.batteryA[index] ?? 0);
  });
}

/** How long the currents stay as they are, and which batteries stop at the end of it. */
function stepOf(
  batteries: readonly FollowedBattery[],
  falls: readonly number[],
  drawn: Drawn,
  leftH: number,
  leastH: number,
): { readonly stepH: number; readonly stops: readonly number[] } {
  let stepH = leftH;
  batteries.forEach((battery, index) => {
    const fall = falls[index] ?? 0;
    const emptyH = fall > 0 && !battery.stopped ? battery.charge / fall : Infinity;
    stepH = Math.min(stepH, Math.max(leastH, battery.hoursInCell(fall)), emptyH);
  });
  let stops: number[] = [];
  batteries.forEach((battery, index) => {
    if (battery.stopped || !((drawn.peakBatteryA[index] ?? 0) > 0)) return;
    const hours = battery.hoursToCutOff(stepH, falls[index] ?? 0, drawn.peakBatteryA[index] ?? 0);
    if (hours === undefined || hours > stepH) return;
    stops = hours < stepH ? [index] : [...stops, index];
    stepH = hours;
  });
  return { stepH, stops };
}
