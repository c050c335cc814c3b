import type { CompletePlan } from "../../plan/completed.js";
import type { RuleSet } from "../../reference/rule-sets.js";
import { reals } from "../columns.js";
import type { CornerState } from "../corners.js";
import type { CircuitNetwork } from "../network.js";
import type { Chosen } from "../parts.js";
import { type ChooseSettings, chooseSizes } from "../sizes/choose.js";
import type { SizingProblem } from "../sizes/problem.js";
import { costOf, dropTolerance, optionsOf } from "../sizes/program.js";
import type { SizeResult } from "../sizes/types.js";
import type { Solution } from "../solve/types.js";
import type { Demand, DemandReader } from "./demand.js";
import type { Forest } from "./forest.js";
import type { RunGroup } from "./groups.js";
import { withoutImplied } from "./implied.js";
import { type LeastBranchA, LimitReader, type LimitWay } from "./limits.js";
import { sizingProblemOf } from "./problem-of.js";
import { supplyOrder } from "./supplies.js";
import { TrueCircuit } from "./true-circuit.js";

/** One state of the boat in which drops must hold. */
export interface SizingCase {
  readonly state: CornerState;
  /** The only gear judged in it; undefined: all that is on. */
  readonly gear?: readonly string[];
}

export interface SizePlanInput {
  readonly plan: CompletePlan;
  readonly rules: RuleSet;
  readonly network: CircuitNetwork;
  readonly forest: Forest;
  readonly demands: DemandReader;
  readonly groups: readonly RunGroup[];
  /** The worst corner, then each turn of gear that yields to another; a turn asks for its own gear only. */
  readonly cases: readonly SizingCase[];
  /** Most each branch carries in any case and corner [A]. */
  readonly mostBranchA: Float64Array;
  /** By group: rating of the device that guards it. */
  readonly protectionA: ReadonlyMap<string, number>;
  /** The largest candidate of every group, or the owner's, with the ratings settled so far. */
  readonly largest: Chosen;
}

export interface SizedPlan {
  readonly sizes: SizeResult;
  /** Candidate of each group. */
  readonly indexes: readonly number[];
}

/** Chooses the sizes of a plan's conductors, by true drops, and says what of it is proven. */
export function sizePlan(input: SizePlanInput): SizedPlan {
  const { plan, network, forest, groups, cases } = input;
  const largest = groups.map(({ fixed, candidates }) => fixed ?? candidates.length - 1);
  const truth = new TrueCircuit(
    network,
    groups,
    input.largest,
    cases.map(({ state }) => state),
  );
  const best = truth.solutionsAt(largest);
  const off = best.map(({ convertersOff }) => new Set(convertersOff));
  const demands = cases.map(({ state }, at) => input.demands.at(state, namesOf(network, off[at])));
  const reader = limitReader(input);
  // what draws more at a higher voltage lets currents rise with copper; loops and mixed currents let drops do so
  const rising = plan.gear.some(({ behaviour }) => behaviour === "resistance");
  const mixed = demands.some(({ flows }) => flows.hasMixed);
  const monotone = !rising && !forest.hasLoops && !mixed;

  const judged = waysOf(input);
  const bestV = truth.dropsOf(judged, off)(largest);
  const canBeMet = judged.map(
    ({ maxDropV }, at) => (bestV[at] ?? Number.NaN) <= maxDropV * (1 + dropTolerance),
  );
  const met = judged.filter((_, at) => canBeMet[at]);
  const choose = (ways: readonly LimitWay[]) => {
    const limitsAt = (solutions: readonly Solution[]) =>
      ways.map((way) => reader.limit(way, leastAt(rising, demands[way.case], solutions[way.case])));
    const problem = sizingProblemOf({ ...input, topology: network.topology }, limitsAt(best));
    const settings: ChooseSettings = {
      monotone,
      ...(monotone && {
        termsAt: (indexes: readonly number[]) =>
          limitsAt(truth.solutionsAt(indexes)).map(({ terms }) => terms),
      }),
    };
    const { indexes, ...sizes } = chooseSizes(problem, truth.dropsOf(ways, off), settings);
    return { indexes, sizes: forest.hasLoops ? unproven(problem, sizes) : sizes };
  };
  const kept = cases.flatMap((_, at) => {
    const { flows } = demands[at] ?? {};
    const own = met.filter((way) => way.case === at);
    return flows ? withoutImplied(network.topology, forest, flows, own) : own;
  });
  const first = choose(kept);
  // where a sum fails though the drop itself can be met, what was judged by it must stand for itself
  const { indexes, sizes } = first.sizes.unmet.length > 0 && kept.length < met.length ? choose(met) : first;
  const unmetBySum = new Set(sizes.unmet);
  const unmet = new Set<string>();
  judged.forEach(({ gear }, at) => {
    const id = network.topology.gear[gear]?.id ?? "";
    if (!canBeMet[at] || unmetBySum.has(id)) unmet.add(id);
  });
  return { indexes, sizes: { ...sizes, unmet: [...unmet], ...(unmet.size > 0 && { proof: "none" }) } };
}

/**
 * Least current of each branch at any choice no larger than the one solved: where nothing draws more at a higher voltage, the current
 * there; else the least the gear takes within its limits.
 */
function leastAt(rising: boolean, demand: Demand | undefined, solution: Solution | undefined): LeastBranchA {
  return (branch, up) =>
    rising || demand?.flows.isMixed(branch)
      ? (demand?.flows.least(branch, up) ?? 0)
      : Math.abs(solution?.branchA[branch] ?? 0);
}

/** Currents divide in a loop by its resistances, so the sums prove nothing: what is left is that every group keeps its own rules. */
function unproven(problem: SizingProblem, sizes: SizeResult): SizeResult {
  const { options } = optionsOf(problem);
  const lowerBound = Math.min(
    sizes.total,
    costOf(
      options,
      options.map(() => 0),
    ),
  );
  return { ...sizes, lowerBound, proof: sizes.proof === "proven" ? "bounded" : sizes.proof };
}

function namesOf({ topology }: CircuitNetwork, off: ReadonlySet<number> | undefined): Set<string> {
  return new Set([...(off ?? [])].flatMap((index) => topology.converters[index]?.id ?? []));
}

/** Gear whose drop is judged, case by case. */
function waysOf({ plan, network, cases }: SizePlanInput): LimitWay[] {
  const { topology, gear } = network;
  const supplies = new Map(supplyOrder(plan, topology).map((supply) => [supply.name, supply]));
  return cases.flatMap(({ state, gear: only }, at) => {
    const judged = only && new Set(only);
    return topology.gear.flatMap(({ id, circuit }, index): LimitWay[] => {
      const piece = gear.pieces[index];
      const feed = plan.circuits.get(circuit);
      if (!piece || !feed || !((state.on.get(id) ?? 0) > 0) || judged?.has(id) === false) return [];
      const supply = supplies.get(feed.supply);
      const maxDropV = piece.maxDropShare * feed.nominalV;
      return [{ case: at, gear: index, fromPlus: supply?.plus ?? 0, toMinus: supply?.minus ?? 0, maxDropV }];
    });
  });
}

function limitReader({ plan, network, forest, groups, largest, cases }: SizePlanInput): LimitReader {
  const { topology } = network;
  const worst = cases[0]?.state;
  if (!worst) throw new RangeError("at least one sizing case required, got none");
  const smallest: Chosen = {
    ...largest,
    sizes: new Map(
      groups.flatMap(({ id, fixed, candidates }) => {
        const candidate = candidates[fixed ?? 0];
        return candidate ? [[id, candidate.size] as const] : [];
      }),
    ),
  };
  const beside = (chosen: Chosen) => {
    const pricer = network.pricer(chosen, worst);
    return reals(topology.branches, (_, branch) => pricer.ohmBesideConductor(branch));
  };
  return new LimitReader({
    plan,
    topology,
    forest,
    groups,
    fixedOhm: beside(largest),
    fixedMostOhm: beside(smallest),
  });
}
