import { loadLaw, type NetworkNumbers } from "../../src/core/circuit/solve/types.js";
import type { Probe } from "../../src/core/proving/probe.js";
import { pocketMeter } from "../../src/core/reference/meters.js";
import { type AlteredDeck, runNgspiceAltered } from "./ngspice-run.js";
import type { Boat } from "./proving-boats.js";
import { faultDeck, groundOf } from "./proving-deck.js";
import type { FaultyBoat } from "./proving-faulty.js";

/** A boat in one state and what is to be read in it. */
export interface Asked extends FaultyBoat {
  readonly boat: Boat;
  readonly on: readonly string[];
  readonly probes: readonly Probe[];
}

type OhmProbe = Extract<Probe, { kind: "ohm" }>;
type Voltages = ReadonlyMap<string, number>;

const meterA = 1e-3;
/** A boat is asked many times in one state; ngspice need tell only once. */
const known = new WeakMap<NetworkNumbers, Voltages>();

/** What a meter without error would show, from ngspice [V, A or Ω, its own leads included]. */
export function exactReadings(all: readonly Asked[]): number[][] {
  const fresh = all.filter(
    ({ network, probes }) => !known.has(network) && probes.some(({ kind }) => kind !== "ohm"),
  );
  const shown = liveVoltages(fresh);
  fresh.forEach(({ network }, i) => {
    const voltages = shown[i];
    if (voltages) known.set(network, voltages);
  });
  const asked = all.map((one) => ({ one, ohms: one.probes.filter((probe) => probe.kind === "ohm") }));
  const dead = asked.filter(({ ohms }) => ohms.length > 0);
  const points = dead.length === 0 ? [] : runNgspiceAltered(dead.map(({ one, ohms }) => deadDeck(one, ohms)));
  return asked.map((ask) => {
    const { one, ohms } = ask;
    const own = points[dead.indexOf(ask)] ?? [];
    return one.probes.map((probe) => {
      if (probe.kind !== "ohm") return live(one, known.get(one.network) ?? new Map(), probe);
      const v = between(one, own[ohms.indexOf(probe)] ?? new Map(), probe.at, probe.against);
      return v / meterA + pocketMeter.leadOhm.usual;
    });
  });
}

/** A dead boat with the ohmmeter put to one pair of points after another. */
function deadDeck(one: Asked, ohms: readonly OhmProbe[]): AlteredDeck {
  const meters = ohms.map(({ at, against }) => ({
    plus: nodeNamed(one, at),
    minus: nodeNamed(one, against),
  }));
  return {
    deck: faultDeck(deadNetwork(one), one.boat.bench.kneeV, one.added, meters),
    alter: meters.map((_, k) => [
      ...(k > 0 ? [`alter IM${k - 1} dc = 0`] : []),
      `alter IM${k} dc = ${meterA}`,
    ]),
  };
}

/**
 * Live boats. A converter whose input is under its least stops, and the boat is asked again without it; so is one that finds no state of
 * rest with its converters on.
 */
function liveVoltages(all: readonly Asked[]): Voltages[] {
  const first = solved(all);
  const stopped = all.map((one, i) => withoutStarved(one, first[i]));
  const again = solved(
    all.flatMap((one, i) => {
      const network = stopped[i];
      return network ? [{ ...one, network }] : [];
    }),
  );
  let next = 0;
  return all.map((one, i) => {
    const shown = stopped[i] ? again[next++] : first[i];
    if (!shown) throw new Error(`ngspice found no state of rest of ${one.boat.name}`);
    return shown;
  });
}

function solved(all: readonly Asked[]): (Voltages | undefined)[] {
  if (all.length === 0) return [];
  const decks = all.map(({ network, boat, added }) => ({
    deck: faultDeck(network, boat.bench.kneeV, added),
    alter: [[]],
  }));
  return runNgspiceAltered(decks).map(([point]) => point);
}

function withoutStarved({ network }: Asked, shown: Voltages | undefined): NetworkNumbers | undefined {
  const { converters } = network;
  const fed = [...converters.outputV.keys()].filter((i) => {
    if (!shown) return false;
    const inV =
      voltage(network, shown, converters.inPlus[i] ?? 0) -
      voltage(network, shown, converters.inMinus[i] ?? 0);
    return inV >= (converters.minInputV[i] ?? 0);
  });
  if (fed.length === converters.outputV.length) return undefined;
  const nodes = (column: Int32Array) => column.filter((_, i) => fed.includes(i));
  const figures = (column: Float64Array) => column.filter((_, i) => fed.includes(i));
  return {
    ...network,
    converters: {
      inPlus: nodes(converters.inPlus),
      inMinus: nodes(converters.inMinus),
      outPlus: nodes(converters.outPlus),
      outMinus: nodes(converters.outMinus),
      outputV: figures(converters.outputV),
      maxOutputA: figures(converters.maxOutputA),
      efficiency: figures(converters.efficiency),
      standbyW: figures(converters.standbyW),
      minInputV: figures(converters.minInputV),
    },
  };
}

function live(one: Asked, shown: Voltages, probe: Exclude<Probe, { kind: "ohm" }>): number {
  const { network, boat } = one;
  if (probe.kind === "voltage") return between(one, shown, probe.at, probe.against);
  const row = boat.bench.branchOf.get(probe.at) ?? 0;
  const { from, to, ohm } = network.branches;
  return (voltage(network, shown, from[row] ?? 0) - voltage(network, shown, to[row] ?? 0)) / (ohm[row] ?? 1);
}

function between(one: Asked, shown: Voltages, at: string, against: string): number {
  return (
    voltage(one.network, shown, nodeNamed(one, at)) - voltage(one.network, shown, nodeNamed(one, against))
  );
}

function voltage(network: NetworkNumbers, shown: Voltages, node: number): number {
  return node === groundOf(network) ? 0 : (shown.get(`n${node}`) ?? Number.NaN);
}

const nodeNamed = ({ boat }: Asked, name: string) => boat.bench.nodeOf.get(name) ?? -1;

/** The network with the batteries apart and gear as an ohmmeter sees it. */
function deadNetwork({ network, boat: { bench }, on }: Asked): NetworkNumbers {
  const none = new Int32Array(0);
  const nothing = new Float64Array(0);
  const { topology } = bench;
  return {
    ...network,
    sources: {
      ...network.sources,
      emfV: network.sources.emfV.map(() => 0),
      ohm: network.sources.ohm.map(() => 1e9),
    },
    loads: {
      ...network.loads,
      law: network.loads.law.map(() => loadLaw.resistance),
      value: bench.restingOhm.map((ohm, i) => {
        if (!on.includes(topology.gear[i]?.id ?? "")) return Number.POSITIVE_INFINITY;
        return network.loads.value[i] === 0 ? 1e9 : ohm;
      }),
    },
    converters: {
      inPlus: none,
      inMinus: none,
      outPlus: none,
      outMinus: none,
      outputV: nothing,
      maxOutputA: nothing,
      efficiency: nothing,
      standbyW: nothing,
      minInputV: nothing,
    },
  };
}
