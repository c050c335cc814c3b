import type { CompleteGear, CompletePlan } from "../plan/completed.js";
import type { JointKind, Surroundings } from "../plan/model/common.js";
import type { Run } from "../plan/model/runs.js";

/** One joint in the boat: where it is, what it is, and which thing of the plan says so. */
export interface JointFact {
  readonly joint: JointKind;
  /** Place it is at: a box, panel, battery, converter or piece of gear. */
  readonly place: string;
  readonly surroundings: Surroundings;
  readonly placeKind: "gear" | "battery" | "other";
  /** The run it ends, if any, by the name it was written under; and which end. */
  readonly run?: string;
  readonly end?: "start" | "end";
  /** The single run it ends. */
  readonly runName: string;
  /** The gear whose own leads it joins, by the name it was written under. */
  readonly gear?: string;
}

interface Lookup {
  readonly gear: ReadonlyMap<string, CompleteGear>;
  readonly written: ReadonlyMap<string, Run>;
  readonly places: readonly ReadonlyMap<
    string,
    { readonly name: string; readonly surroundings: Surroundings }
  >[];
}

/**
 * All joints of the plan. At gear it is the joint of its leads that counts, and it lies where the run ends:
 * a pump stands in the bilge, but its joint is where its run says, if the run says so.
 */
export function jointsOf(plan: CompletePlan, { gear, written, places }: Lookup): JointFact[] {
  const batteries = new Set(plan.batteries.map(({ name }) => name));
  const around = (place: string) => {
    for (const table of places) {
      const found = table.get(place);
      if (found) return found.surroundings;
    }
    return "splash" as const;
  };
  return plan.runs.flatMap((run) =>
    (["start", "end"] as const).flatMap((end): JointFact[] => {
      const place = end === "start" ? run.from.place : run.to.place;
      const asWritten = written.get(run.group);
      // In a chain the start as written is that of its first cable; the others start in the joint of the gear before.
      if (end === "start" && gear.has(place) && asWritten?.from.place !== place) return [];
      const ownJoint = end === "start" ? asWritten?.jointAtStart : asWritten?.jointAtEnd;
      const joint = end === "start" ? run.jointAtStart : run.jointAtEnd;
      const there = gear.get(place);
      if (!there) {
        const placeKind = batteries.has(place) ? "battery" : "other";
        return [
          { joint, place, placeKind, surroundings: around(place), runName: run.name, run: run.group, end },
        ];
      }
      if (end === "start" && ownJoint === undefined) return [];
      const surroundings = asWritten?.surroundings ?? there.surroundings;
      const fact = { place, placeKind: "gear", surroundings, runName: run.name, gear: there.group } as const;
      const lead: JointFact = { ...fact, joint: there.joint };
      if (ownJoint === undefined) return [lead];
      const own: JointFact = { ...fact, joint: ownJoint, run: run.group, end };
      return end === "start" || ownJoint === there.joint ? [own] : [lead, own];
    }),
  );
}
