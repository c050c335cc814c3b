import type { CompletePlan } from "../../plan/completed.js";
import { reals, wholes } from "../columns.js";
import type { CornerState } from "../corners.js";
import { type GearLoads, loadNumbers } from "../loads.js";
import { loadLaw } from "../solve/types.js";
import type { Topology } from "../topology/types.js";
import { Flows, type Taker } from "./flows.js";
import type { Forest } from "./forest.js";
import { type Supply, supplyOrder } from "./supplies.js";

/** Currents that bound the true ones while every gear stays within its drop limit and no loop of metal divides them [A]. */
export interface Demand {
  /** In the topology's order. */
  readonly leastGearA: Float64Array;
  readonly mostGearA: Float64Array;
  readonly flows: Flows;
}

/** What currents are bounded from. */
export interface DemandInput {
  readonly plan: CompletePlan;
  readonly topology: Topology;
  readonly forest: Forest;
  readonly gear: GearLoads;
}

/** Rounds in which the sag of the batteries and the currents that cause it are brought together. */
const maxRounds = 30;
/** No battery is followed deeper than this share of its EMF. */
const deepestShare = 0.5;
/** A converter's input is taken to lie at this share of its supply's voltage at least, or at its own least voltage. */
const inputShare = 0.9;

/** Bounds the currents of a circuit before any size is known. Built once for a plan. */
export class DemandReader {
  private readonly supplies: readonly Supply[];
  /** Supply of each piece of gear; −1: none. */
  private readonly supplyOf: Int32Array;
  private readonly takers: readonly Taker[];

  constructor(private readonly input: DemandInput) {
    const { plan, topology } = input;
    this.supplies = supplyOrder(plan, topology);
    const indexOf = new Map(this.supplies.map(({ name }, index) => [name, index]));
    const supplyAt = (circuit: string) => indexOf.get(plan.circuits.get(circuit)?.supply ?? "") ?? -1;
    this.supplyOf = wholes(topology.gear, ({ circuit }) => supplyAt(circuit));
    const taker = (plus: number, minus: number, supply: Supply | undefined): Taker => ({
      plus,
      minus,
      fromPlus: supply?.plus ?? -1,
      toMinus: supply?.minus ?? -1,
    });
    this.takers = [
      ...topology.gear.map(({ plus, minus }, at) =>
        taker(plus, minus, this.supplies[this.supplyOf[at] ?? -1]),
      ),
      ...this.supplies.flatMap(({ converter, from }) =>
        converter ? [taker(converter.inPlus, converter.inMinus, this.supplies[from])] : [],
      ),
    ];
  }

  /**
   * Constant power draws least at the supply's own voltage and most at its drop limit, under a battery that sags by its own
   * resistance; a resistance the other way round. A converter passes on what its output is asked for.
   * @param off Converters that do not work even with the largest sizes: for certain they take nothing, nor does what hangs on them.
   */
  at(corner: CornerState, off: ReadonlySet<string> = new Set()): Demand {
    const { topology, forest } = this.input;
    const state = new DemandState(this.input, corner, this.supplies, this.supplyOf, off);
    for (let round = 0; round < maxRounds; round += 1) {
      state.take();
      if (!state.sag()) break;
    }
    const { leastA, mostA } = state;
    const count = topology.gear.length;
    return {
      leastGearA: leastA.subarray(0, count),
      mostGearA: mostA.subarray(0, count),
      flows: new Flows(topology, forest, this.takers, leastA, mostA),
    };
  }
}

/** Voltages and currents of one corner while they are being brought together. */
class DemandState {
  /** Of the gear, then of the converters' inputs in the order of the supplies [A]. */
  readonly leastA: Float64Array;
  readonly mostA: Float64Array;
  private readonly loads: readonly { readonly law: number; readonly value: number; readonly dropV: number }[];
  private readonly fullV: Float64Array;
  private readonly lowV: Float64Array;
  private readonly isOff: readonly boolean[];
  private readonly givenLeastA: Float64Array;
  private readonly givenMostA: Float64Array;

  constructor(
    { plan, topology, gear }: DemandInput,
    private readonly corner: CornerState,
    private readonly supplies: readonly Supply[],
    private readonly supplyOf: Int32Array,
    off: ReadonlySet<string>,
  ) {
    this.loads = topology.gear.map(({ circuit }, at) => {
      const piece = gear.pieces[at];
      const level = piece ? (corner.on.get(piece.name) ?? 0) : 0;
      if (!piece || !(level > 0)) return { law: loadLaw.current, value: 0, dropV: 0 };
      const nominalV = plan.circuits.get(circuit)?.nominalV ?? 12;
      return { ...loadNumbers(piece, plan, level), dropV: piece.maxDropShare * nominalV };
    });
    this.fullV = reals(supplies, ({ name, converter }) =>
      converter ? converter.facts.outputV : (corner.emfV.get(name) ?? 12),
    );
    this.lowV = this.fullV.slice();
    this.isOff = supplies.map(({ name }) => off.has(name));
    const converters = supplies.filter(({ converter }) => converter).length;
    this.leastA = new Float64Array(topology.gear.length + converters);
    this.mostA = new Float64Array(topology.gear.length + converters);
    this.givenLeastA = new Float64Array(supplies.length);
    this.givenMostA = new Float64Array(supplies.length);
  }

  /** What everything takes with the supplies as low as they are now known to go. */
  take(): void {
    this.givenLeastA.fill(0);
    this.givenMostA.fill(0);
    for (let at = 0; at < this.loads.length; at += 1) {
      const load = this.loads[at];
      if (!load || !(load.value > 0)) continue;
      const supply = this.supplyOf[at] ?? -1;
      const fullV = this.fullV[supply] ?? 12;
      const deepestV = fullV * deepestShare;
      const sunkV = this.lowV[supply] ?? fullV;
      const lowV = sunkV - load.dropV;
      let [least, most] = [load.value, load.value];
      if (load.law === loadLaw.power)
        [least, most] = [load.value / fullV, load.value / Math.max(lowV, deepestV)];
      else if (load.law === loadLaw.resistance)
        [least, most] = [sunkV > deepestV ? Math.max(0, lowV) / load.value : 0, fullV / load.value];
      this.give(at, supply, least, most);
    }
    let at = this.loads.length;
    this.supplies.forEach(({ converter, from }, supply) => {
      if (!converter) return;
      const { outputV, efficiency, standbyW, minInputV } = converter.facts;
      const inputW = (outputA: number) => (outputA * outputV) / efficiency + standbyW;
      const fullV = this.fullV[from] ?? 12;
      const lowV = Math.max(minInputV, inputShare * (this.lowV[from] ?? fullV));
      const works = from >= 0 && !this.isOff[supply] && fullV >= minInputV;
      const least = works ? inputW(this.givenLeastA[supply] ?? 0) / fullV : 0;
      this.give(at, from, least, inputW(this.givenMostA[supply] ?? 0) / lowV);
      at += 1;
    });
  }

  private give(taker: number, supply: number, least: number, most: number): void {
    const certain = this.isOff[supply] ? 0 : least;
    this.leastA[taker] = certain;
    this.mostA[taker] = most;
    if (supply < 0) return;
    this.givenLeastA[supply] = (this.givenLeastA[supply] ?? 0) + certain;
    this.givenMostA[supply] = (this.givenMostA[supply] ?? 0) + most;
  }

  /** Lets each battery sag by what it gives at most. @returns false once that changes nothing any more. */
  sag(): boolean {
    let moved = false;
    this.supplies.forEach(({ name, converter }, supply) => {
      if (converter) return;
      const emfV = this.fullV[supply] ?? 12;
      const sagV = (this.corner.internalOhm.get(name) ?? 0) * (this.givenMostA[supply] ?? 0);
      const lowV = Math.max(emfV * deepestShare, emfV - sagV);
      if (Math.abs(lowV - (this.lowV[supply] ?? emfV)) > 1e-9 * emfV) moved = true;
      this.lowV[supply] = lowV;
    });
    return moved;
  }
}
