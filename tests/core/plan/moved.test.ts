import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { buildTopology } from "../../../src/core/circuit/topology/build.js";
import { withRuns } from "../../../src/core/circuit/topology/with-runs.js";
import { completeMoved } from "../../../src/core/plan/complete/moved.js";
import { completePlan } from "../../../src/core/plan/complete.js";
import type { PlanPoint } from "../../../src/core/plan/model/form.js";
import type { Plan } from "../../../src/core/plan/model/plan.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { launchWithFreeLegs } from "../../free-legs.js";
import { seeded } from "../../laws/generated-network.js";

function planOf(text: string): Plan {
  const read = readPlan(text);
  if (!read.ok) throw new Error(`does not read: ${JSON.stringify(read.problems[0])}`);
  return read.plan;
}

// an invented boat: a row with a place each, a row all in one place, two ways from the battery to the bow of nearly the same length
const twoWays = planOf(`skiffloom: 1
name: Boat of two ways
rules: us
shows: {lengths: inches}
batteries: {house: {chemistry: agm, capacity: 50 Ah, stands at: [300 mm, 0 mm, 200 mm], main: {device: bolted fuse, rating: 40 A}}}
panels: {helm: {stands at: [2 m, 300 mm, 500 mm], ways: {lamps: {}, floor: {}}}}
boxes: {bow box: {stands at: [4 m, 0 mm, 400 mm]}}
gear:
  lamp: {count: 2, role: lighting, draws: 10 W, stands at: [[3.5 m, 400 mm, 600 mm], [3.5 m, -400 mm, 600 mm]]}
  floor lamp: {count: 2, role: lighting, draws: 2 W, stands at: [[1 m, 0 mm, 100 mm]]}
waypoints: {port knee: {at: [1.5 m, 500 mm, 300 mm]}, starboard knee: {at: [1.5 m, -510 mm, 300 mm]}}
legs:
  port aft: {from: house, to: port knee}
  port fore: {from: port knee, to: bow box}
  starboard aft: {from: house, to: starboard knee}
  starboard fore: {from: starboard knee, to: bow box}
  to helm: {from: port knee, to: helm}
  to lamps: {from: bow box, to: lamp 1}
  between lamps: {from: lamp 1, to: lamp 2}
runs:
  feed: {from: house, to: helm, along: []}
  trunk: {from: helm / lamps, to: bow box, along: []}
  beside: {from: house, to: bow box, along: [], carries: [lamps]}
  leads: {from: bow box, to: lamp, reaches: chain, along: []}
  down: {from: helm / floor, to: floor lamp, reaches: each, length: 1 m}
`);

const boats: readonly (readonly [string, Plan])[] = [
  ["two ways", twoWays],
  ["launch", planOf(launchWithFreeLegs())],
  ...["tender", "utility"].map(
    (name) => [name, planOf(readFileSync(`examples/${name}.yaml`, "utf8"))] as const,
  ),
];

/** Some of what stands somewhere stands elsewhere. */
function shifted(plan: Plan, random: () => number): Plan {
  const point = (at: PlanPoint): PlanPoint => {
    const by = () => (random() < 0.5 ? 0 : random() - 0.5);
    return [at[0] + by(), at[1] + by(), at[2] + by()];
  };
  const standing = <T extends { readonly standsAtM?: PlanPoint }>(list: readonly T[]) =>
    list.map((one) => (one.standsAtM && random() < 0.5 ? { ...one, standsAtM: point(one.standsAtM) } : one));
  return {
    ...plan,
    batteries: standing(plan.batteries),
    chargers: standing(plan.chargers),
    converters: standing(plan.converters),
    panels: standing(plan.panels),
    boxes: standing(plan.boxes),
    gear: plan.gear.map((one) =>
      one.standsAtM && random() < 0.5 ? { ...one, standsAtM: one.standsAtM.map(point) } : one,
    ),
    waypoints: plan.waypoints.map((one) => (one.atM ? { ...one, atM: point(one.atM) } : one)),
  };
}

describe("a plan in which things stand elsewhere, from what was completed before", () => {
  test.each(boats)("%s: the same as completed anew, and its circuit as laid out anew", (_, plan) => {
    const random = seeded(7);
    const before = completePlan(plan);
    const topology = buildTopology(before);
    let lengths = 0;
    for (let step = 0; step < 40; step += 1) {
      const moved = shifted(plan, random);
      const anew = completePlan(moved);
      const quick = completeMoved(before, moved);
      if (quick === undefined) continue;
      expect(quick).toEqual(anew);
      expect(withRuns(topology, quick.runs)).toEqual(buildTopology(anew));
      if (quick.runs.some((run, index) => run !== before.runs[index])) lengths += 1;
    }
    const measured = plan.legs.some(({ lengthM }) => lengthM === undefined);
    expect(lengths > 0).toBe(measured);
  });

  test("a run that finds a shorter way past other legs is completed anew", () => {
    const before = completePlan(twoWays);
    const moved: Plan = {
      ...twoWays,
      waypoints: twoWays.waypoints.map((one) =>
        one.name === "port knee" ? { ...one, atM: [1.5, 0.9, 0.3] } : one,
      ),
    };
    expect(completePlan(moved).ways.get("beside")).toMatchObject({
      route: { legs: ["starboard aft", "starboard fore"] },
    });
    expect(completeMoved(before, moved)).toBeUndefined();
  });

  test.each<readonly [string, Plan]>([
    ["other rules", { ...twoWays, rules: "iso" }],
    ["other air", { ...twoWays, ambient: { airC: 30 } }],
    ["another draw", { ...twoWays, gear: twoWays.gear.map((one) => ({ ...one, role: "gauge" })) }],
    ["one box less", { ...twoWays, boxes: [] }],
    ["a box that is another", { ...twoWays, boxes: twoWays.boxes.map((one) => ({ ...one, name: "chest" })) }],
    [
      "a waypoint with an edge",
      { ...twoWays, waypoints: twoWays.waypoints.map((one) => ({ ...one, edge: "bare" })) },
    ],
    ["a leg with a length", { ...twoWays, legs: twoWays.legs.map((one) => ({ ...one, lengthM: 2 })) }],
    [
      "a battery that stands nowhere",
      { ...twoWays, batteries: twoWays.batteries.map(({ standsAtM: _, ...rest }) => rest) },
    ],
  ])("%s: completed anew", (_, plan) => {
    expect(completeMoved(completePlan(twoWays), plan)).toBeUndefined();
  });

  test("nothing moved: the same runs, ways and places", () => {
    const before = completePlan(twoWays);
    expect(completeMoved(before, { ...twoWays })).toEqual(before);
  });
});
