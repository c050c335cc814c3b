import type { CompletePlan } from "../plan/completed.js";
import type { ConductorSize } from "../plan/model/common.js";
import type { RuleSet } from "../reference/rule-sets.js";
import { cornerFigures, type SolvedCorner } from "./corner-figures.js";
import { type CornerState, cornerNames, cornersOf, turnsOf } from "./corners.js";
import { chargerGuards } from "./guards/chargers.js";
import { downstreamOf } from "./guards/downstream.js";
import { guardsOf } from "./guards/guards.js";
import { loadTable, priceNetwork } from "./network.js";
import type { Chosen } from "./parts.js";
import type { Guard } from "./protection/guard.js";
import { judgeGuards } from "./protection/judge-all.js";
import type { ProtectionFigures } from "./protection/types.js";
import type { CornerFigures } from "./results.js";
import { chooseSizes } from "./sizes/choose.js";
import type { SizeResult } from "./sizes/types.js";
import { demandAt } from "./sizing/demand.js";
import { exactDropsOf } from "./sizing/exact-drops.js";
import { type RunGroup, runGroups } from "./sizing/groups.js";
import { type SizingCase, type SizingInput, sizingProblemOf } from "./sizing/problem-of.js";
import { solveNetwork } from "./solve/solve.js";
import { buildTopology } from "./topology/build.js";
import { hasLoop, type SupplyTree, supplyTree } from "./topology/tree.js";
import type { Topology } from "./topology/types.js";

/** A plan's circuit with every size and rating settled, solved at every corner. */
export interface SettledCircuit {
  readonly topology: Topology;
  readonly chosen: Chosen;
  readonly sizes: SizeResult;
  readonly protection: readonly ProtectionFigures[];
  readonly states: readonly CornerState[];
  readonly corners: readonly CornerFigures[];
}

/** Sizes tried upward for conductors that would not withstand a short, at the most: more than any series has. */
const mostStrengthenings = 32;

/** Conditions a thicker conductor can mend. */
const mendedByCopper: ReadonlySet<string> = new Set([
  "protects-weakest",
  "clears-far-short",
  "withstands-short",
]);

/**
 * Sizes, ratings and corners of a plan. Ratings are first taken as the load and what the owner fixed allow, conductors chosen to
 * match them, then every device judged with all conductors known.
 */
export function settleCircuit(plan: CompletePlan, rules: RuleSet): SettledCircuit {
  const topology = buildTopology(plan);
  const tree = supplyTree(topology);
  const states = cornersOf(plan);
  const worst = states.find(({ name }) => name === cornerNames.worst);
  const highest = states.find(({ name }) => name === cornerNames.highest);
  if (!worst || !highest) throw new RangeError("the worst-drop and highest-voltage corners are required");
  const casesAt = (state: CornerState): SizingCase[] => [
    { state, demand: demandAt(topology, tree, plan, state) },
    ...turnsOf(plan, state).map((turn) => ({ ...turn, demand: demandAt(topology, tree, plan, turn.state) })),
  ];
  const cases = casesAt(worst);
  const demands = [...cases, ...casesAt(highest)].map(({ demand }) => demand);
  const mostBranchA = greatest(demands.map((demand) => demand.mostBranchA));
  const mostGearA = greatest(demands.map((demand) => demand.mostGearA));
  const groups = runGroups(plan, rules, worst.copperC, worst.engineSpaceCopperC);
  const judge = new Judge(plan, rules, topology, tree, worst, highest);

  const openSizes = new Set(groups.filter(({ fixed }) => fixed === undefined).map(({ id }) => id));
  const largest = chosenWith(groups, (group) => group.candidates.length - 1, judge.firstRatings(mostBranchA));
  const ratingsA = judge.ratings(largest, mostBranchA, mostGearA, openSizes);
  const resistive = plan.gear.some(({ behaviour }) => behaviour === "resistance");
  const size = (among: readonly RunGroup[]) => {
    const input: SizingInput = {
      plan,
      rules,
      topology,
      tree,
      groups: among,
      cases,
      mostBranchA,
      ratingsA,
      protectionA: judge.ratingByGroup(ratingsA),
    };
    const problem = sizingProblemOf(input);
    const exact = exactDropsOf(input, { ...largest, ratingsA }, problem.limits);
    const { indexes, ...sizes } = chooseSizes(problem, exact, { monotone: !resistive });
    const chosen = chosenWith(among, (_group, at) => indexes[at] ?? 0, ratingsA);
    const first = solveCorners(topology, plan, chosen, states);
    return { indexes, sizes, chosen, first, protection: judge.all(chosen, ...loadsOf(first)) };
  };

  let among: readonly RunGroup[] = groups;
  let sized = size(among);
  for (let step = 0; step < mostStrengthenings; step += 1) {
    const stronger = judge.strengthened(among, sized.indexes, sized.protection);
    if (!stronger) break;
    among = stronger;
    sized = size(among);
  }
  const { chosen, first, protection } = sized;
  const sizes = hasLoop(topology, tree) ? withoutProof(sized.sizes) : sized.sizes;
  const settledA = new Map(protection.map(({ id, ratingA }) => [id, ratingA]));
  const changed = [...settledA].some(([id, ratingA]) => ratingsA.get(id) !== ratingA);
  const settled = { ...chosen, ratingsA: settledA };
  const solved = changed ? solveCorners(topology, plan, settled, states) : first;
  return {
    topology,
    chosen: settled,
    sizes,
    protection,
    states,
    corners: solved.map((corner) => cornerFigures(topology, plan, corner)),
  };
}

/** The sizes hold by the true drops all the same; that none cheaper exists is not shown, nor any bound. */
function withoutProof(sizes: SizeResult): SizeResult {
  return sizes.proof === "proven" ? { ...sizes, proof: "bounded", lowerBound: 0 } : sizes;
}

function solveCorners(
  topology: Topology,
  plan: CompletePlan,
  chosen: Chosen,
  states: readonly CornerState[],
): SolvedCorner[] {
  return states.map((state) => {
    const priced = priceNetwork(topology, plan, chosen, state);
    const solution = solveNetwork(priced.numbers);
    const troubled = solution.status === "collapsed" || solution.underVoltage.length > 0;
    const cutOut = troubled ? solveNetwork(priced.numbers, { cutOut: true }).cutOut : [];
    const turns = turnsOf(plan, state).map((turn) => ({
      gear: turn.gear,
      solution: solveNetwork({ ...priced.numbers, loads: loadTable(topology, plan, turn.state) }),
    }));
    return { state, priced, solution, turns, cutOut };
  });
}

/** Greatest current of each branch and piece of gear over the corners and their turns [A]. */
function loadsOf(corners: readonly SolvedCorner[]): [Float64Array, Float64Array] {
  const solutions = corners.flatMap(({ solution, turns }) => [
    solution,
    ...turns.map((turn) => turn.solution),
  ]);
  return [
    greatest(solutions.map(({ branchA }) => branchA.map(Math.abs))),
    greatest(solutions.map(({ loadA }) => loadA)),
  ];
}

/** Element by element, the greatest of several tables of one length. */
function greatest(tables: readonly Float64Array[]): Float64Array {
  const most = Float64Array.from(tables[0] ?? []);
  for (const table of tables) {
    for (let at = 0; at < most.length; at += 1) most[at] = Math.max(most[at] ?? 0, table[at] ?? 0);
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

/** Judges the plan's devices at a state of sizes and loads. */
class Judge {
  constructor(
    private readonly plan: CompletePlan,
    private readonly rules: RuleSet,
    private readonly topology: Topology,
    private readonly tree: SupplyTree,
    private readonly worst: CornerState,
    private readonly highest: CornerState,
  ) {}

  /** A rating for each device to price a network with before any is judged: the owner's, or the load and a quarter. */
  firstRatings(mostBranchA: Float64Array): ReadonlyMap<string, number> {
    const ratings = new Map<string, number>();
    this.topology.branches.forEach(({ parts }, index) => {
      const part = parts[0];
      if (part?.kind !== "protection") return;
      const owner = this.topology.devices.find(({ id }) => id === part.device)?.protection.ratingA;
      ratings.set(part.device, owner ?? Math.max(1, 1.25 * (mostBranchA[index] ?? 0)));
    });
    return ratings;
  }

  /** Ratings that suit load, start, gear and the conductors already fixed; those still open are left out of account. */
  ratings(
    chosen: Chosen,
    branchA: Float64Array,
    gearA: Float64Array,
    openSizes: ReadonlySet<string>,
  ): Map<string, number> {
    const groupOf = this.groupOfBranch();
    const known = this.guards(chosen, branchA, gearA).map((guard) => ({
      ...guard,
      conductors: guard.conductors.filter(({ id }) => !openSizes.has(groupOf.get(id) ?? "")),
    }));
    return new Map(judgeGuards(known, this.rules).map(({ id, ratingA }) => [id, ratingA]));
  }

  all(chosen: Chosen, branchA: Float64Array, gearA: Float64Array): readonly ProtectionFigures[] {
    return judgeGuards(this.guards(chosen, branchA, gearA), this.rules);
  }

  /** Greatest rating that stands before each group of conductors. */
  ratingByGroup(ratingsA: ReadonlyMap<string, number>): Map<string, number> {
    const byGroup = new Map<string, number>();
    downstreamOf(this.topology, this.tree).branches.forEach((branches, device) => {
      const ratingA = ratingsA.get(this.topology.devices[device]?.id ?? "");
      if (ratingA === undefined) return;
      for (const branch of branches) {
        for (const part of this.topology.branches[branch]?.parts ?? []) {
          if (part.kind === "conductor")
            byGroup.set(part.sizeGroup, Math.max(byGroup.get(part.sizeGroup) ?? 0, ratingA));
        }
      }
    });
    for (const { run, protection } of this.chargerRuns()) {
      if (protection.ratingA !== undefined) byGroup.set(run, protection.ratingA);
    }
    return byGroup;
  }

  private chargerRuns() {
    const chargers = new Set(this.plan.chargers.map(({ name }) => name));
    return this.plan.runs.flatMap(({ group, from, to, protection }) =>
      protection && (chargers.has(from.place) || chargers.has(to.place)) ? [{ run: group, protection }] : [],
    );
  }

  /** Groups with the least size of those raised that a short would harm behind their device; undefined where none is open to it. */
  strengthened(
    groups: readonly RunGroup[],
    indexes: readonly number[],
    protection: readonly ProtectionFigures[],
  ): readonly RunGroup[] | undefined {
    const groupOf = this.groupOfBranch();
    const weak = new Set(
      protection.flatMap(({ conditions }) =>
        conditions.flatMap(({ condition, state, binds }) =>
          state === "fails" && mendedByCopper.has(condition) ? [groupOf.get(binds ?? "") ?? ""] : [],
        ),
      ),
    );
    let raised = false;
    const stronger = groups.map((group, at): RunGroup => {
      const next = (indexes[at] ?? 0) + 1;
      if (!weak.has(group.id) || group.fixed !== undefined || next >= group.candidates.length) return group;
      raised = true;
      return {
        ...group,
        least: { index: next, clause: "what its fuse lets through in a short, I²t ≤ k²S²" },
      };
    });
    return raised ? stronger : undefined;
  }

  private groupOfBranch(): ReadonlyMap<string, string> {
    return new Map(
      this.topology.branches.flatMap(({ id, parts }) => {
        const part = parts.find(({ kind }) => kind === "conductor");
        return part?.kind === "conductor" ? [[id, part.sizeGroup] as const] : [];
      }),
    );
  }

  private guards(chosen: Chosen, branchA: Float64Array, gearA: Float64Array): Guard[] {
    const { plan, rules, topology, tree } = this;
    const hotOhm = priceNetwork(topology, plan, chosen, this.worst).numbers.branches.ohm;
    const coldOhm = priceNetwork(topology, plan, chosen, this.highest).numbers.branches.ohm;
    return [
      ...guardsOf({ plan, rules, topology, tree, chosen, hotOhm, coldOhm, branchA, gearA }),
      ...chargerGuards(plan, rules, chosen),
    ];
  }
}
