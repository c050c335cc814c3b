import { protectionOhm } from "../circuit/conductor/contacts.js";
import { deviceKinds } from "../circuit/protection/devices.js";
import type { PartPlan, TopologyBranch } from "../circuit/topology/types.js";
import type { JointKind, Surroundings } from "../plan/model/common.js";
import { extraResistance, faultOdds } from "../reference/fault-odds.js";
import { joints } from "../reference/joints.js";
import type { Bench } from "./bench-network.js";
import { brokenOhm, type Change, noChange } from "./change.js";
import type { PolePair } from "./shadows.js";
import { keysOf } from "./state-group.js";
import type { FaultKind } from "./suspect.js";

/** An explanation that may have one unknown size: its change for each size, and the sizes possible. */
export interface Hypothesis {
  readonly kind: FaultKind;
  readonly at: readonly string[];
  readonly parts: readonly string[];
  readonly odds: number;
  /** Row of the branch, where it is one that a resistance sits in. */
  readonly branch?: number;
  /** Key (see `keysOf`) of the number its size is added to. */
  readonly key?: number;
  readonly figure?: number;
  readonly sized?: { readonly min: number; readonly max: number; readonly scale: "log" | "linear" };
  change(size: number): Change;
}

const drawnDown = 0.02;

interface Listed extends Hypothesis {
  /** Rows of branches that must all be live for it to show; empty: it always may. */
  readonly through: readonly number[];
}

/** A boat is asked again after every reading; what may be wrong with it stays the same. */
const listed = new WeakMap<Bench, readonly Listed[]>();

/**
 * Every single explanation that could show in what was read: faults of the branches and gear that are live in some reading.
 * @param marked Markings read, by branch of the device: what is printed there may be what is there, however odd [A].
 */
export function singleHypotheses(
  bench: Bench,
  pairs: readonly PolePair[],
  live: ReadonlySet<number>,
  marked: ReadonlyMap<number, number>,
): Hypothesis[] {
  const all = listed.get(bench) ?? listFaults(bench, pairs);
  listed.set(bench, all);
  return [
    ...all.filter(({ through }) => through.every((row) => live.has(row))),
    ...[...marked].flatMap(([row, ratingA]) => {
      const known = all.some(
        ({ kind, branch, figure }) => kind === "wrong fuse" && branch === row && figure === ratingA,
      );
      return known ? [] : wrongFuse(bench, row, [ratingA]);
    }),
  ];
}

function listFaults(bench: Bench, pairs: readonly PolePair[]): Listed[] {
  const always = (hypothesis: Hypothesis): Listed => ({ ...hypothesis, through: [] });
  return [
    always({ kind: "well", at: [], parts: [], odds: faultOdds.well, change: () => noChange }),
    ...[...bench.topology.branches.keys()].flatMap((row) =>
      branchFaults(bench, row).map((one): Listed => ({ ...one, through: [row] })),
    ),
    ...pairs.flatMap((pair) =>
      pairFaults(bench, pair).map((one): Listed => ({ ...one, through: [pair.out, pair.back] })),
    ),
    ...gearFaults(bench),
    ...batteryFaults(bench).map(always),
  ];
}

function branchFaults(bench: Bench, row: number): Hypothesis[] {
  const branch = bench.topology.branches[row];
  if (!branch) return [];
  const ranked = partOdds(bench, branch);
  const odds = ranked.reduce((sum, part) => sum + part.odds, 0);
  const about = { at: [branch.id], parts: ranked.map(({ name }) => name), branch: row };
  const fitted = bench.parts[row]?.[0];
  const isFuse = fitted?.kind === "protection";
  const list: Hypothesis[] = [
    {
      ...about,
      kind: "resistance",
      odds: odds * (1 - faultOdds.openShare),
      key: row,
      sized: { min: extraResistance.minOhm, max: extraResistance.maxOhm, scale: "log" },
      change: (ohm) => ({ extraOhm: new Map([[row, ohm]]) }),
    },
    {
      ...about,
      kind: isFuse ? "fuse blown" : "open",
      odds: isFuse ? faultOdds.fuseBlown : odds * faultOdds.openShare,
      change: () => ({ ohm: new Map([[row, brokenOhm]]) }),
    },
  ];
  if (!isFuse) return list;
  const device = bench.topology.devices.find(({ id }) => id === branch.id)?.protection.device;
  const made = device ? deviceKinds[device].ratingsA : [];
  const near = [
    ...made.filter((a) => a < fitted.ratingA).slice(-2),
    ...made.filter((a) => a > fitted.ratingA).slice(0, 2),
  ];
  return [...list, ...wrongFuse(bench, row, near)];
}

/** A fuse or breaker of another rating than the plan's: one of these. */
export function wrongFuse(
  { topology, parts }: Bench,
  row: number,
  ratingsA: readonly number[],
): Hypothesis[] {
  const id = topology.branches[row]?.id ?? "";
  const device = topology.devices.find((one) => one.id === id);
  const fitted = parts[row]?.[0];
  if (!device || fitted?.kind !== "protection") return [];
  return ratingsA
    .filter((ratingA) => ratingA !== fitted.ratingA)
    .map((ratingA) => ({
      kind: "wrong fuse",
      at: [id],
      parts: [],
      odds: faultOdds.wrongFuse / ratingsA.length,
      branch: row,
      figure: ratingA,
      change: () => ({
        ohm: new Map([[row, protectionOhm(device.protection.device, ratingA)]]),
        markedA: new Map([[row, ratingA]]),
      }),
    }));
}

function pairFaults({ topology, numbers }: Bench, pair: PolePair): Hypothesis[] {
  const at = [topology.branches[pair.out]?.id ?? ""];
  const ohm = (row: number) => numbers.branches.ohm[row] ?? brokenOhm;
  const blown: readonly (readonly [number, number])[] = pair.guard < 0 ? [] : [[pair.guard, brokenOhm]];
  return [
    {
      kind: "short",
      at,
      parts: [],
      odds: faultOdds.short,
      change: () => ({ ohm: new Map([[pair.across, drawnDown], ...blown]) }),
    },
    {
      kind: "reversed",
      at,
      parts: [],
      odds: faultOdds.reversed,
      change: () => ({
        ohm: new Map([
          [pair.out, brokenOhm],
          [pair.back, brokenOhm],
          [pair.outToMinus, ohm(pair.out)],
          [pair.plusToBack, ohm(pair.back)],
        ]),
      }),
    },
  ];
}

function gearFaults({ topology, numbers: { branches } }: Bench): Listed[] {
  return topology.gear.map(({ id, plus }, row) => ({
    kind: "gear dead",
    at: [id],
    parts: [],
    odds: faultOdds.gearDead,
    change: () => ({ load: new Map([[row, 0]]) }),
    through: [Math.max(branches.to.indexOf(plus), branches.from.indexOf(plus))].filter((at) => at >= 0),
  }));
}

function batteryFaults(bench: Bench): Hypothesis[] {
  const { topology, plan } = bench;
  const { emf, source } = keysOf(bench);
  const nominalV = new Map(plan.batteries.map((battery) => [battery.name, battery.nominalV]));
  return topology.sources.flatMap(({ battery }, row): Hypothesis[] => {
    const blocks = (nominalV.get(battery) ?? 12) / 12;
    return [
      {
        kind: "battery low",
        at: [battery],
        parts: [],
        odds: faultOdds.batteryLow,
        key: emf + row,
        sized: { min: -3 * blocks, max: -0.3 * blocks, scale: "linear" },
        change: (v) => ({ emfV: new Map([[row, v]]) }),
      },
      {
        kind: "battery worn",
        at: [battery],
        parts: [],
        odds: faultOdds.batteryWorn,
        key: source + row,
        sized: { min: extraResistance.minOhm, max: 2, scale: "log" },
        change: (ohm) => ({ sourceExtraOhm: new Map([[row, ohm]]) }),
      },
    ];
  });
}

/** Parts of a branch with their odds, the likeliest first: `start: crimped ring`, `conductor`, `end: sealed butt`, `fuse`. */
function partOdds(
  { plan }: Bench,
  branch: TopologyBranch,
): { readonly name: string; readonly odds: number }[] {
  const run = plan.runs.find(({ name }) => name === branch.of);
  const gear = plan.gear.find(({ name }) => name === branch.of);
  const wet = isWet(run?.surroundings ?? gear?.surroundings ?? "splash");
  const first = branch.parts.findIndex(({ kind }) => kind === "joint");
  return branch.parts
    .map((part, at) => {
      const end = branch.parts.length === 1 ? "" : at === first ? "start: " : "end: ";
      return { name: part.kind === "joint" ? `${end}${part.joint}` : part.kind, odds: oddsOf(part, wet) };
    })
    .sort((a, b) => b.odds - a.odds);
}

function oddsOf(part: PartPlan, wet: boolean): number {
  switch (part.kind) {
    case "conductor":
    case "hull":
      return faultOdds.conductor;
    case "lead":
      return faultOdds.lead;
    case "protection":
    case "lead fuse":
      return faultOdds.fuseContact;
    case "switch":
      return faultOdds.switchContact;
    case "joint":
      return jointOdds(part.joint, wet);
    default:
      return part satisfies never;
  }
}

function jointOdds(kind: JointKind, wet: boolean): number {
  return faultOdds.joint[kind] * (wet && !joints[kind].sealed ? faultOdds.wetFactor : 1);
}

function isWet(place: Surroundings): boolean {
  return place === "wet" || place === "bilge";
}
