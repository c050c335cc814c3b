import type { CompletePlan } from "../plan/completed.js";
import type { Protection, Surroundings, Switch } from "../plan/model/common.js";

/** A fuse, breaker or switch, what has it, and what surrounds the place it sits at. */
export interface DeviceAt {
  readonly at: string;
  readonly kind: "fuse" | "switch";
  readonly device: Protection | Switch;
  readonly place: Surroundings;
}

/** Every protective device and switch of the plan. */
export function devicesOf(plan: CompletePlan): DeviceAt[] {
  const found: DeviceAt[] = [];
  const add = (
    at: string,
    place: Surroundings,
    protection?: Protection | "none",
    device?: Switch | "none",
  ) => {
    if (protection !== undefined && protection !== "none")
      found.push({ at, kind: "fuse", device: protection, place });
    if (device !== undefined && device !== "none") found.push({ at, kind: "switch", device, place });
  };
  for (const { name, surroundings, main, master } of plan.batteries) add(name, surroundings, main, master);
  for (const panel of plan.panels) {
    add(panel.name, panel.surroundings, panel.main, panel.master);
    for (const way of panel.ways)
      add(`${panel.name} / ${way.name}`, panel.surroundings, way.protection, way.switch);
  }
  // A run passes several places; where its fuse sits is known only if the fuse says so.
  for (const run of plan.runs) add(run.name, "splash", run.protection, run.switch);
  return found;
}
