import type { CompleteConverter, CompletePlan } from "../plan/completed.js";
import { reals, wholes } from "./columns.js";
import type { CornerState } from "./corners.js";
import { GearLoads } from "./loads.js";
import { type Chosen, CopperAt, PartPricer, PartsList } from "./parts.js";
import type { Part } from "./results.js";
import { rememberingSolver } from "./solve/solve.js";
import type { ConverterTable, LoadTable, NetworkNumbers, SolveNetwork } from "./solve/types.js";
import type { Topology } from "./topology/types.js";

/** A topology at one corner: the solver's numbers, and what each branch is made of. Same order as the topology's tables. */
export interface PricedNetwork {
  readonly numbers: NetworkNumbers;
  readonly parts: readonly (readonly Part[])[];
}

/**
 * A plan's circuit in the solver's numbers. What stays the same from corner to corner, from size to size and from outing to outing
 * is worked out once: who is joined to whom, and what gear and converters draw.
 */
export class CircuitNetwork {
  readonly gear: GearLoads;
  private readonly from: Int32Array;
  private readonly to: Int32Array;
  private readonly sourcePlus: Int32Array;
  private readonly sourceMinus: Int32Array;
  private readonly converters: ConverterTable;
  private readonly partsList: PartsList;
  /** By the copper's temperatures: every corner and outing is asked of with several sets of sizes. */
  private readonly coppers = new Map<string, CopperAt>();

  constructor(
    plan: CompletePlan,
    readonly topology: Topology,
    /** Keeps how the circuit is joined from solve to solve. */
    readonly solve: SolveNetwork = rememberingSolver(),
  ) {
    this.gear = new GearLoads(plan, topology);
    this.from = wholes(topology.branches, ({ from }) => from);
    this.to = wholes(topology.branches, ({ to }) => to);
    this.sourcePlus = wholes(topology.sources, ({ plus }) => plus);
    this.sourceMinus = wholes(topology.sources, ({ minus }) => minus);
    this.converters = converterTable(topology, plan);
    this.partsList = new PartsList(topology);
  }

  /**
   * The numbers at a corner: sizes and ratings chosen, copper at its temperature, gear on as it says. Resistances, EMFs and loads are the
   * caller's own, the rest is shared.
   * @throws RangeError if a group has no size or a device no rating.
   */
  numbersAt(chosen: Chosen, corner: CornerState): NetworkNumbers {
    const { sources, nodes } = this.topology;
    return {
      nodeCount: nodes.length,
      branches: {
        from: this.from,
        to: this.to,
        ohm: this.ohmAt(chosen, corner),
      },
      sources: {
        plus: this.sourcePlus,
        minus: this.sourceMinus,
        emfV: reals(sources, ({ battery }) => corner.emfV.get(battery) ?? 0),
        ohm: reals(sources, ({ battery }) => corner.internalOhm.get(battery) ?? 1),
      },
      loads: this.loadsAt(corner),
      converters: this.converters,
    };
  }

  /** Resistance of each branch [Ω]. */
  ohmAt(chosen: Chosen, corner: CornerState): Float64Array {
    const pricer = this.pricer(chosen, corner);
    return reals(this.topology.branches, (_, branch) => pricer.ohmOf(branch));
  }

  /** The least each branch can have, for the largest short: full copper at its coldest, along the way without slack [Ω]. */
  leastOhm(chosen: Chosen, coldestC: number): Float64Array {
    const pricer = new PartPricer(chosen, this.partsList, new CopperAt(coldestC, coldestC, "least"));
    return reals(this.topology.branches, (_, branch) => pricer.ohmOf(branch));
  }

  loadsAt(corner: CornerState): LoadTable {
    return this.gear.table(corner.on);
  }

  /** What each branch is made of at a corner. */
  partsAt(chosen: Chosen, corner: CornerState): Part[][] {
    const pricer = this.pricer(chosen, corner);
    const parts: Part[][] = [];
    for (let branch = 0; branch < this.topology.branches.length; branch += 1)
      parts.push(pricer.partsOf(branch));
    return parts;
  }

  pricer(chosen: Chosen, { copperC, engineSpaceCopperC }: CornerState): PartPricer {
    const key = `${copperC} ${engineSpaceCopperC}`;
    const copper = this.coppers.get(key) ?? new CopperAt(copperC, engineSpaceCopperC);
    this.coppers.set(key, copper);
    return new PartPricer(chosen, this.partsList, copper);
  }
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
  const network = new CircuitNetwork(plan, topology);
  return { numbers: network.numbersAt(chosen, corner), parts: network.partsAt(chosen, corner) };
}

/** Loads of a topology with the corner's gear on. */
export function loadTable(topology: Topology, plan: CompletePlan, corner: CornerState): LoadTable {
  return new GearLoads(plan, topology).table(corner.on);
}

function converterTable(topology: Topology, plan: CompletePlan): ConverterTable {
  const facts = new Map(plan.converters.map((converter) => [converter.name, converter]));
  const numbers = (pick: (converter: CompleteConverter) => number) =>
    reals(topology.converters, ({ id }) => {
      const converter = facts.get(id);
      return converter ? pick(converter) : 0;
    });
  return {
    inPlus: wholes(topology.converters, ({ inPlus }) => inPlus),
    inMinus: wholes(topology.converters, ({ inMinus }) => inMinus),
    outPlus: wholes(topology.converters, ({ outPlus }) => outPlus),
    outMinus: wholes(topology.converters, ({ outMinus }) => outMinus),
    outputV: numbers(({ outputV }) => outputV),
    maxOutputA: numbers(({ maxOutputA }) => maxOutputA),
    efficiency: numbers(({ efficiency }) => efficiency),
    standbyW: numbers(({ standbyW }) => standbyW),
    minInputV: numbers(({ minInputV }) => minInputV),
  };
}
