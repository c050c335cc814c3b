import type { CompletePlan } from "../plan/completed.js";
import type { CornerState } from "./corners.js";
import { loadNumbers } from "./loads.js";
import { type Chosen, PartPricer } from "./parts.js";
import type { Part } from "./results.js";
import { type ConverterTable, loadLaw, type NetworkNumbers } from "./solve/types.js";
import type { Topology } from "./topology/types.js";

/** A topology at one corner: the solver's numbers, and what each branch is made of. Same order as the topology's tables. */
export interface PricedNetwork {
  readonly numbers: NetworkNumbers;
  readonly parts: readonly (readonly Part[])[];
}

/**
 * Puts numbers to a topology: sizes and ratings chosen, copper at the corner's temperature, gear on as the corner says.
 * @throws RangeError if a group has no size or a device no rating.
 */
export function priceNetwork(
  topology: Topology,
  plan: CompletePlan,
  chosen: Chosen,
  corner: CornerState,
): PricedNetwork {
  const pricer = new PartPricer(chosen, topology.devices, corner.copperC, corner.engineSpaceCopperC);
  const parts = topology.branches.map((branch) => pricer.partsOf(branch.parts));
  const ohm = Float64Array.from(parts, (list) => list.reduce((sum, part) => sum + part.ohm, 0));
  return {
    parts,
    numbers: {
      nodeCount: topology.nodes.length,
      branches: {
        from: Int32Array.from(topology.branches, ({ from }) => from),
        to: Int32Array.from(topology.branches, ({ to }) => to),
        ohm,
      },
      sources: {
        plus: Int32Array.from(topology.sources, ({ plus }) => plus),
        minus: Int32Array.from(topology.sources, ({ minus }) => minus),
        emfV: Float64Array.from(topology.sources, ({ battery }) => corner.emfV.get(battery) ?? 0),
        ohm: Float64Array.from(topology.sources, ({ battery }) => corner.internalOhm.get(battery) ?? 1),
      },
      loads: loadTable(topology, plan, corner),
      converters: converterTable(topology, plan),
    },
  };
}

/** Loads of a topology with the corner's gear on. */
export function loadTable(
  topology: Topology,
  plan: CompletePlan,
  corner: CornerState,
): NetworkNumbers["loads"] {
  const pieces = new Map(plan.gear.map((piece) => [piece.name, piece]));
  const count = topology.gear.length;
  const law = new Uint8Array(count);
  const value = new Float64Array(count);
  const minV = new Float64Array(count);
  topology.gear.forEach(({ id }, index) => {
    const piece = pieces.get(id);
    const level = corner.on.get(id) ?? 0;
    const load = piece ? loadNumbers(piece, plan, level) : { law: loadLaw.current, value: 0 };
    law[index] = load.law;
    value[index] = load.value;
    minV[index] = level > 0 ? (piece?.minV ?? 0) : 0;
  });
  return {
    plus: Int32Array.from(topology.gear, ({ plus }) => plus),
    minus: Int32Array.from(topology.gear, ({ minus }) => minus),
    law,
    value,
    minV,
  };
}

function converterTable(topology: Topology, plan: CompletePlan): ConverterTable {
  const facts = new Map(plan.converters.map((converter) => [converter.name, converter]));
  const numbers = (pick: (converter: CompletePlan["converters"][number]) => number) =>
    Float64Array.from(topology.converters, ({ id }) => {
      const converter = facts.get(id);
      return converter ? pick(converter) : 0;
    });
  return {
    inPlus: Int32Array.from(topology.converters, ({ inPlus }) => inPlus),
    inMinus: Int32Array.from(topology.converters, ({ inMinus }) => inMinus),
    outPlus: Int32Array.from(topology.converters, ({ outPlus }) => outPlus),
    outMinus: Int32Array.from(topology.converters, ({ outMinus }) => outMinus),
    outputV: numbers(({ outputV }) => outputV),
    maxOutputA: numbers(({ maxOutputA }) => maxOutputA),
    efficiency: numbers(({ efficiency }) => efficiency),
    standbyW: numbers(({ standbyW }) => standbyW),
    minInputV: numbers(({ minInputV }) => minInputV),
  };
}
