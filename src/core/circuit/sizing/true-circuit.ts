import { reals, zeros } from "../columns.js";
import { jointOhm } from "../conductor/contacts.js";
import type { CornerState } from "../corners.js";
import type { CircuitNetwork } from "../network.js";
import type { Chosen } from "../parts.js";
import type { ExactDrops } from "../sizes/choose.js";
import type { SizeCandidate } from "../sizes/problem.js";
import type { NetworkNumbers, Solution } from "../solve/types.js";
import type { PartPlan } from "../topology/types.js";
import type { RunGroup } from "./groups.js";
import type { LimitWay } from "./limits.js";

/** A branch with a conductor whose size is being chosen. */
interface OpenBranch {
  readonly index: number;
  readonly group: number;
  /** By candidate [Ω]. */
  readonly ohm: Float64Array;
}

type Conductor = PartPlan & { readonly kind: "conductor" };

const isConductor = (part: PartPlan): part is Conductor => part.kind === "conductor";

/** A conductor with the joints on it, by candidate [Ω]. */
function ohmByCandidate(
  candidates: readonly SizeCandidate[],
  lengthM: number,
  parts: readonly PartPlan[],
): Float64Array {
  const ohm = zeros(candidates.length);
  for (let at = 0; at < ohm.length; at += 1) {
    const { size, ohmPerM } = candidates[at] as SizeCandidate;
    let sum = ohmPerM * lengthM;
    for (const part of parts) if (part.kind === "joint") sum += jointOhm(part.joint, size.areaMm2);
    ohm[at] = sum;
  }
  return ohm;
}

/** The circuit in every case of the sizing question, solved at any choice of sizes. Only what a choice changes is priced anew. */
export class TrueCircuit {
  private readonly networks: readonly NetworkNumbers[];
  private readonly ohm: Float64Array;
  private readonly open: readonly OpenBranch[];
  /** The last choice and its solutions: drops and currents are often asked of the same one. */
  private last: { readonly key: string; readonly solutions: readonly Solution[] } | undefined;

  /**
   * @param chosen Any sizes, and the ratings that stay.
   * @param states Of the cases; they differ only in what is on.
   */
  constructor(
    private readonly network: CircuitNetwork,
    groups: readonly RunGroup[],
    chosen: Chosen,
    states: readonly CornerState[],
  ) {
    const worst = states[0];
    if (!worst) throw new RangeError("at least one sizing case required, got none");
    const numbers = network.numbersAt(chosen, worst);
    this.ohm = numbers.branches.ohm;
    this.networks = states.map((state) => ({ ...numbers, loads: network.loadsAt(state) }));
    const groupIndex = new Map(groups.map(({ id }, index) => [id, index]));
    const open: OpenBranch[] = [];
    for (const [index, { parts }] of network.topology.branches.entries()) {
      const conductor = parts.find(isConductor);
      const group = groupIndex.get(conductor?.sizeGroup ?? "") ?? -1;
      const ohm = conductor && ohmByCandidate(groups[group]?.candidates ?? [], conductor.lengthM, parts);
      if (ohm && ohm.length > 0) open.push({ index, group, ohm });
    }
    this.open = open;
  }

  /** Every case solved with these candidates, by group. */
  solutionsAt(indexes: readonly number[]): readonly Solution[] {
    const key = indexes.join();
    if (this.last?.key === key) return this.last.solutions;
    for (const { index, group, ohm } of this.open)
      this.ohm[index] = ohm[indexes[group] ?? 0] ?? this.ohm[index] ?? 1;
    const solutions = this.networks.map((network) => this.network.solve(network));
    this.last = { key, solutions };
    return solutions;
  }

  /**
   * True drop of each limit's gear [V]; Infinity where the circuit collapses, or a converter that feeds it works with the largest sizes
   * and not with these.
   * @param off By case: converters (index) that do not work, whatever the sizes.
   */
  dropsOf(ways: readonly LimitWay[], off: readonly ReadonlySet<number>[]): ExactDrops {
    return (indexes) => {
      const solutions = this.solutionsAt(indexes);
      const fails = solutions.map(
        ({ status, convertersOff }, at) =>
          status !== "solved" || convertersOff.some((index) => !off[at]?.has(index)),
      );
      return reals(ways, ({ case: at, gear, fromPlus, toMinus }) => {
        const solution = solutions[at];
        if (!solution || fails[at]) return Number.POSITIVE_INFINITY;
        const { nodeV, loadV } = solution;
        return (nodeV[fromPlus] ?? 0) - (nodeV[toMinus] ?? 0) - (loadV[gear] ?? 0);
      });
    };
  }
}
