import type { CompletePlan } from "../../plan/completed.js";
import { reals } from "../columns.js";
import type { DropLimit } from "../sizes/problem.js";
import type { Topology } from "../topology/types.js";
import type { Forest } from "./forest.js";
import type { RunGroup } from "./groups.js";

/** What limits are read from, the same in every case. */
export interface LimitInput {
  readonly plan: CompletePlan;
  readonly topology: Topology;
  readonly forest: Forest;
  readonly groups: readonly RunGroup[];
  /** Resistance of each branch beside its conductor, its joints on the largest conductor, and on the smallest [Ω]. */
  readonly fixedOhm: Float64Array;
  readonly fixedMostOhm: Float64Array;
}

/** One limit before its currents are known: which gear in which case, and between which terminals its current flows. */
export interface LimitWay {
  readonly case: number;
  /** Index in the topology's gear. */
  readonly gear: number;
  /** Terminals of its supply. */
  readonly fromPlus: number;
  readonly toMinus: number;
  readonly maxDropV: number;
}

/** Least current of a branch in the direction given; below zero where it may flow the other way [A]. */
export type LeastBranchA = (branch: number, up: boolean) => number;

/** Reads drop limits off the circuit. */
export class LimitReader {
  /** Group and length of the conductor in each branch; −1: none. */
  private readonly groupOf: Int32Array;
  private readonly lengthM: Float64Array;
  private readonly leastOhmPerM: Float64Array;
  private readonly mostOhmPerM: Float64Array;

  constructor(private readonly input: LimitInput) {
    const { topology, groups } = input;
    const groupIndex = new Map(groups.map(({ id }, index) => [id, index]));
    this.groupOf = new Int32Array(topology.branches.length).fill(-1);
    this.lengthM = new Float64Array(topology.branches.length);
    topology.branches.forEach(({ parts }, index) => {
      for (const part of parts) {
        if (part.kind !== "conductor") continue;
        this.groupOf[index] = groupIndex.get(part.sizeGroup) ?? -1;
        this.lengthM[index] = part.lengthM;
      }
    });
    const ohmPerM = (pick: (group: RunGroup) => number) =>
      reals(groups, (group) => group.candidates[group.fixed ?? pick(group)]?.ohmPerM ?? 0);
    this.leastOhmPerM = ohmPerM(({ candidates }) => candidates.length - 1);
    this.mostOhmPerM = ohmPerM(() => 0);
  }

  /**
   * The limit with these currents. Where a shared negative may carry current against the way, the most that can take off the drop is
   * taken off the sum too, so that the sum is never more than the true drop.
   */
  limit(way: LimitWay, least: LeastBranchA): DropLimit {
    const { plan, topology, forest, fixedOhm, fixedMostOhm } = this.input;
    const { id, circuit, plus, minus } = topology.gear[way.gear] ?? {
      id: "",
      circuit: "",
      plus: -1,
      minus: -1,
    };
    const ampereM = new Map<number, number>();
    let fixedDropV = 0;
    const pass = (branch: number, up: boolean) => {
      const currentA = least(branch, up);
      const group = this.groupOf[branch] ?? -1;
      const meterA = currentA * (this.lengthM[branch] ?? 0);
      if (currentA < 0) {
        fixedDropV += currentA * (fixedMostOhm[branch] ?? 0);
        if (group >= 0) fixedDropV += meterA * (this.mostOhmPerM[group] ?? 0);
        return;
      }
      fixedDropV += currentA * (fixedOhm[branch] ?? 0);
      if (group >= 0) ampereM.set(group, (ampereM.get(group) ?? 0) + meterA);
    };
    forest.walk(way.fromPlus, plus, pass);
    forest.walk(minus, way.toMinus, pass);
    const share = fixedDropV < 0 ? this.shareBeside(ampereM, -fixedDropV) : 1;
    return {
      gear: id,
      maxDropV: way.maxDropV,
      nominalV: plan.circuits.get(circuit)?.nominalV ?? 12,
      fixedDropV: Math.max(0, fixedDropV),
      terms: [...ampereM].map(([group, value]) => ({ group, ampereM: value * share })),
    };
  }

  /** Share of the terms that is left whatever the sizes once `lessV` is taken off their sum. */
  private shareBeside(ampereM: ReadonlyMap<number, number>, lessV: number): number {
    let leastV = 0;
    for (const [group, value] of ampereM) leastV += value * (this.leastOhmPerM[group] ?? 0);
    return leastV > lessV ? 1 - lessV / leastV : 0;
  }
}
