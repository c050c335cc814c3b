import { zeroBytes } from "../columns.js";
import { type ConverterStates, converterState } from "./converter-state.js";
import { findIslands, type Islands, isFed, metalIslands } from "./islands.js";
import type { LinearNetwork } from "./linear-network.js";
import { radialNetwork } from "./radial.js";
import { type Room, roomFor } from "./room.js";
import { sparseNetwork } from "./sparse.js";
import { loadLaw, type NetworkNumbers, type SolveOptions } from "./types.js";

/** Structures kept beside each other: one for each set of states the converters were lately in. */
const mostKept = 4;
/** Folds kept beside each other where a network is radial only without some loads that are off. */
const mostFolds = 12;

/** What follows from how a network is joined and which converters work, whatever its resistances, voltages and loads. */
class Structure {
  readonly islands: Islands;
  #radial: LinearNetwork | undefined;
  /** Where the network is radial only without some loads that are off: for these loads, the last asked for first. */
  #partly: { readonly loaded: Uint8Array; readonly linear: LinearNetwork | undefined }[] = [];
  #sparse: LinearNetwork | undefined;
  #triedRadial = false;

  /** @param bridged 1 for each load of `Joins.bridges` that conducts. */
  constructor(
    private readonly joins: NetworkNumbers,
    network: NetworkNumbers,
    readonly states: ConverterStates,
    readonly bridged: Uint8Array,
    cut: Uint8Array,
  ) {
    this.islands = findIslands(network, states, cut);
  }

  /**
   * The method for these loads; `begin` it before use.
   * @throws RangeError where `method` is `radial` and the network is meshed or has a converter at work.
   */
  linear(loaded: Uint8Array, method: SolveOptions["method"]): LinearNetwork {
    const atWork = this.states.some((state) => state !== converterState.off);
    const radial = method === "sparse" || atWork ? undefined : this.#folded(loaded);
    if (radial !== undefined) return radial;
    if (method === "radial")
      throw new RangeError(
        `method radial needs a network without meshes and converters at work, got ${atWork ? "a converter" : "a mesh"}`,
      );
    this.#sparse ??= sparseNetwork(this.joins, this.islands, this.states);
    return this.#sparse;
  }

  /** Is every load on that could be? Then folding without the others is folding with all. */
  #allOn(loaded: Uint8Array): boolean {
    const { plus, minus } = this.joins.loads;
    for (let i = 0; i < loaded.length; i++)
      if (loaded[i] === 0 && isFed(this.islands, plus[i] as number, minus[i] as number)) return false;
    return true;
  }

  /** Folded with every load in its place, so that they may come and go; where that leaves a mesh, with those that are on. */
  #folded(loaded: Uint8Array): LinearNetwork | undefined {
    if (!this.#triedRadial) {
      this.#triedRadial = true;
      this.#radial = radialNetwork(this.joins, this.islands, new Uint8Array(loaded.length).fill(1));
    }
    if (this.#radial !== undefined) return this.#radial;
    if (this.#allOn(loaded)) return undefined;
    const first = this.#partly[0];
    if (first !== undefined && same(first.loaded, loaded)) return first.linear;
    const found = this.#partly.find((one) => same(one.loaded, loaded)) ?? {
      loaded: loaded.slice(),
      linear: radialNetwork(this.joins, this.islands, loaded),
    };
    this.#partly = [found, ...this.#partly.filter((one) => one !== found)].slice(0, mostFolds);
    return found.linear;
  }
}

/** Keeps the structures of one network from solve to solve. Everything is compared by content, so nothing can go stale. */
export class Structures {
  readonly room: Room;
  readonly #joins: NetworkNumbers;
  /** Loads whose ends no metal joins: only they can join islands by conducting. */
  readonly #bridges: readonly number[];
  #kept: readonly Structure[] = [];

  /** @param joins Of the one network that will be asked about; nobody may change them. */
  constructor(joins: NetworkNumbers) {
    this.room = roomFor(joins);
    this.#joins = joins;
    const metal = metalIslands(joins);
    const { plus, minus } = joins.loads;
    const bridges: number[] = [];
    for (let i = 0; i < plus.length; i++)
      if (metal[plus[i] as number] !== metal[minus[i] as number]) bridges.push(i);
    this.#bridges = bridges;
  }

  of(network: NetworkNumbers, states: ConverterStates, cut: Uint8Array): Structure {
    const bridged = this.#bridged(network, cut);
    const fits = (one: Structure) => same(one.states, states) && same(one.bridged, bridged);
    const last = this.#kept[0];
    if (last !== undefined && fits(last)) return last;
    const structure =
      this.#kept.find(fits) ?? new Structure(this.#joins, network, states.slice(), bridged, cut);
    this.#kept = [structure, ...this.#kept.filter((one) => one !== structure)].slice(0, mostKept);
    return structure;
  }

  #bridged({ loads }: NetworkNumbers, cut: Uint8Array): Uint8Array {
    const bits = zeroBytes(this.#bridges.length);
    for (let k = 0; k < bits.length; k++) {
      const i = this.#bridges[k] as number;
      const conducts = loads.law[i] === loadLaw.resistance && (loads.value[i] as number) < Infinity;
      if (conducts && cut[i] === 0) bits[k] = 1;
    }
    return bits;
  }
}

/** A copy of its own: what a caller changes in place later must not reach what is kept. */
export function copyOfJoins({
  nodeCount,
  branches,
  sources,
  loads,
  converters,
}: NetworkNumbers): NetworkNumbers {
  return {
    nodeCount,
    branches: { ...branches, from: branches.from.slice(), to: branches.to.slice() },
    sources: { ...sources, plus: sources.plus.slice(), minus: sources.minus.slice() },
    loads: { ...loads, plus: loads.plus.slice(), minus: loads.minus.slice() },
    converters: {
      ...converters,
      inPlus: converters.inPlus.slice(),
      inMinus: converters.inMinus.slice(),
      outPlus: converters.outPlus.slice(),
      outMinus: converters.outMinus.slice(),
      outputV: converters.outputV.slice(),
    },
  };
}

/** Are two networks the same but for their resistances, EMFs, loads and what converters can give? */
export function joinedAlike(a: NetworkNumbers, b: NetworkNumbers): boolean {
  return (
    a.nodeCount === b.nodeCount &&
    same(a.branches.from, b.branches.from) &&
    same(a.branches.to, b.branches.to) &&
    same(a.sources.plus, b.sources.plus) &&
    same(a.sources.minus, b.sources.minus) &&
    same(a.loads.plus, b.loads.plus) &&
    same(a.loads.minus, b.loads.minus) &&
    same(a.converters.inPlus, b.converters.inPlus) &&
    same(a.converters.inMinus, b.converters.inMinus) &&
    same(a.converters.outPlus, b.converters.outPlus) &&
    same(a.converters.outMinus, b.converters.outMinus) &&
    // tied nodes lie these voltages apart
    sameReals(a.converters.outputV, b.converters.outputV)
  );
}

function same(a: Int32Array | Uint8Array, b: Int32Array | Uint8Array): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** Apart from `same`: a loop over one kind of column takes a fraction of the time. */
export function sameReals(a: Float64Array, b: Float64Array): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}
