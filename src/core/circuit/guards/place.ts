import type { CompletePlan } from "../../plan/completed.js";
import type { GuardPlace } from "../protection/guard.js";
import type { Device, TopologyBranch } from "../topology/types.js";

/**
 * How far along the conductor a device sits from where its current comes from. On a panel that another device guards, the
 * source is the bus beside it. Where no other device stands before a panel, it is the whole feed from the battery.
 */
export function placeOf(
  device: Device,
  branch: TopologyBranch | undefined,
  plan: CompletePlan,
  hasNearer: boolean,
): GuardPlace {
  const { protection, at, of } = device;
  const enclosed = protection.enclosed ?? false;
  const supply = plan.circuits.get(branch?.circuits[0] ?? "")?.supply;
  const isBattery = plan.batteries.some(({ name }) => name === supply);
  if (protection.fromSourceM !== undefined) {
    const startsAt = at === "battery" || (!hasNearer && isBattery) ? "battery post" : "bus";
    return { fromSourceM: protection.fromSourceM, enclosed, startsAt };
  }
  if (at === "panel" || at === "way") {
    if (hasNearer) return { fromSourceM: 0, enclosed: true, startsAt: "bus" };
    const panel =
      at === "panel" ? of : (plan.panels.find(({ name }) => of.startsWith(`${name} / `))?.name ?? "");
    const feeds = plan.runs.filter(
      (run) => run.to.place === panel && run.carries.includes(plan.circuitOf.get(panel) ?? ""),
    );
    const fed = feeds[0];
    if (fed)
      return {
        fromSourceM: fed.lengthM,
        enclosed: fed.sheathed,
        startsAt: isBattery ? "battery post" : "bus",
      };
  }
  return { enclosed, startsAt: at === "battery" || isBattery ? "battery post" : "bus" };
}
