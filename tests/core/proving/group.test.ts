import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOut } from "../../../src/core/figures.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { benchOf } from "../../../src/core/proving/bench-network.js";
import { type Change, noChange } from "../../../src/core/proving/change.js";
import type { Metered } from "../../../src/core/proving/probe.js";
import { spreadOf } from "../../../src/core/proving/spread.js";
import { keysOf, StateGroup } from "../../../src/core/proving/state-group.js";

function boat(name: string) {
  const read = readPlan(readFileSync(`examples/${name}.yaml`, "utf8"));
  if (!read.ok) throw new Error(`${name} does not read`);
  return workOut(read.plan);
}

describe.each(["tender", "utility", "launch"])("%s", (name) => {
  const { figures, circuit } = boat(name);
  const bench = benchOf(figures.plan, circuit);
  const nominal = figures.corners.find((corner) => corner.name === "nominal");
  const state = circuit.states.find((one) => one.name === "nominal");
  const on = [...(state?.on.keys() ?? [])];

  test("all on: the same voltages and currents as the solver's own", () => {
    const { topology } = circuit;
    const gear = topology.gear.filter(({ id }) => on.includes(id));
    const probes: Metered[] = gear.map(({ plus, minus }) => ({
      kind: "voltage",
      at: topology.nodes[plus] ?? "",
      against: topology.nodes[minus] ?? "",
      on,
    }));
    const branches = topology.branches.map(({ id }): Metered => ({ kind: "current", at: id, on }));
    const all = [...probes, ...branches];
    const group = new StateGroup(
      { ...bench, numbers: bench.numbers },
      all,
      all.map((_, i) => i),
      [],
    );
    const shown = new Float64Array(all.length);
    expect(group.predict(noChange, shown)).toBe(true);
    gear.forEach(({ id }, i) => {
      const wanted = nominal?.gear.find((one) => one.id === id);
      expect(Math.abs((shown[i] ?? 0) - (wanted?.voltageV ?? 0)), id).toBeLessThan(2e-3);
    });
    nominal?.branches.forEach(({ id, currentA }, i) => {
      expect(Math.abs((shown[gear.length + i] ?? 0) - currentA), id).toBeLessThan(
        1e-3 + 1e-3 * Math.abs(currentA),
      );
    });
  });

  test("slopes are those of small differences", () => {
    const { topology } = circuit;
    const some = topology.gear.filter(({ id }) => on.includes(id)).slice(-3);
    const probes: Metered[] = some.flatMap(({ id, plus, minus }): Metered[] => [
      { kind: "voltage", at: topology.nodes[plus] ?? "", against: topology.nodes[minus] ?? "", on: [id] },
    ]);
    for (const probe of probes) {
      const group = new StateGroup(bench, [probe], [0], []);
      const y = new Float64Array(1);
      const slopes = new Map<number, number>();
      group.predict(noChange, y);
      const before = y[0] ?? 0;
      group.sensitivities(
        spreadOf(bench),
        keysOf(bench),
        () => {},
        (key, _row, perUnit) => slopes.set(key, perUnit),
      );
      const { emf, source } = keysOf(bench);
      const moved = (key: number, by: number): Change => {
        if (key < emf) return { extraOhm: new Map([[key, by]]) };
        return key < source
          ? { emfV: new Map([[key - emf, by]]) }
          : { sourceExtraOhm: new Map([[key - source, by]]) };
      };
      for (const [key, perUnit] of slopes) {
        group.predict(moved(key, 1e-5), y);
        expect(Math.abs(((y[0] ?? 0) - before) / 1e-5 - perUnit)).toBeLessThan(
          1e-3 * Math.abs(perUnit) + 2e-5,
        );
      }
    }
  });
});
