import type { GearPeriod, OutingGear, OutingInput } from "./outing.js";

/** What is on in a stretch of time. Two stretches with the same key have the same object. */
export interface OnState {
  readonly key: string;
  /** Level of each piece of gear while the gear that runs on and off is off, and while all of it is on. */
  readonly base: Float64Array;
  readonly peak: Float64Array;
  /** Share of the time at `peak`, for each piece of gear that runs on and off; NaN for the others. */
  readonly duty: Float64Array;
  /** Gear (index) that runs on and off; empty: `base` and `peak` are alike. */
  readonly cycling: readonly number[];
}

export interface Interval {
  readonly fromH: number;
  readonly toH: number;
  readonly state: OnState;
}

/** More times of change than this are moved to a grid of as many steps. */
const maxChanges = 1000;

/** Gear that shares one stretch of time, duty and level. */
interface Together {
  readonly period: GearPeriod;
  readonly gear: number[];
}

function checkPeriod({ id }: OutingGear, { fromH, toH, duty, level }: GearPeriod): void {
  const share = (name: string, value: number): void => {
    if (!(value >= 0 && value <= 1)) throw new RangeError(`${id}: ${name} must be 0…1, got ${value}`);
  };
  if (!(fromH <= toH))
    throw new RangeError(`${id}: a period must end after it begins, got ${fromH} h to ${toH} h`);
  share("duty", duty);
  share("level", level);
}

function together({ gear }: OutingInput): Together[] {
  const groups = new Map<string, Together>();
  for (const [index, piece] of gear.entries()) {
    for (const period of piece.periods) {
      checkPeriod(piece, period);
      if (period.duty === 0 || period.level === 0) continue;
      const key = `${period.fromH} ${period.toH} ${period.duty} ${period.level}`;
      const known = groups.get(key);
      if (known) known.gear.push(index);
      else groups.set(key, { period, gear: [index] });
    }
  }
  return [...groups.values()];
}

function stateOf(key: string, active: readonly Together[], gearCount: number): OnState {
  const base = new Float64Array(gearCount);
  const peak = new Float64Array(gearCount);
  const duty = new Float64Array(gearCount).fill(Number.NaN);
  for (const { period, gear } of active) {
    for (const index of gear) {
      if (period.duty === 1) base[index] = Math.max(base[index] ?? 0, period.level);
      else duty[index] = Math.max(Number.isNaN(duty[index]) ? 0 : (duty[index] ?? 0), period.duty);
      peak[index] = Math.max(peak[index] ?? 0, period.level);
    }
  }
  const cycling: number[] = [];
  for (let index = 0; index < gearCount; index += 1) {
    // a stretch of running on and off within one of running on adds nothing
    if ((peak[index] ?? 0) > (base[index] ?? 0)) cycling.push(index);
    else duty[index] = Number.NaN;
  }
  return { key, base, peak, duty, cycling };
}

/**
 * Cuts an outing at every change of what is on.
 * @returns Intervals in order, without gaps, from 0 to `lastsH`.
 * @throws RangeError if the outing lasts no time, a period ends before it begins, or a share is outside 0…1.
 */
export function intervalsOf(input: OutingInput): readonly Interval[] {
  const { lastsH } = input;
  if (!(lastsH > 0 && lastsH < Infinity)) throw new RangeError(`an outing must last > 0 h, got ${lastsH}`);
  const groups = together(input);
  const clipped = (timeH: number): number => Math.min(lastsH, Math.max(0, timeH));
  let snap = clipped;
  const distinct = (): number[] => {
    const times = groups.flatMap(({ period }) => [snap(period.fromH), snap(period.toH)]);
    return [...new Set([0, lastsH, ...times])].sort((a, b) => a - b);
  };
  let times = distinct();
  if (times.length > maxChanges) {
    snap = (timeH) => (Math.round((clipped(timeH) / lastsH) * maxChanges) / maxChanges) * lastsH;
    times = distinct();
  }
  const begins = new Map<number, number[]>(times.map((timeH) => [timeH, []]));
  const ends = new Map<number, number[]>(times.map((timeH) => [timeH, []]));
  for (const [group, { period }] of groups.entries()) {
    begins.get(snap(period.fromH))?.push(group);
    ends.get(snap(period.toH))?.push(group);
  }
  const active = new Set<number>();
  const states = new Map<string, OnState>();
  return times.slice(0, -1).map((fromH, index): Interval => {
    for (const group of begins.get(fromH) ?? []) active.add(group);
    for (const group of ends.get(fromH) ?? []) active.delete(group);
    const sorted = [...active].sort((a, b) => a - b);
    const key = sorted.join(" ");
    const on = sorted.flatMap((group) => groups[group] ?? []);
    const state = states.get(key) ?? stateOf(key, on, input.gear.length);
    states.set(key, state);
    return { fromH, toH: times[index + 1] ?? lastsH, state };
  });
}
