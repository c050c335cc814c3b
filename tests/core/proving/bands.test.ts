/** Bands rest on solutions that are only as good as a band needs: each must be what a whole solve of the same boat gives. */
import { expect, test } from "vitest";
import { DrawnBoat } from "../../../src/core/proving/drawn-boat.js";
import { seededNormals } from "../../../src/core/proving/normals.js";
import type { Metered } from "../../../src/core/proving/probe.js";
import { spreadOf } from "../../../src/core/proving/spread.js";
import { StateGroup } from "../../../src/core/proving/state-group.js";
import { StateSolver, type StateValues } from "../../../src/core/proving/state-solver.js";
import { example } from "./boats.js";

const { figures, bench } = example("launch");
const lamps = figures.plan.gear.filter(({ group }) => group === "coaming lamp").map(({ name }) => name);
const volts = (at: string, against: string): Metered => ({ kind: "voltage", at, against, on: lamps });

test("three hundred drawn boats read as solved to the last digit", () => {
  const probes = [
    volts("coaming lamp 6 +", "coaming lamp 6 -"),
    volts("step-down out +", "coaming lamp 6 +"),
    volts("drive +", "drive -"),
  ];
  const group = new StateGroup(bench, probes, [0, 1, 2], []);
  group.predict({}, new Float64Array(3));
  const knee = Float64Array.from(group.part.loads, (row) => bench.kneeV[row] ?? 6);
  const solver = new StateSolver(group.part.numbers, knee);
  const boat = new DrawnBoat(bench, spreadOf(bench), {}, group.liveRows, seededNormals(3));
  const shown = new Float64Array(3);
  const node = (name: string) => group.part.nodeOf[bench.nodeOf.get(name) ?? -1] ?? 0;
  let drawn: StateValues | undefined;
  const worst = [0, 0, 0];
  for (let n = 0; n < 300; n++) {
    boat.draw();
    group.sample((values, base, part) => {
      boat.put(values, base, part, false);
      drawn = structuredClone(values);
    }, shown);
    if (drawn) solver.solve(drawn);
    expect(solver.settled).toBe(true);
    probes.forEach((probe, i) => {
      if (!("against" in probe)) return;
      const exact = (solver.nodeV[node(probe.at)] ?? 0) - (solver.nodeV[node(probe.against)] ?? 0);
      worst[i] = Math.max(worst[i] ?? 0, Math.abs((shown[i] ?? 0) - exact));
    });
  }
  // a pocket meter's last digit: 10 mV on the range for supplies, 0.1 mV on that for drops
  expect(worst[0]).toBeLessThan(1e-3);
  expect(worst[1]).toBeLessThan(1e-4);
  expect(worst[2]).toBeLessThan(1e-3);
});
