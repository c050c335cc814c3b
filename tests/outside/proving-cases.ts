import { readFileSync } from "node:fs";
import type { NetworkNumbers } from "../../src/core/circuit/solve/types.js";
import { workOut } from "../../src/core/figures.js";
import { seededNumbers } from "../../src/core/parts/cuts/seeded.js";
import { readPlan } from "../../src/core/plan/read.js";
import { type Bench, benchOf, loadsWith } from "../../src/core/proving/bench-network.js";
import { type PolePair, polePairs } from "../../src/core/proving/shadows.js";
import { type Spread, spreadOf } from "../../src/core/proving/spread.js";
import type { FaultKind } from "../../src/core/proving/suspect.js";
import type { Added } from "./proving-deck.js";

export const caseKinds = [
  "resistance",
  "two resistances",
  "open",
  "short",
  "reversed",
  "gear dead",
  "battery low",
] as const satisfies readonly FaultKind[];
export type CaseKind = (typeof caseKinds)[number];

/** A boat as it really is: every figure a little off its plan, and something wrong in it. */
export interface FaultCase {
  readonly name: string;
  readonly kind: CaseKind;
  readonly bench: Bench;
  readonly spread: Spread;
  readonly on: readonly string[];
  readonly gear: number;
  /** What must be named: branches, gear or battery. */
  readonly at: readonly string[];
  readonly network: NetworkNumbers;
  readonly added: readonly Added[];
  readonly random: () => number;
}

export interface Boat {
  readonly bench: Bench;
  readonly spread: Spread;
  readonly pairs: readonly PolePair[];
}

export function boatNamed(name: string): Boat {
  const read = readPlan(readFileSync(`examples/${name}.yaml`, "utf8"));
  if (!read.ok) throw new Error(`${name} does not read`);
  const { figures, circuit } = workOut(read.plan);
  const bench = benchOf(figures.plan, circuit);
  return { bench, spread: spreadOf(bench), pairs: polePairs(bench).pairs };
}

/** A normal number cut at three. */
function normal(random: () => number): number {
  for (;;) {
    const z = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    if (Math.abs(z) < 3) return z;
  }
}
export const noise = normal;

export function faultCase(boat: Boat, boatName: string, kind: CaseKind, seed: number): FaultCase {
  const { bench, spread } = boat;
  const random = seededNumbers(seed);
  const { topology } = bench;
  const pick = <T>(list: readonly T[]): T => {
    const one = list[Math.floor(random() * list.length)];
    if (one === undefined) throw new Error(`nothing to pick from in case ${seed}`);
    return one;
  };
  const fed = topology.gear.filter(({ plus, minus }) => plus !== minus);
  const gear = pick(fed);
  const on = topology.gear.filter(({ circuit }) => circuit === gear.circuit).map(({ id }) => id);
  const exact = trueNetwork(bench, spread, on, random);
  const way = onTheWay(bench, topology.gear.indexOf(gear));
  const amp = currentOn(bench, gear.circuit);
  // what an owner notices: 0.4 to 3.2 V lost at the way's usual current; with more a driver shuts down, which is an open
  const bad = () => (0.4 * 8 ** random()) / amp;
  const about = {
    name: `${boatName}, ${kind}, seed ${seed}`,
    kind,
    bench,
    spread,
    on,
    gear: topology.gear.indexOf(gear),
    random,
  };
  const id = (row: number) => topology.branches[row]?.id ?? "";
  const withOhm = (change: (ohm: Float64Array) => void): NetworkNumbers => {
    const ohm = exact.branches.ohm.slice();
    change(ohm);
    return { ...exact, branches: { ...exact.branches, ohm } };
  };
  switch (kind) {
    case "resistance":
    case "open": {
      const row = pick(way);
      const extra = kind === "open" ? 1e9 : bad();
      const network = withOhm((ohm) => {
        ohm[row] = (ohm[row] ?? 0) + extra;
      });
      return { ...about, at: [id(row)], network, added: [] };
    }
    case "two resistances": {
      const first = pick(way);
      const second = pick(way.filter((row) => row !== first));
      const network = withOhm((ohm) => {
        ohm[first] = (ohm[first] ?? 0) + bad() / 2;
        ohm[second] = (ohm[second] ?? 0) + bad() / 2;
      });
      return { ...about, at: [id(first), id(second)], network, added: [] };
    }
    case "short":
    case "reversed": {
      const pair = pick(boat.pairs.filter(({ out, back }) => way.includes(out) && way.includes(back)));
      const [out, back] = [exact.branches.ohm[pair.out] ?? 1, exact.branches.ohm[pair.back] ?? 1];
      if (kind === "short") {
        const network = withOhm((ohm) => {
          if (pair.guard >= 0) ohm[pair.guard] = 1e9;
        });
        return {
          ...about,
          at: [id(pair.out)],
          network,
          added: [{ from: pair.plus, to: pair.minus, ohm: 0.02 }],
        };
      }
      const network = withOhm((ohm) => {
        ohm[pair.out] = 1e9;
        ohm[pair.back] = 1e9;
      });
      const from = topology.branches[pair.out]?.from ?? 0;
      const to = topology.branches[pair.back]?.to ?? 0;
      const added = [
        { from, to: pair.minus, ohm: out },
        { from: pair.plus, to, ohm: back },
      ];
      return { ...about, at: [id(pair.out)], network, added };
    }
    case "gear dead": {
      const value = exact.loads.value.slice();
      value[about.gear] = 0;
      return { ...about, at: [gear.id], network: { ...exact, loads: { ...exact.loads, value } }, added: [] };
    }
    case "battery low": {
      const battery = bench.plan.circuits.get(gear.circuit)?.battery ?? "";
      const row = topology.sources.findIndex((source) => source.battery === battery);
      const emfV = exact.sources.emfV.slice();
      emfV[row] = (emfV[row] ?? 0) - (0.8 + 1.5 * random());
      return {
        ...about,
        at: [battery],
        network: { ...exact, sources: { ...exact.sources, emfV } },
        added: [],
      };
    }
    default:
      return kind satisfies never;
  }
}

/** The boat within its tolerances, this gear on. */
function trueNetwork(
  bench: Bench,
  spread: Spread,
  on: readonly string[],
  random: () => number,
): NetworkNumbers {
  const { numbers } = bench;
  const hot = normal(random) * spread.copperK;
  const off = (values: Float64Array, sigma: Float64Array) =>
    values.map((value, i) => Math.max(value / 4, value + normal(random) * (sigma[i] ?? 0)));
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
        Number.isFinite(v) ? v * (1 + normal(random) * (spread.loadShare[i] ?? 0)) : v,
      ),
    },
  };
}

/** Branches the current of a piece of gear passes, both legs, as far as its battery or converter. */
function onTheWay({ topology }: Bench, gear: number): number[] {
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

function currentOn({ plan, topology }: Bench, circuit: string): number {
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
