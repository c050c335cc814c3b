import { nominalCurrentA, ratedV } from "../circuit/loads.js";
import type { Topology, TopologyBranch } from "../circuit/topology/types.js";
import type { JointKind } from "../plan/model/common.js";
import { readingEffort, standsIdle } from "../reference/reading-effort.js";
import type { Bench } from "./bench-network.js";
import type { FaultReport } from "./faults.js";
import { type Probe, probeKey } from "./probe.js";
import { polePairs } from "./shadows.js";
import { postsOf, statesOf, supplyPoles } from "./sheet/places.js";
import type { StateGroup } from "./state-group.js";
import type { FaultKind } from "./suspect.js";

/** A reading one could take. */
export interface Possible {
  readonly probe: Probe;
  /** Work it is, against putting the meter to two points. */
  readonly effort: number;
  /** Joint that must be taken apart for it. */
  readonly opens?: JointKind;
}

/** Kinds of fault less probable than this have no readings proposed for them alone. */
const leastDoubt = 0.05;

/**
 * Every reading one could take: in the states of the boat measured so far, between the poles with the power off, at the batteries at rest and
 * under the load that draws most of them, fuses read by eye; and where a short is suspected, the same ohms with a wire taken off.
 */
export function possibleReadings(bench: Bench, report: FaultReport): Possible[] {
  const { topology } = bench;
  const live = report.model.groups.filter(({ probes: [first] }) => first && first.kind !== "ohm");
  const doubt = (...kinds: readonly FaultKind[]) =>
    report.suspects.reduce((sum, { kind, probability }) => sum + (kinds.includes(kind) ? probability : 0), 0);
  const short = doubt("short") >= leastDoubt;
  const broken = doubt("open", "fuse blown", "reversed") >= leastDoubt;
  const probes: Possible[] = [
    ...live.flatMap((group) =>
      [...probesInState(bench, group), ...fromThePosts(bench, group, broken)].map(metered),
    ),
    ...topology.sources.flatMap(({ battery }) => {
      const [at, against] = postsOf(bench, battery);
      const states = [[], heaviestOn(bench, battery)];
      return states.map((on) => metered({ kind: "voltage", at, against, on }));
    }),
    ...live.flatMap(({ liveRows }) =>
      liveRows.flatMap((row): Possible[] =>
        bench.parts[row]?.[0]?.kind === "protection"
          ? [
              {
                probe: { kind: "marking", at: topology.branches[row]?.id ?? "", on: [] },
                effort: readingEffort.sight,
              },
            ]
          : [],
      ),
    ),
    ...(short ? live.flatMap((group) => liftedInState(bench, group)) : []),
  ];
  const taken = new Set(report.model.readings.map(({ probe }) => probeKey(probe)));
  return probes.filter(({ probe }) => {
    const key = probeKey(probe);
    if (taken.has(key)) return false;
    taken.add(key);
    return true;
  });
}

const metered = (probe: Probe): Possible => ({ probe, effort: readingEffort.metered });

function probesInState(bench: Bench, { probes: [first], liveRows }: StateGroup): Probe[] {
  if (!first) return [];
  const { topology } = bench;
  const { on } = first;
  const name = (node: number) => topology.nodes[node] ?? "";
  const across = (plus: number, minus: number) => ({ at: name(plus), against: name(minus), on });
  const rows = new Set(liveRows);
  const branches = liveRows.flatMap((row) => topology.branches[row] ?? []);
  const points = new Set(branches.flatMap(({ from, to }) => [from, to]));
  const { pairs } = polePairs(bench);
  return [
    ...branches.flatMap((branch): Probe[] => {
      const { id, from, to, parts } = branch;
      const isFuse = parts[0]?.kind === "protection";
      return [
        { kind: "voltage", ...across(from, to) },
        ...(isFuse || id.endsWith(" / feed / out") ? [{ kind: "current", at: id, on } as const] : []),
        ...(isFuse || parts[0]?.kind === "switch" ? [{ kind: "ohm", ...across(from, to) } as const] : []),
      ];
    }),
    ...[...topology.sources, ...topology.gear, ...pairs]
      .filter(({ plus, minus }) => points.has(plus) && points.has(minus))
      .map(({ plus, minus }): Probe => ({ kind: "voltage", ...across(plus, minus) })),
    ...pairs
      .filter(({ out, back }) => rows.has(out) && rows.has(back))
      .map(({ plus, minus }): Probe => ({ kind: "ohm", ...across(plus, minus) })),
  ];
}

/**
 * One probe left at the supply, the other walked along a leg: what is lost so far. Where a break is suspected, against the other pole too:
 * what still arrives.
 */
function fromThePosts(bench: Bench, { probes: [first], liveRows }: StateGroup, broken: boolean): Probe[] {
  if (!first) return [];
  const { topology, plan } = bench;
  const { on } = first;
  return liveRows.flatMap((row): Probe[] => {
    const branch = topology.branches[row];
    if (!branch) return [];
    const [plus, minus] = supplyPoles(bench, plan.circuits.get(branch.circuits[0] ?? "")?.supply ?? "");
    const out = branch.leg === "out";
    const point = topology.nodes[out ? branch.to : branch.from] ?? "";
    const lost: readonly [string, string] = out ? [plus, point] : [point, minus];
    const left: readonly [string, string] = out ? [point, minus] : [plus, point];
    return (broken ? [lost, left] : [lost])
      .filter(([at, against]) => at !== against)
      .map(([at, against]) => ({ kind: "voltage", at, against, on }));
  });
}

/** Ohms between the poles before each pair of wires, its plus wire taken off there: a short that stays is nearer, one that goes is in it or beyond. */
function liftedInState(bench: Bench, { probes: [first], liveRows }: StateGroup): Possible[] {
  if (!first) return [];
  const { topology } = bench;
  const rows = new Set(liveRows);
  return polePairs(bench).pairs.flatMap(({ out, back }): Possible[] => {
    const [wire, other] = [topology.branches[out], topology.branches[back]];
    if (!wire || !other || !rows.has(out) || !rows.has(back)) return [];
    const joint = jointBefore(topology, wire);
    if (joint === undefined) return [];
    const loosens = readingEffort.loosens.some((kind) => kind === joint);
    return [
      {
        probe: {
          kind: "ohm",
          at: topology.nodes[wire.from] ?? "",
          against: topology.nodes[other.to] ?? "",
          on: first.on,
          lifted: [wire.id],
        },
        effort: loosens ? readingEffort.lifted : readingEffort.cut,
        opens: joint,
      },
    ];
  });
}

/** Joint at the start of a wire: its own, or that of the wire it goes on from. */
function jointBefore({ branches }: Topology, wire: TopologyBranch): JointKind | undefined {
  const before = branches.find(({ to, leg }) => to === wire.from && leg === wire.leg);
  return (
    wire.parts.find((part) => part.kind === "joint") ??
    before?.parts.findLast((part) => part.kind === "joint")
  )?.joint;
}

/** Gear to turn on so that a battery gives most: all of one way that may run where the boat stands, of one-at-a-time groups one entry. */
export function heaviestOn(bench: Bench, battery: string): readonly string[] {
  const { plan } = bench;
  const drawW = new Map(
    plan.gear.map((piece) => [piece.name, nominalCurrentA(piece, plan) * ratedV(piece, plan)]),
  );
  const sumW = (on: readonly string[]) => on.reduce((sum, name) => sum + (drawW.get(name) ?? 0), 0);
  const circuits = [...plan.circuits].filter(([, circuit]) => circuit.battery === battery).map(([id]) => id);
  const states = circuits.flatMap((circuit) =>
    statesOf(
      plan.gear.filter(
        ({ name, role }) =>
          plan.circuitOf.get(name) === circuit &&
          bench.gearOf.has(name) &&
          !standsIdle.roles.some((one) => one === role),
      ),
      plan.oneAtATime,
    ),
  );
  return states.reduce<readonly string[]>((best, on) => (sumW(on) > sumW(best) ? on : best), []);
}
