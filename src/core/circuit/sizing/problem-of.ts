import type { CompletePlan } from "../../plan/completed.js";
import type { RuleSet } from "../../reference/rule-sets.js";
import type { CornerState } from "../corners.js";
import { type Chosen, PartPricer } from "../parts.js";
import type { DropLimit, SizingGroup, SizingProblem } from "../sizes/problem.js";
import { pathToSupply, type SupplyTree } from "../topology/tree.js";
import type { Topology } from "../topology/types.js";
import type { Demand } from "./demand.js";
import type { RunGroup } from "./groups.js";

/** One state of the boat in which drops must hold. */
export interface SizingCase {
  readonly state: CornerState;
  readonly demand: Demand;
  /** The only gear judged in it; undefined: all that is on. */
  readonly gear?: readonly string[];
}

/** Where the numbers of a sizing problem come from. */
export interface SizingInput {
  readonly plan: CompletePlan;
  readonly rules: RuleSet;
  readonly topology: Topology;
  readonly tree: SupplyTree;
  readonly groups: readonly RunGroup[];
  /** The worst corner, then each turn of gear that yields to another; a turn asks for its own gear only. */
  readonly cases: readonly SizingCase[];
  /** Most each branch carries in any case and corner [A]. */
  readonly mostBranchA: Float64Array;
  /** Ratings settled so far, by device. */
  readonly ratingsA: ReadonlyMap<string, number>;
  /** By group: rating of the device that guards it. */
  readonly protectionA: ReadonlyMap<string, number>;
}

/** The plan's sizing problem in plain numbers. */
export function sizingProblemOf(input: SizingInput): SizingProblem {
  const { plan, rules, topology, groups, mostBranchA } = input;
  const groupIndex = new Map(groups.map(({ id }, index) => [id, index]));
  const mostA = new Float64Array(groups.length);
  topology.branches.forEach((branch, index) => {
    for (const part of branch.parts) {
      if (part.kind !== "conductor") continue;
      const group = groupIndex.get(part.sizeGroup) ?? -1;
      mostA[group] = Math.max(mostA[group] ?? 0, mostBranchA[index] ?? 0);
    }
  });
  const chargerA = new Map(
    plan.chargers.map(({ name, outputA, outputW }) => [name, outputA ?? (outputW ?? 0) / 12]),
  );
  return {
    aim: plan.source.conductors.aim,
    groups: groups.map(({ id, run, lengthM, cores, candidates, fixed, least }, index): SizingGroup => {
      const protectionA = input.protectionA.get(id);
      const charging = chargerA.get(run.from.place) ?? chargerA.get(run.to.place);
      return {
        id,
        run: run.group,
        lengthM,
        cores,
        candidates,
        currentA: charging ?? mostA[index] ?? 0,
        maxProtectionShare: rules.maxProtectionShare.value,
        ...(fixed !== undefined && { fixed }),
        ...(least && { least }),
        ...(protectionA !== undefined && { protectionA }),
      };
    }),
    limits: input.cases.flatMap((each) => dropLimits(input, each, groupIndex)),
  };
}

function dropLimits(
  input: SizingInput,
  { state: corner, demand, gear: only }: SizingCase,
  groupIndex: ReadonlyMap<string, number>,
): DropLimit[] {
  const { plan, topology, tree, groups } = input;
  const pieces = new Map(plan.gear.map((piece) => [piece.name, piece]));
  const largest: Chosen = {
    sizes: new Map(
      groups.flatMap(({ id, candidates }) => (candidates.length > 0 ? [[id, largestOf(candidates)]] : [])),
    ),
    tinned: new Map(groups.map(({ id, run }) => [id, run.tinned])),
    ratingsA: input.ratingsA,
  };
  const pricer = new PartPricer(largest, topology.devices, corner.copperC, corner.engineSpaceCopperC);
  const fixedV = topology.branches.map((branch, index) => {
    const ohm = pricer
      .partsOf(branch.parts)
      .reduce((sum, part, at) => sum + (branch.parts[at]?.kind === "conductor" ? 0 : part.ohm), 0);
    return ohm * (demand.leastBranchA[index] ?? 0);
  });
  const minusOf = supplyMinus(topology);
  return topology.gear.flatMap(({ id, circuit, plus, minus }): DropLimit[] => {
    const piece = pieces.get(id);
    const feed = plan.circuits.get(circuit);
    if (!piece || !feed || !((corner.on.get(id) ?? 0) > 0) || (only !== undefined && !only.includes(id)))
      return [];
    const path = [
      ...pathToSupply(tree, plus, -1),
      ...pathToSupply(tree, minus, minusOf.get(feed.supply) ?? -1),
    ];
    const terms = new Map<number, number>();
    let fixedDropV = 0;
    for (const at of path) {
      fixedDropV += fixedV[at] ?? 0;
      for (const part of topology.branches[at]?.parts ?? []) {
        if (part.kind !== "conductor") continue;
        const group = groupIndex.get(part.sizeGroup);
        if (group === undefined) continue;
        terms.set(group, (terms.get(group) ?? 0) + (demand.leastBranchA[at] ?? 0) * part.lengthM);
      }
    }
    return [
      {
        gear: id,
        maxDropV: piece.maxDropShare * feed.nominalV,
        nominalV: feed.nominalV,
        fixedDropV,
        terms: [...terms].map(([group, ampereM]) => ({ group, ampereM })),
      },
    ];
  });
}

function largestOf(candidates: RunGroup["candidates"]): RunGroup["candidates"][number]["size"] {
  const last = candidates.at(-1);
  if (!last) throw new RangeError("at least one candidate size required, got none");
  return last.size;
}

/** Negative terminal of each supply: where the way back of its gear ends. */
export function supplyMinus(topology: Topology): ReadonlyMap<string, number> {
  return new Map([
    ...topology.sources.map(({ battery, minus }) => [battery, minus] as const),
    ...topology.converters.map(({ id, outMinus }) => [id, outMinus] as const),
  ]);
}
