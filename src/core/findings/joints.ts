import type { CompleteGear, CompletePlan, CompleteRun } from "../plan/completed.js";
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
  const facts: JointFact[] = [];
  for (const run of plan.runs) {
    const asWritten = written.get(run.group);
    for (const end of ends) {
      const place = end === "start" ? run.from.place : run.to.place;
      const there = gear.get(place);
      const joint = end === "start" ? run.jointAtStart : run.jointAtEnd;
      if (there) {
        facts.push(...jointsAtGear(run, end, there, asWritten));
        continue;
      }
      const placeKind = batteries.has(place) ? "battery" : "other";
      const surroundings = surroundingsAt(place, places);
      facts.push({ joint, place, placeKind, surroundings, runName: run.name, run: run.group, end });
    }
  }
  return facts;
}

const ends = ["start", "end"] as const;

function jointsAtGear(
  run: CompleteRun,
  end: "start" | "end",
  there: CompleteGear,
  asWritten: Run | undefined,
): JointFact[] {
  // In a chain the start as written is that of its first cable; the others start in the joint of the gear before.
  if (end === "start" && asWritten?.from.place !== there.name) return [];
  const ownJoint = end === "start" ? asWritten?.jointAtStart : asWritten?.jointAtEnd;
  if (end === "start" && ownJoint === undefined) return [];
  const surroundings = asWritten?.surroundings ?? there.surroundings;
  const { name: place, group: gear, joint } = there;
  const { name: runName, group } = run;
  const lead: JointFact = { joint, place, placeKind: "gear", surroundings, runName, gear };
  if (ownJoint === undefined) return [lead];
  const own: JointFact = { ...lead, joint: ownJoint, run: group, end };
  return end === "start" || ownJoint === joint ? [own] : [lead, own];
}

function surroundingsAt(place: string, places: Lookup["places"]): Surroundings {
  for (const table of places) {
    const found = table.get(place);
    if (found) return found.surroundings;
  }
  return "splash";
}
