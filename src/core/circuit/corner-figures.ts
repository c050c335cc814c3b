import type { CompletePlan } from "../plan/completed.js";
import type { CornerState } from "./corners.js";
import type { PricedNetwork } from "./network.js";
import type { BranchFigures, CornerFigures, GearFigures, WayFigures } from "./results.js";
import type { Solution } from "./solve/types.js";
import type { Topology } from "./topology/types.js";

/** Turns a solution back into tables with the plan's names. */
export function cornerFigures(
  topology: Topology,
  plan: CompletePlan,
  corner: CornerState,
  priced: PricedNetwork,
  solution: Solution,
  cutOut: readonly number[],
): CornerFigures {
  const { nodeV } = solution;
  const across = (plus: number, minus: number) => (nodeV[plus] ?? 0) - (nodeV[minus] ?? 0);
  const supplyV = new Map<string, number>();
  for (const { battery, plus, minus } of topology.sources) supplyV.set(battery, across(plus, minus));
  for (const { id, outPlus, outMinus } of topology.converters) supplyV.set(id, across(outPlus, outMinus));
  const under = new Set(solution.underVoltage);
  const gear = topology.gear.map(({ id, circuit }, index): GearFigures => {
    const supply = plan.circuits.get(circuit);
    const voltageV = solution.loadV[index] ?? 0;
    const dropV = (supplyV.get(supply?.supply ?? "") ?? voltageV) - voltageV;
    return {
      id,
      on: (corner.on.get(id) ?? 0) > 0,
      currentA: solution.loadA[index] ?? 0,
      voltageV,
      dropV,
      dropShare: dropV / (supply?.nominalV ?? 12),
      source: supply?.supply ?? "",
      underVoltage: under.has(index),
    };
  });
  const branches = topology.branches.map(({ id, of }, index): BranchFigures => {
    const currentA = solution.branchA[index] ?? 0;
    const ohm = priced.numbers.branches.ohm[index] ?? 0;
    return {
      id,
      of,
      currentA,
      dropV: currentA * ohm,
      heatW: currentA * currentA * ohm,
      parts: priced.parts[index] ?? [],
    };
  });
  const weakest = solution.weakestLoad === undefined ? undefined : topology.gear[solution.weakestLoad]?.id;
  return {
    name: corner.name,
    status: solution.status,
    copperC: corner.copperC,
    ...(solution.carriedShare !== undefined && { carriedShare: solution.carriedShare }),
    ...(weakest !== undefined && { weakestGear: weakest }),
    cutOut: cutOut.flatMap((index) => topology.gear[index]?.id ?? []),
    gear,
    branches,
    ways: wayFigures(plan, gear, topology),
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

/** Current of each way: what its gear draws together. */
function wayFigures(plan: CompletePlan, gear: readonly GearFigures[], topology: Topology): WayFigures[] {
  const sums = new Map<string, number>();
  gear.forEach(({ currentA }, index) => {
    const circuit = topology.gear[index]?.circuit ?? "";
    sums.set(circuit, (sums.get(circuit) ?? 0) + currentA);
  });
  return plan.panels.flatMap((panel) =>
    panel.ways.map((way) => {
      const id = `${panel.name} / ${way.name}`;
      return { id, currentA: sums.get(id) ?? 0 };
    }),
  );
}
