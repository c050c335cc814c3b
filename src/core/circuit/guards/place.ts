import type { CompletePlan, CompleteRun } from "../../plan/completed.js";
import type { GuardPlace } from "../protection/guard.js";
import type { Device, TopologyBranch } from "../topology/types.js";

/** Where the devices of a plan sit. */
export class Places {
  private readonly batteries: ReadonlySet<string>;
  /** First run that brings each panel its feed. */
  private readonly feedOf = new Map<string, CompleteRun>();

  constructor(private readonly plan: CompletePlan) {
    this.batteries = new Set(plan.batteries.map(({ name }) => name));
    const panels = new Set(plan.panels.map(({ name }) => name));
    for (const run of plan.runs) {
      const panel = run.to.place;
      if (!panels.has(panel) || this.feedOf.has(panel)) continue;
      if (run.carries.includes(plan.circuitOf.get(panel) ?? "")) this.feedOf.set(panel, run);
    }
  }

  /**
   * How far along the conductor a device sits from where its current comes from. On a panel that another device guards, the
   * source is the bus beside it. Where no other device stands before a panel, it is the whole feed from the battery.
   * @param branch The device as a branch of the circuit.
   */
  of({ protection, at, of }: Device, branch: TopologyBranch | undefined, hasNearer: boolean): GuardPlace {
    const { fromSourceM, enclosed = false } = protection;
    const supply = this.plan.circuits.get(branch?.circuits[0] ?? "")?.supply ?? "";
    const isBattery = this.batteries.has(supply);
    if (fromSourceM !== undefined) {
      const startsAt = at === "battery" || (!hasNearer && isBattery) ? "battery post" : "bus";
      return { fromSourceM, enclosed, startsAt };
    }
    if (at === "panel" || at === "way") {
      if (hasNearer) return { fromSourceM: 0, enclosed: true, startsAt: "bus" };
      const feed = this.feedOf.get(at === "panel" ? of : of.slice(0, of.lastIndexOf(" / ")));
      if (feed)
        return {
          fromSourceM: feed.lengthM,
          enclosed: feed.sheathed,
          startsAt: isBattery ? "battery post" : "bus",
        };
    }
    return { enclosed, startsAt: at === "battery" || isBattery ? "battery post" : "bus" };
  }
}
