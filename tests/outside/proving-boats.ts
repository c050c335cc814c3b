import { readFileSync } from "node:fs";
import { loadLaw, type NetworkNumbers } from "../../src/core/circuit/solve/types.js";
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

/** A boat as it really is, whatever is on. */
export interface TrueBoat {
  readonly branchOhm: Float64Array;
  readonly emfV: Float64Array;
  readonly sourceOhm: Float64Array;
  /** What each piece of gear takes, against its label; 0: it is dead. */
  readonly loadFactor: Float64Array;
  /** Gear as an ohmmeter sees it [Ω]. */
  readonly restingOhm: Float64Array;
}

/** The boat drawn within its tolerances. Gear as an ohmmeter sees it is anyone's guess: within a factor e, two times in three. */
export function trueBoat({ bench, spread }: Boat, random: () => number): TrueBoat {
  const { branches, sources } = bench.numbers;
  const hot = noise(random) * spread.copperK;
  const off = (values: Float64Array, sigma: Float64Array) =>
    values.map((value, i) => Math.max(value / 4, value + noise(random) * (sigma[i] ?? 0)));
  return {
    branchOhm: off(branches.ohm, spread.branchOhm).map(
      (ohm, i) => ohm + hot * (spread.branchOhmPerK[i] ?? 0),
    ),
    emfV: off(sources.emfV, spread.emfV),
    sourceOhm: off(sources.ohm, spread.sourceOhm),
    loadFactor: spread.loadShare.map((share) => 1 + noise(random) * share),
    restingOhm: bench.restingOhm.map((ohm) => ohm * Math.exp(noise(random))),
  };
}

/** The circuit of a true boat with this gear on. */
export function networkWith({ bench }: Boat, truth: TrueBoat, on: readonly string[]): NetworkNumbers {
  const { numbers } = bench;
  const loads = loadsWith(bench, on);
  return {
    ...numbers,
    branches: { ...numbers.branches, ohm: truth.branchOhm },
    sources: { ...numbers.sources, emfV: truth.emfV, ohm: truth.sourceOhm },
    loads: {
      ...loads,
      value: loads.value.map((value, i) => {
        const factor = truth.loadFactor[i] ?? 1;
        if (loads.law[i] !== loadLaw.resistance) return value * factor;
        return factor === 0 ? Number.POSITIVE_INFINITY : value * factor;
      }),
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
