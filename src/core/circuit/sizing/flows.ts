import type { Topology } from "../topology/types.js";
import type { Forest } from "./forest.js";

/** Something that takes current from a supply: gear, or the input of a converter. */
export interface Taker {
  readonly plus: number;
  readonly minus: number;
  /** The terminals of its supply. */
  readonly fromPlus: number;
  readonly toMinus: number;
}

/**
 * Branch currents as sums of what takers take, between a least and a most. Each takes its current along the tree from its supply's
 * plus and sends it back to its supply's minus. Where a negative is shared past a converter, the currents of its two sides pass some branches
 * in opposite directions; they are kept apart, so that the bounds stay bounds.
 */
export class Flows {
  /** Up the tree and down it, by branch [A]. */
  private readonly leastUp: Float64Array;
  private readonly leastDown: Float64Array;
  private readonly mostUp: Float64Array;
  private readonly mostDown: Float64Array;
  /** May currents pass any branch in both directions? */
  readonly hasMixed: boolean;

  /** @param leastA What each taker takes at least, and at most [A]. */
  constructor(
    topology: Topology,
    forest: Forest,
    takers: readonly Taker[],
    leastA: Float64Array,
    mostA: Float64Array,
  ) {
    const count = topology.nodes.length;
    const tables = { leastUp: new Float64Array(count), leastDown: new Float64Array(count) };
    const most = { up: new Float64Array(count), down: new Float64Array(count) };
    /** Current up from `from` to where the ways meet, and down from there to `to`. */
    const pass = (from: number, to: number, meet: number, least: number, greatest: number) => {
      add(tables.leastUp, from, least);
      add(most.up, from, greatest);
      add(tables.leastDown, to, least);
      add(most.down, to, greatest);
      if (meet < 0) return;
      add(tables.leastUp, meet, -least);
      add(most.up, meet, -greatest);
      add(tables.leastDown, meet, -least);
      add(most.down, meet, -greatest);
    };
    takers.forEach(({ plus, minus, fromPlus, toMinus }, at) => {
      const meetPlus = forest.meeting(fromPlus, plus);
      const meetMinus = forest.meeting(toMinus, minus);
      const isFed = meetPlus >= 0 && meetMinus >= 0;
      const least = isFed ? (leastA[at] ?? 0) : 0;
      const greatest = mostA[at] ?? 0;
      // a leg that hangs in the air is still sized for what it is there for
      if (meetPlus >= 0) pass(fromPlus, plus, meetPlus, least, greatest);
      if (meetMinus >= 0) pass(minus, toMinus, meetMinus, least, greatest);
    });
    const branches = topology.branches.length;
    this.leastUp = gathered(forest, tables.leastUp, branches);
    this.leastDown = gathered(forest, tables.leastDown, branches);
    this.mostUp = gathered(forest, most.up, branches);
    this.mostDown = gathered(forest, most.down, branches);
    this.hasMixed = topology.branches.some((_, branch) => this.isMixed(branch));
  }

  /** Least current of a branch in the direction given; below zero where it may flow the other way [A]. */
  least(branch: number, up: boolean): number {
    return up
      ? (this.leastUp[branch] ?? 0) - (this.mostDown[branch] ?? 0)
      : (this.leastDown[branch] ?? 0) - (this.mostUp[branch] ?? 0);
  }

  /** Most current of a branch, whichever way it flows [A]. */
  most(branch: number): number {
    return Math.max(
      (this.mostUp[branch] ?? 0) - (this.leastDown[branch] ?? 0),
      (this.mostDown[branch] ?? 0) - (this.leastUp[branch] ?? 0),
    );
  }

  /** May currents pass the branch in both directions? */
  isMixed(branch: number): boolean {
    return (this.mostUp[branch] ?? 0) > 0 && (this.mostDown[branch] ?? 0) > 0;
  }

  mostOfAll(): Float64Array {
    return this.mostUp.map((_, branch) => this.most(branch));
  }
}

function add(table: Float64Array, at: number, value: number): void {
  table[at] = (table[at] ?? 0) + value;
}

/** Sums the table over all that lies beyond each branch. Sums of differences leave dust, which is no current. */
function gathered(
  { order, parentNode, parentBranch }: Forest,
  table: Float64Array,
  branches: number,
): Float64Array {
  const sums = new Float64Array(branches);
  const dustA = 1e-12;
  for (let k = order.length - 1; k >= 0; k -= 1) {
    const node = order[k] ?? 0;
    const parent = parentNode[node] ?? -1;
    if (parent < 0) continue;
    const sum = table[node] ?? 0;
    sums[parentBranch[node] ?? 0] = sum > dustA ? sum : 0;
    add(table, parent, sum);
  }
  return sums;
}
