import { type CornerState, cornersOf } from "../circuit/corners.js";
import { loadTable, priceNetwork } from "../circuit/network.js";
import type { Part } from "../circuit/results.js";
import type { SettledCircuit } from "../circuit/settle.js";
import { loadLaw, type NetworkNumbers } from "../circuit/solve/types.js";
import type { Topology } from "../circuit/topology/types.js";
import type { CompletePlan } from "../plan/completed.js";
import { restingGear } from "../reference/fault-odds.js";

/** A boat's circuit as one stands before it with a meter: sound, at the usual air, with nothing on yet. */
export interface Bench {
  readonly plan: CompletePlan;
  readonly topology: Topology;
  readonly numbers: NetworkNumbers;
  readonly parts: readonly (readonly Part[])[];
  /** Voltage under which each piece of gear no longer draws by its law but like a resistance [V]. */
  readonly kneeV: Float64Array;
  /** Each piece of gear as an ohmmeter sees it [Ω]. */
  readonly restingOhm: Float64Array;
  readonly state: CornerState;
  readonly nodeOf: ReadonlyMap<string, number>;
  readonly branchOf: ReadonlyMap<string, number>;
  readonly gearOf: ReadonlyMap<string, number>;
}

/** What was measured or is known before the test, instead of what the plan assumes. */
export interface BenchFacts {
  /** Resting voltage at the posts, by battery [V]. */
  readonly restingV?: ReadonlyMap<string, number>;
  readonly copperC?: number;
}

/** The circuit of a settled plan, ready to be measured. */
export function benchOf(plan: CompletePlan, circuit: SettledCircuit, facts: BenchFacts = {}): Bench {
  const { topology, chosen } = circuit;
  const [nominal] = cornersOf(plan);
  if (!nominal) throw new RangeError("a nominal corner is required");
  const emfV = new Map([...nominal.emfV].map(([name, v]) => [name, facts.restingV?.get(name) ?? v]));
  const copperC = facts.copperC ?? nominal.copperC;
  const state: CornerState = { ...nominal, emfV, copperC, engineSpaceCopperC: copperC, on: new Map() };
  const { numbers, parts } = priceNetwork(topology, plan, chosen, state);
  const gear = new Map(plan.gear.map((piece) => [piece.name, piece]));
  const nominalV = topology.gear.map(({ circuit: id }) => plan.circuits.get(id)?.nominalV ?? 12);
  return {
    plan,
    topology,
    numbers,
    parts,
    kneeV: Float64Array.from(nominalV, (v) => v / 2),
    restingOhm: Float64Array.from(topology.gear, ({ id }, at) => {
      const piece = gear.get(id);
      const v = nominalV[at] ?? 12;
      if (piece?.behaviour === "motor" && piece.startA !== undefined) return v / piece.startA;
      if (piece?.behaviour !== "resistance") return restingGear.electronicsOhm;
      const on = loadTable(topology, plan, { ...state, on: new Map([[id, 1]]) });
      return on.law[at] === loadLaw.resistance ? (on.value[at] ?? v) : restingGear.electronicsOhm;
    }),
    state,
    nodeOf: new Map(topology.nodes.map((name, at) => [name, at])),
    branchOf: new Map(topology.branches.map(({ id }, at) => [id, at])),
    gearOf: new Map(topology.gear.map(({ id }, at) => [id, at])),
  };
}

/** Loads of the bench with this gear on. */
export function loadsWith(bench: Bench, on: readonly string[]): NetworkNumbers["loads"] {
  return loadTable(bench.topology, bench.plan, {
    ...bench.state,
    on: new Map(on.map((name) => [name, 1])),
  });
}
