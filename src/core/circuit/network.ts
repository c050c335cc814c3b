import type { CompleteConverter, CompletePlan } from "../plan/completed.js";
import { copied, reals, wholes } from "./columns.js";
import type { CornerState } from "./corners.js";
import { GearLoads } from "./loads.js";
import { type Chosen, CopperAt, PartPricer, PartsList } from "./parts.js";
import type { Part } from "./results.js";
import { rememberingSolver } from "./solve/solve.js";
import type { ConverterTable, LoadTable, NetworkNumbers, SolveNetwork } from "./solve/types.js";
import type { Topology } from "./topology/types.js";
import { withRuns } from "./topology/with-runs.js";

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
  private readonly coppers: Map<string, CopperAt>;
  /** With the sizes and ratings asked of last, by the copper's temperatures. */
  private priced: { readonly chosen?: Chosen; readonly at: Map<string, Priced> } = { at: new Map() };

  constructor(
    plan: CompletePlan,
    readonly topology: Topology,
    /** Keeps how the circuit is joined from solve to solve. */
    readonly solve: SolveNetwork = rememberingSolver(),
    /** The same circuit with conductors of other lengths: all else is taken from it. */
    private readonly alike?: CircuitNetwork,
  ) {
    this.partsList = new PartsList(topology, alike?.partsList);
    this.coppers = alike?.coppers ?? new Map();
    this.gear = alike?.gear ?? new GearLoads(plan, topology);
    this.from = alike?.from ?? wholes(topology.branches, ({ from }) => from);
    this.to = alike?.to ?? wholes(topology.branches, ({ to }) => to);
    this.sourcePlus = alike?.sourcePlus ?? wholes(topology.sources, ({ plus }) => plus);
    this.sourceMinus = alike?.sourceMinus ?? wholes(topology.sources, ({ minus }) => minus);
    this.converters = alike?.converters ?? converterTable(topology, plan);
  }

  /** The same circuit of the same plan, in which only runs have other lengths. */
  withRuns(plan: CompletePlan): CircuitNetwork {
    return new CircuitNetwork(plan, withRuns(this.topology, plan.runs), this.solve, this);
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

  /** Resistance of each branch [Ω]; the caller's own. */
  ohmAt(chosen: Chosen, corner: CornerState): Float64Array {
    return copied(this.pricedAt(chosen, corner).ohm);
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
  partsAt(chosen: Chosen, corner: CornerState): readonly (readonly Part[])[] {
    const priced = this.pricedAt(chosen, corner);
    if (priced.parts) return priced.parts;
    const standing = this.alike?.partsAt(chosen, corner);
    const pricer = this.pricer(chosen, corner);
    const [elsewhere] = [...this.priced.at.values()].flatMap(({ parts }) => (parts ? [parts] : []));
    priced.parts = this.topology.branches.map(
      (_, branch) =>
        (this.isAsBefore(branch) ? standing?.[branch] : undefined) ??
        pricer.partsOf(branch, elsewhere?.[branch]),
    );
    return priced.parts;
  }

  pricer(chosen: Chosen, corner: CornerState): PartPricer {
    const key = copperOf(corner);
    const copper = this.coppers.get(key) ?? new CopperAt(corner.copperC, corner.engineSpaceCopperC);
    this.coppers.set(key, copper);
    return new PartPricer(chosen, this.partsList, copper);
  }

  private pricedAt(chosen: Chosen, corner: CornerState): Priced {
    if (this.priced.chosen !== chosen) this.priced = { chosen, at: new Map() };
    const key = copperOf(corner);
    const known = this.priced.at.get(key);
    if (known) return known;
    const standing = this.alike?.pricedAt(chosen, corner).ohm;
    const pricer = this.pricer(chosen, corner);
    const ohm = reals(this.topology.branches, (_, branch) =>
      standing && this.isAsBefore(branch) ? (standing[branch] ?? 0) : pricer.ohmOf(branch),
    );
    const priced: Priced = { ohm };
    this.priced.at.set(key, priced);
    return priced;
  }

  /** Is a branch the one of the circuit before? */
  private isAsBefore(branch: number): boolean {
    return this.alike?.topology.branches[branch] === this.topology.branches[branch];
  }
}

/** Branches at one temperature of the copper: their resistance [Ω], and once it was asked for what they are made of. */
interface Priced {
  readonly ohm: Float64Array;
  parts?: readonly (readonly Part[])[];
}

const copperOf = ({ copperC, engineSpaceCopperC }: CornerState) => `${copperC} ${engineSpaceCopperC}`;

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
