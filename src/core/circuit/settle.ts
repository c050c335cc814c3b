import type { CompletePlan } from "../plan/completed.js";
import type { ConductorSize } from "../plan/model/common.js";
import type { RuleSet } from "../reference/rule-sets.js";
import { largestShort } from "../reference/short-circuit.js";
import { cornerFigures } from "./corner-figures.js";
import { type CornerState, cornerNames, type Stage, stagesOf } from "./corners.js";
import { DeviceJudge } from "./device-judge.js";
import { RunAmpacities } from "./guards/run-ampacities.js";
import { CircuitNetwork } from "./network.js";
import type { Chosen } from "./parts.js";
import type { ProtectionFigures } from "./protection/types.js";
import type { CornerFigures } from "./results.js";
import type { SizeResult } from "./sizes/types.js";
import { DemandReader } from "./sizing/demand.js";
import { Forest } from "./sizing/forest.js";
import { type RunGroup, runGroups } from "./sizing/groups.js";
import { sizePlan } from "./sizing/size-plan.js";
import { type SolvedCorner, solveCorner } from "./solved-corner.js";
import { buildTopology } from "./topology/build.js";
import { supplyTree } from "./topology/tree.js";
import type { Topology } from "./topology/types.js";

/** A plan's circuit with every size and rating settled, solved at every corner. */
export interface SettledCircuit {
  readonly topology: Topology;
  /** The circuit in numbers, for further questions to it. */
  readonly network: CircuitNetwork;
  readonly chosen: Chosen;
  readonly sizes: SizeResult;
  readonly protection: readonly ProtectionFigures[];
  readonly states: readonly CornerState[];
  readonly corners: readonly CornerFigures[];
}

/** Sizes chosen among given candidates, and what the circuit and its devices do with them. */
interface Sized {
  readonly indexes: readonly number[];
  readonly sizes: SizeResult;
  readonly chosen: Chosen;
  readonly first: readonly SolvedCorner[];
  readonly protection: readonly ProtectionFigures[];
}

/** Sizes tried upward for conductors that would not withstand a short, at the most: more than any series has. */
const mostStrengthenings = 32;
/** Times ratings are taken anew from the loads of what was sized for the last ones. */
const mostRounds = 3;

/**
 * Sizes, ratings and corners of a plan. Ratings are first taken as the load and what the owner fixed allow, conductors chosen to
 * match them, then every device judged with all conductors known.
 */
export function settleCircuit(plan: CompletePlan, rules: RuleSet): SettledCircuit {
  const topology = buildTopology(plan);
  const network = new CircuitNetwork(plan, topology);
  const stages = stagesOf(plan);
  const worst = stages.findIndex(({ state }) => state.name === cornerNames.worst);
  const highest = stages.findIndex(({ state }) => state.name === cornerNames.highest);
  const [worstStage, highestStage] = [stages[worst], stages[highest]];
  if (!worstStage || !highestStage)
    throw new RangeError("the worst-drop and highest-voltage corners are required");
  const forest = new Forest(topology);
  const demands = new DemandReader({ plan, topology, forest, gear: network.gear });
  const cases = casesOf(worstStage);
  const bounds = [...cases, ...casesOf(highestStage)].map(({ state }) => demands.at(state));
  const mostBranchA = greatest(bounds.map(({ flows }) => flows.mostOfAll()));
  const mostGearA = greatest(bounds.map((bound) => bound.mostGearA));
  const ampacities = new RunAmpacities(plan, rules);
  const groups = runGroups(plan, rules, ampacities, worstStage.state);
  const tree = supplyTree(topology);
  const coldestC = Math.min(largestShort.maxCopperC, plan.ambient.coldC);
  const judge = new DeviceJudge({ plan, rules, ampacities, topology, tree, pieces: network.gear.pieces });

  const openSizes = new Set(groups.filter(({ fixed }) => fixed === undefined).map(({ id }) => id));
  const largest = chosenWith(
    groups,
    ({ candidates }) => candidates.length - 1,
    judge.firstRatings(mostBranchA),
  );
  const ratingsA = judge.ratings(
    {
      chosen: largest,
      hotOhm: network.ohmAt(largest, worstStage.state),
      coldOhm: network.leastOhm(largest, coldestC),
      branchA: mostBranchA,
      gearA: mostGearA,
    },
    openSizes,
  );
  /** Every corner and every device, with sizes and ratings chosen. */
  const judged = (chosen: Chosen): Pick<Sized, "chosen" | "first" | "protection"> => {
    const first = stages.map(({ state, turns }) => solveCorner(network, chosen, state, turns));
    const [branchA, gearA] = loadsOf(first);
    const hotOhm = first[worst]?.numbers.branches.ohm ?? new Float64Array(0);
    const coldOhm = network.leastOhm(chosen, coldestC);
    return { chosen, first, protection: judge.all({ chosen, hotOhm, coldOhm, branchA, gearA }) };
  };
  const size = (among: readonly RunGroup[], ratingsA: ReadonlyMap<string, number>): Sized => {
    const { sizes, indexes } = sizePlan({
      plan,
      rules,
      network,
      forest,
      demands,
      groups: among,
      cases,
      mostBranchA,
      protectionA: judge.ratingByGroup(ratingsA),
      largest: { ...largest, ratingsA },
    });
    return { indexes, sizes, ...judged(chosenWith(among, (_group, at) => indexes[at] ?? 0, ratingsA)) };
  };

  /** As `size`; where a device has no rating that suits, with the larger one it would have: that has less resistance, and may do. */
  const sizeWider = (among: readonly RunGroup[], ratingsA: ReadonlyMap<string, number>): Sized => {
    const sized = size(among, ratingsA);
    const wider = widerRatings(sized);
    if (!wider) return sized;
    const again = size(among, wider);
    return widerRatings(again) ? sized : again;
  };
  const sizedFor = (ratingsA: ReadonlyMap<string, number>): Sized => {
    let among: readonly RunGroup[] = groups;
    let sized = sizeWider(among, ratingsA);
    const { lowerBound } = sized.sizes;
    const without = new Set<string>();
    let farShort = false;
    for (let step = 0; step < mostStrengthenings; step += 1) {
      const stronger = judge.strengthened(among, sized.indexes, sized.protection, without);
      if (!stronger) break;
      for (const device of stronger.stuck) without.add(device);
      // what was raised in vain is not kept
      const afresh = stronger.stuck.length > 0;
      among = afresh ? groups : stronger.groups;
      farShort = !afresh && (farShort || stronger.farShort);
      sized = sizeWider(among, ratingsA);
    }
    const { sizes } = sized;
    return farShort && sizes.proof === "proven"
      ? { ...sized, sizes: { ...sizes, proof: "bounded", lowerBound } }
      : sized;
  };
  let sized = sizedFor(ratingsA);
  for (let round = 0; round < mostRounds; round += 1) {
    const settledA = settledRatings(sized);
    if (!settledA) break;
    // a smaller fuse has more resistance: what is said of it, and the limits, hold with the one that is fitted
    const again = { ...sized, ...judged({ ...sized.chosen, ratingsA: settledA }) };
    sized = keepsLimits(network, plan, again, worst) ? again : sizedFor(settledA);
  }
  const { sizes, protection } = sized;
  const ratingsLeft = settledRatings(sized);
  const { chosen, first } = ratingsLeft ? judged({ ...sized.chosen, ratingsA: ratingsLeft }) : sized;
  return {
    topology,
    network,
    chosen,
    sizes,
    protection,
    states: stages.map(({ state }) => state),
    corners: first.map((corner) => cornerFigures(network, plan, chosen, corner)),
  };
}

/** Ratings the devices were judged to need, where they are not those the circuit was solved with. */
function settledRatings({ chosen, protection }: Sized): ReadonlyMap<string, number> | undefined {
  const settledA = new Map(protection.map(({ id, ratingA }) => [id, ratingA]));
  const changed = [...settledA].some(([id, ratingA]) => chosen.ratingsA.get(id) !== ratingA);
  return changed ? settledA : undefined;
}

/** The ratings of a circuit with those that would suit if conductors were thicker put in; undefined: all have one that suits. */
function widerRatings({ chosen, protection }: Sized): ReadonlyMap<string, number> | undefined {
  const wanted = protection.flatMap(({ id, withThicker }) =>
    withThicker === undefined ? [] : [[id, withThicker.ratingA] as const],
  );
  return wanted.length === 0 ? undefined : new Map([...chosen.ratingsA, ...wanted]);
}

/** Whether every drop that the sizes were to keep is kept in the worst corner. */
function keepsLimits(
  network: CircuitNetwork,
  plan: CompletePlan,
  { chosen, first, sizes }: Sized,
  worst: number,
): boolean {
  const corner = first[worst];
  if (corner === undefined) return true;
  const unmet = new Set(sizes.unmet);
  const limits = new Map(plan.gear.map(({ name, maxDropShare }) => [name, maxDropShare]));
  return cornerFigures(network, plan, chosen, corner).gear.every(
    ({ id, on, dropShare }) =>
      !on || unmet.has(id) || !(dropShare > (limits.get(id) ?? Number.POSITIVE_INFINITY) * (1 + 1e-9)),
  );
}

/** The corner itself, where all gear that is on is judged, and each turn, where its own is. */
function casesOf({ state, turns }: Stage) {
  return [{ state }, ...turns];
}

/** Greatest current of each branch and piece of gear over the corners and their turns [A]. */
function loadsOf(corners: readonly SolvedCorner[]): [Float64Array, Float64Array] {
  const solutions = corners.flatMap(({ solution, turns }) => [
    solution,
    ...turns.map((turn) => turn.solution),
  ]);
  return [greatest(solutions.map(({ branchA }) => branchA)), greatest(solutions.map(({ loadA }) => loadA))];
}

/** Element by element, the greatest of several tables of one length, signs left out. */
function greatest(tables: readonly Float64Array[]): Float64Array {
  const most = new Float64Array(tables[0]?.length ?? 0);
  for (const table of tables) {
    for (let at = 0; at < most.length; at += 1) most[at] = Math.max(most[at] ?? 0, Math.abs(table[at] ?? 0));
  }
  return most;
}

function chosenWith(
  groups: readonly RunGroup[],
  pick: (group: RunGroup, at: number) => number,
  ratingsA: ReadonlyMap<string, number>,
): Chosen {
  const sizes = new Map<string, ConductorSize>();
  groups.forEach((group, at) => {
    const candidate = group.candidates[group.fixed ?? pick(group, at)];
    if (candidate) sizes.set(group.id, candidate.size);
  });
  return { sizes, tinned: new Map(groups.map(({ id, run }) => [id, run.tinned])), ratingsA };
}
