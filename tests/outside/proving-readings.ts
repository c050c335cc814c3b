import { loadLaw, type NetworkNumbers } from "../../src/core/circuit/solve/types.js";
import { conditionKey, type Metered, type Probe, probeKey } from "../../src/core/proving/probe.js";
import { pocketMeter } from "../../src/core/reference/meters.js";
import { type AlteredDeck, runNgspiceAltered } from "./ngspice-run.js";
import { networkWith } from "./proving-boats.js";
import { type Added, faultDeck, groundOf, hangsOn, type Meter, meterA, metered } from "./proving-deck.js";
import { brokenOhm, type FaultyBoat } from "./proving-faulty.js";

/** A boat and what is to be read of it, in whatever state. */
export interface Asked {
  readonly faulty: FaultyBoat;
  readonly probes: readonly Probe[];
}

type OhmProbe = Extract<Probe, { kind: "ohm" }>;
type VoltProbe = Extract<Probe, { kind: "voltage" }>;
type Voltages = ReadonlyMap<string, number>;

/** A boat in one state. */
interface State {
  readonly faulty: FaultyBoat;
  readonly network: NetworkNumbers;
}

/** A boat is asked many times in one state; ngspice need tell only once. */
const known = new WeakMap<FaultyBoat, Map<string, { readonly state: State; readonly shown: Voltages }>>();

/** What a meter without error would show, from ngspice [V, A or Ω, its own leads included]; a marking is read off the fuse itself. */
export function exactReadings(all: readonly Asked[]): number[][] {
  solveLive(all);
  const floating = shownFloating(all);
  const ohms = shownOhms(all);
  return all.map(({ faulty, probes }, i) =>
    probes.map((probe) => {
      if (probe.kind === "marking") return markingOf(faulty, probe.at);
      if (probe.kind === "ohm") return ohms.get(`${i} ${probeKey(probe)}`) ?? Number.NaN;
      const withMeter = floating.get(`${i} ${probeKey(probe)}`);
      if (withMeter !== undefined) return withMeter;
      const live = known.get(faulty)?.get(conditionKey(probe));
      return live ? liveReading(live.state, live.shown, probe) : Number.NaN;
    }),
  );
}

function markingOf({ boat: { bench }, markedA }: FaultyBoat, device: string): number {
  const part = bench.parts[bench.branchOf.get(device) ?? -1]?.[0];
  return markedA.get(device) ?? (part?.kind === "protection" ? part.ratingA : Number.NaN);
}

/** Solves every live state that is not known yet, all in one run. */
function solveLive(all: readonly Asked[]): void {
  const fresh = new Map<string, State & { readonly key: string }>();
  all.forEach(({ faulty, probes }, i) => {
    for (const probe of probes) {
      if (probe.kind !== "voltage" && probe.kind !== "current") continue;
      const key = conditionKey(probe);
      if (known.get(faulty)?.has(key)) continue;
      fresh.set(`${i} ${key}`, { faulty, key, network: networkWith(faulty.boat, faulty.truth, probe.on) });
    }
  });
  const states = [...fresh.values()];
  const shown = liveVoltages(states);
  states.forEach((state, i) => {
    const own = known.get(state.faulty) ?? new Map();
    const { network, shown: voltages } = shown[i] ?? { network: state.network, shown: new Map() };
    own.set(state.key, { state: { faulty: state.faulty, network }, shown: voltages });
    known.set(state.faulty, own);
  });
}

/** Voltages of boats with a break in them, the meter's own resistance across its points: elsewhere it changes nothing one could read. */
function shownFloating(all: readonly Asked[]): Map<string, number> {
  const byState = new Map<string, { asked: number; state: State; probes: VoltProbe[] }>();
  all.forEach(({ faulty, probes }, i) => {
    if (!faulty.truth.branchOhm.some((ohm) => ohm >= brokenOhm)) return;
    for (const probe of probes) {
      if (probe.kind !== "voltage") continue;
      const state = known.get(faulty)?.get(conditionKey(probe))?.state;
      if (!state) continue;
      const key = `${i} ${conditionKey(probe)}`;
      const found = byState.get(key) ?? { asked: i, state, probes: [] };
      byState.set(key, found);
      found.probes.push(probe);
    }
  });
  const states = [...byState.values()];
  if (states.length === 0) return new Map();
  const points = runNgspiceAltered(
    states.map(({ state, probes }): AlteredDeck => {
      const { faulty, network } = state;
      const meters = metersAt(state, probes);
      return {
        deck: faultDeck(network, faulty.boat.bench.kneeV, faulty.added, meters),
        alter: metered(meters),
      };
    }),
  );
  return new Map(
    states.flatMap(({ asked, state, probes }, i) =>
      probes.map((probe, k): [string, number] => [
        `${asked} ${probeKey(probe)}`,
        between(state, found(points[i]?.[k], state), probe.at, probe.against),
      ]),
    ),
  );
}

/** Ohms asked for, each state with the meter put to one pair of points after another. */
function shownOhms(all: readonly Asked[]): Map<string, number> {
  const byState = new Map<
    string,
    { asked: number; state: State; added: readonly Added[]; probes: OhmProbe[] }
  >();
  all.forEach(({ faulty, probes }, i) => {
    for (const probe of probes) {
      if (probe.kind !== "ohm") continue;
      const key = `${i} ${conditionKey(probe)}`;
      const found = byState.get(key) ?? { ...deadState(faulty, probe), asked: i, probes: [] };
      byState.set(key, found);
      found.probes.push(probe);
    }
  });
  const states = [...byState.values()];
  const points = states.length === 0 ? [] : runNgspiceAltered(states.map(deadDeck));
  return new Map(
    states.flatMap(({ state, asked, probes }, i) =>
      probes.map((probe, k): [string, number] => {
        const v = between(state, found(points[i]?.[k], state), probe.at, probe.against);
        return [`${asked} ${probeKey(probe)}`, v / meterA + pocketMeter.leadOhm.usual];
      }),
    ),
  );
}

function deadDeck({
  state,
  added,
  probes,
}: {
  readonly state: State;
  readonly added: readonly Added[];
  readonly probes: readonly OhmProbe[];
}): AlteredDeck {
  const meters = metersAt(state, probes);
  return {
    deck: faultDeck(state.network, state.faulty.boat.bench.kneeV, added, meters),
    alter: metered(meters),
  };
}

const metersAt = (state: State, probes: readonly Exclude<Metered, { kind: "current" }>[]): Meter[] =>
  probes.map(({ kind, at, against }) => ({
    kind,
    plus: nodeNamed(state, at),
    minus: nodeNamed(state, against),
  }));

/**
 * Live boats. A converter whose input is under its least stops, and the boat is asked again without it; so is one that finds no state of
 * rest with its converters on.
 */
function liveVoltages(
  all: readonly State[],
): { readonly network: NetworkNumbers; readonly shown: Voltages }[] {
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
    return { network: stopped[i] ?? one.network, shown: found(shown, one) };
  });
}

/** Dead ends left out; should the simulator's iteration come to no rest, told of them too: it starts elsewhere then. */
function solved(all: readonly State[]): (Voltages | undefined)[] {
  const short = all.map(({ network, faulty: { added } }) => hangsOn(network, added));
  const first = points(all, short);
  const stuck = all.flatMap((_, i) => (first[i] ? [] : [i]));
  const whole = short.map((hangs) => hangs.map((_, node) => node));
  const again = points(
    stuck.flatMap((i) => all[i] ?? []),
    stuck.flatMap((i) => whole[i] ?? []),
  );
  return all.map(({ network }, i) => {
    const hangs = (first[i] ? short : whole)[i];
    const point = first[i] ?? again[stuck.indexOf(i)];
    if (!point || !hangs) return undefined;
    return new Map(Array.from(hangs, (on, node) => [`n${node}`, voltage(network, point, on)]));
  });
}

function points(all: readonly State[], hangs: readonly Int32Array[]): (Voltages | undefined)[] {
  if (all.length === 0) return [];
  const decks = all.map(({ network, faulty: { boat, added } }, i) => ({
    deck: faultDeck(network, boat.bench.kneeV, added, [], hangs[i]),
    alter: [[]],
  }));
  return runNgspiceAltered(decks).map(([point]) => point);
}

function withoutStarved({ network }: State, shown: Voltages | undefined): NetworkNumbers | undefined {
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

function liveReading(state: State, shown: Voltages, probe: Exclude<Metered, OhmProbe>): number {
  const { network, faulty } = state;
  if (probe.kind === "voltage") return between(state, shown, probe.at, probe.against);
  const row = faulty.boat.bench.branchOf.get(probe.at) ?? 0;
  const { from, to, ohm } = network.branches;
  return (voltage(network, shown, from[row] ?? 0) - voltage(network, shown, to[row] ?? 0)) / (ohm[row] ?? 1);
}

const between = (state: State, shown: Voltages, at: string, against: string): number =>
  voltage(state.network, shown, nodeNamed(state, at)) -
  voltage(state.network, shown, nodeNamed(state, against));

function voltage(network: NetworkNumbers, shown: Voltages, node: number): number {
  return node === groundOf(network) ? 0 : (shown.get(`n${node}`) ?? Number.NaN);
}

function found(point: Voltages | undefined, { faulty }: State): Voltages {
  if (!point) throw new Error(`ngspice found no state of rest of ${faulty.boat.name}`);
  return point;
}

const nodeNamed = ({ faulty }: State, name: string) => faulty.boat.bench.nodeOf.get(name) ?? -1;

/** The boat with the batteries apart, gear as an ohmmeter sees it, and wires taken off, crossed ones too. */
function deadState(
  faulty: FaultyBoat,
  { on, lifted = [] }: OhmProbe,
): { state: State; added: readonly Added[] } {
  const { boat, truth, added } = faulty;
  const { topology, branchOf } = boat.bench;
  const none = new Int32Array(0);
  const nothing = new Float64Array(0);
  const live = networkWith(boat, truth, on);
  const off = new Set(lifted.map((id) => branchOf.get(id) ?? -1));
  const network: NetworkNumbers = {
    ...live,
    branches: {
      ...live.branches,
      ohm: live.branches.ohm.map((ohm, row) => (off.has(row) ? brokenOhm : ohm)),
    },
    sources: {
      ...live.sources,
      emfV: live.sources.emfV.map(() => 0),
      ohm: live.sources.ohm.map(() => brokenOhm),
    },
    loads: {
      ...live.loads,
      law: live.loads.law.map(() => loadLaw.resistance),
      value: truth.restingOhm.map((ohm, i) => {
        if (!on.includes(topology.gear[i]?.id ?? "")) return Number.POSITIVE_INFINITY;
        return truth.loadFactor[i] === 0 ? brokenOhm : ohm;
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
  return {
    state: { faulty, network },
    added: added.filter(({ wire }) => wire === undefined || !off.has(wire)),
  };
}
