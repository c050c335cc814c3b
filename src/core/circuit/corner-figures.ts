import type { CompletePlan } from "../plan/completed.js";
import type { CircuitNetwork } from "./network.js";
import type { Chosen } from "./parts.js";
import type { BranchFigures, CornerFigures, GearFigures, WayFigures } from "./results.js";
import type { Solution } from "./solve/types.js";
import { cutOutAt, type SolvedCorner } from "./solved-corner.js";
import type { Topology } from "./topology/types.js";

/** Turns a solution back into tables with the plan's names. */
export function cornerFigures(
  network: CircuitNetwork,
  plan: CompletePlan,
  chosen: Chosen,
  solved: SolvedCorner,
): CornerFigures {
  const { state: corner, numbers, solution, turns } = solved;
  const { topology } = network;
  const parts = network.partsAt(chosen, corner);
  const across = (plus: number, minus: number) => (solution.nodeV[plus] ?? 0) - (solution.nodeV[minus] ?? 0);
  const main = {
    solution,
    supplyV: supplyVoltages(topology, solution),
    under: new Set(solution.underVoltage),
  };
  const { supplyV } = main;
  const turnOf = new Map<string, typeof main>();
  for (const turn of turns) {
    const own = {
      solution: turn.solution,
      supplyV: supplyVoltages(topology, turn.solution),
      under: new Set(turn.solution.underVoltage),
    };
    for (const name of turn.gear) turnOf.set(name, own);
  }
  const gear: GearFigures[] = [];
  for (const [index, { id, circuit }] of topology.gear.entries()) {
    const turn = turnOf.get(id);
    const from = turn ?? main;
    const supply = plan.circuits.get(circuit);
    const voltageV = from.solution.loadV[index] ?? 0;
    const dropV = (from.supplyV.get(supply?.supply ?? "") ?? voltageV) - voltageV;
    gear.push({
      id,
      on: turn !== undefined || (corner.on.get(id) ?? 0) > 0,
      currentA: from.solution.loadA[index] ?? 0,
      voltageV,
      dropV,
      dropShare: dropV / (supply?.nominalV ?? 12),
      source: supply?.supply ?? "",
      underVoltage: from.under.has(index),
      ...(turn && { inTurn: true }),
    });
  }
  const branches: BranchFigures[] = [];
  for (const [index, { id, of }] of topology.branches.entries()) {
    const currentA = solution.branchA[index] ?? 0;
    const ohm = numbers.branches.ohm[index] ?? 0;
    branches.push({
      id,
      of,
      currentA,
      dropV: currentA * ohm,
      heatW: currentA * currentA * ohm,
      parts: parts[index] ?? [],
    });
  }
  const weakest = solution.weakestLoad === undefined ? undefined : topology.gear[solution.weakestLoad]?.id;
  return {
    name: corner.name,
    status: solution.status,
    copperC: corner.copperC,
    ...(solution.carriedShare !== undefined && { carriedShare: solution.carriedShare }),
    ...(weakest !== undefined && { weakestGear: weakest }),
    cutOut: cutOutAt(network, solved).flatMap((index) => topology.gear[index]?.id ?? []),
    gear,
    branches,
    ways: wayFigures(plan, topology, [solution, ...turns.map((turn) => turn.solution)]),
    batteries: topology.sources.map(({ battery }, index) => ({
      id: battery,
      emfV: corner.emfV.get(battery) ?? 0,
      currentA: solution.sourceA[index] ?? 0,
      terminalV: supplyV.get(battery) ?? 0,
    })),
    converters: topology.converters.map(({ id, inPlus, inMinus }, index) => {
      const inputV = across(inPlus, inMinus);
      const inputA = solution.converterInA[index] ?? 0;
      const outputA = solution.converterOutA[index] ?? 0;
      return {
        id,
        inputV,
        inputA,
        outputA,
        lossW: inputV * inputA - (supplyV.get(id) ?? 0) * outputA,
        off: solution.convertersOff.includes(index),
        over: solution.convertersOver.includes(index),
      };
    }),
  };
}

/** Voltage at the terminals of each battery and converter. */
function supplyVoltages(topology: Topology, { nodeV }: Solution): Map<string, number> {
  const across = (plus: number, minus: number) => (nodeV[plus] ?? 0) - (nodeV[minus] ?? 0);
  return new Map([
    ...topology.sources.map(({ battery, plus, minus }) => [battery, across(plus, minus)] as const),
    ...topology.converters.map(({ id, outPlus, outMinus }) => [id, across(outPlus, outMinus)] as const),
  ]);
}

/** Current of each way: what its gear draws together, in the state of the boat in which that is most. */
function wayFigures(plan: CompletePlan, topology: Topology, states: readonly Solution[]): WayFigures[] {
  const most = new Map<string, number>();
  for (const { loadA } of states) {
    const sums = new Map<string, number>();
    topology.gear.forEach(({ circuit }, index) => {
      sums.set(circuit, (sums.get(circuit) ?? 0) + (loadA[index] ?? 0));
    });
    for (const [circuit, currentA] of sums) most.set(circuit, Math.max(most.get(circuit) ?? 0, currentA));
  }
  return plan.panels.flatMap((panel) =>
    panel.ways.map((way) => {
      const id = `${panel.name} / ${way.name}`;
      return { id, currentA: most.get(id) ?? 0 };
    }),
  );
}
