import { readFileSync } from "node:fs";
import type { NetworkNumbers } from "../../src/core/circuit/solve/types.js";
import { workOut } from "../../src/core/figures.js";
import { readPlan } from "../../src/core/plan/read.js";
import { type Bench, benchOf, loadsWith } from "../../src/core/proving/bench-network.js";
import { type PolePair, polePairs } from "../../src/core/proving/shadows.js";
import { type Spread, spreadOf } from "../../src/core/proving/spread.js";

export interface Boat {
  readonly name: string;
  readonly bench: Bench;
  readonly spread: Spread;
  readonly pairs: readonly PolePair[];
}

export function boatNamed(name: string): Boat {
  const read = readPlan(readFileSync(`examples/${name}.yaml`, "utf8"));
  if (!read.ok) throw new Error(`${name} does not read`);
  const { figures, circuit } = workOut(read.plan);
  const bench = benchOf(figures.plan, circuit);
  return { name, bench, spread: spreadOf(bench), pairs: polePairs(bench).pairs };
}

/** A normal number cut at three. */
export function noise(random: () => number): number {
  for (;;) {
    const z = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    if (Math.abs(z) < 3) return z;
  }
}

/** The boat within its tolerances, this gear on. */
export function trueNetwork(
  { bench, spread }: Boat,
  on: readonly string[],
  random: () => number,
): NetworkNumbers {
  const { numbers } = bench;
  const hot = noise(random) * spread.copperK;
  const off = (values: Float64Array, sigma: Float64Array) =>
    values.map((value, i) => Math.max(value / 4, value + noise(random) * (sigma[i] ?? 0)));
  const loads = loadsWith(bench, on);
  return {
    ...numbers,
    branches: {
      ...numbers.branches,
      ohm: off(numbers.branches.ohm, spread.branchOhm).map(
        (ohm, i) => ohm + hot * (spread.branchOhmPerK[i] ?? 0),
      ),
    },
    sources: {
      ...numbers.sources,
      emfV: off(numbers.sources.emfV, spread.emfV),
      ohm: off(numbers.sources.ohm, spread.sourceOhm),
    },
    loads: {
      ...loads,
      value: loads.value.map((v, i) =>
        Number.isFinite(v) ? v * (1 + noise(random) * (spread.loadShare[i] ?? 0)) : v,
      ),
    },
  };
}

/** Branches the current of a piece of gear passes, both legs, as far as its battery or converter. */
export function onTheWay({ topology }: Bench, gear: number): number[] {
  const piece = topology.gear[gear];
  if (!piece) return [];
  const walk = (start: number, leg: "out" | "return"): number[] => {
    const rows: number[] = [];
    let at = start;
    for (let steps = 0; steps < topology.branches.length; steps++) {
      const row = topology.branches.findIndex(
        (branch, i) =>
          branch.leg === leg && !rows.includes(i) && (leg === "out" ? branch.to : branch.from) === at,
      );
      const branch = topology.branches[row];
      if (!branch) break;
      rows.push(row);
      at = leg === "out" ? branch.from : branch.to;
    }
    return rows;
  };
  return [...walk(piece.plus, "out"), ...walk(piece.minus, "return")];
}

export function currentOn({ plan, topology }: Bench, circuit: string): number {
  const nominalV = plan.circuits.get(circuit)?.nominalV ?? 12;
  return topology.gear
    .filter((piece) => piece.circuit === circuit)
    .reduce((sum, { id }) => {
      const draw = plan.gear.find(({ name }) => name === id)?.draw;
      if (draw?.kind === "power") return sum + draw.powerW / nominalV;
      if (draw?.kind === "current") return sum + draw.currentA;
      return sum + (draw ? nominalV / draw.resistanceOhm : 0);
    }, 0);
}
