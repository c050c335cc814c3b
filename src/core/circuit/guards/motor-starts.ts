import type { CompleteGear } from "../../plan/completed.js";
import { usualMotorStart } from "../../reference/assumed.js";
import type { MotorStart } from "../protection/guard.js";
import type { Downstream } from "./downstream.js";

/**
 * What each device sees when, of all motors behind it and behind further devices, the one with the greatest surge starts while all else runs.
 * Linear: each device hands what it has found on to the next one nearer the source.
 * @param pieces Gear in the topology's order; `gearA` its steady current, `loadA` that of each device [A].
 */
export function motorStarts(
  { gear, nearer, outermostFirst }: Downstream,
  pieces: readonly (CompleteGear | undefined)[],
  gearA: Float64Array,
  loadA: readonly number[],
): MotorStart[] {
  const surgeA = gear.map(() => 0);
  const motors = gear.map(() => 0);
  const unknown = gear.map(() => 0);
  gear.forEach((behind, device) => {
    for (const index of behind) {
      const piece = pieces[index];
      if (piece?.behaviour !== "motor") continue;
      motors[device] = (motors[device] ?? 0) + 1;
      if (piece.startA === undefined) unknown[device] = (unknown[device] ?? 0) + 1;
      else surgeA[device] = Math.max(surgeA[device] ?? 0, piece.startA - (gearA[index] ?? 0));
    }
  });
  for (const device of outermostFirst) {
    const next = nearer[device] ?? -1;
    if (next < 0) continue;
    surgeA[next] = Math.max(surgeA[next] ?? 0, surgeA[device] ?? 0);
    motors[next] = (motors[next] ?? 0) + (motors[device] ?? 0);
    unknown[next] = (unknown[next] ?? 0) + (unknown[device] ?? 0);
  }
  return gear.map((_, device): MotorStart => {
    if (motors[device] === 0) return "none";
    if ((unknown[device] ?? 0) > 0) return "unknown";
    return { currentA: (loadA[device] ?? 0) + (surgeA[device] ?? 0), lastsS: usualMotorStart.lastsS };
  });
}
