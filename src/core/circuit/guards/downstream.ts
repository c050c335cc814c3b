import type { SupplyTree } from "../topology/tree.js";
import type { Topology } from "../topology/types.js";

/** What lies behind each device, by its index in `topology.devices`. */
export interface Downstream {
  /** Branches (indices) with no other device between, both legs. */
  readonly branches: readonly (readonly number[])[];
  /** Gear (indices into `topology.gear`) with no device nearer. */
  readonly gear: readonly (readonly number[])[];
  /** Next device nearer the source; −1: none. */
  readonly nearer: readonly number[];
  /** Branch (index) each device is; −1: none. */
  readonly branchOf: readonly number[];
  /** Devices with those nearer the source after all that stand behind them. */
  readonly outermostFirst: readonly number[];
}

/** Sorts branches and gear under the devices that guard them. Linear. */
export function downstreamOf(topology: Topology, tree: SupplyTree): Downstream {
  const { devices } = topology;
  const lists = () => devices.map((): number[] => []);
  const [branches, gear] = [lists(), lists()];
  const nearer = devices.map(() => -1);
  const branchOf = devices.map(() => -1);
  const deviceOf = new Int32Array(topology.branches.length).fill(-1);
  const indexOf = new Map(devices.map(({ id }, index) => [id, index]));
  /** Guard of the outgoing conductors of a thing, by thing and circuit: its return is guarded by the same device. */
  const guardOfLeg = new Map<string, number>();
  topology.branches.forEach((branch, index) => {
    const part = branch.parts[0];
    if (part?.kind === "protection") {
      const own = indexOf.get(part.device);
      if (own === undefined) return;
      nearer[own] = upstreamGuard(tree, branch.from, branch.to, index);
      branchOf[own] = index;
      deviceOf[index] = own;
      return;
    }
    if (branch.leg === "return") return;
    const guard = upstreamGuard(tree, branch.from, branch.to, index);
    if (guard < 0) return;
    branches[guard]?.push(index);
    for (const circuit of branch.circuits) guardOfLeg.set(`${branch.of}\n${circuit}`, guard);
  });
  topology.branches.forEach((branch, index) => {
    if (branch.leg !== "return") return;
    const guards = new Set(
      branch.circuits.map((circuit) => guardOfLeg.get(`${branch.of}\n${circuit}`) ?? -1),
    );
    for (const guard of guards) if (guard >= 0) branches[guard]?.push(index);
  });
  topology.gear.forEach(({ plus }, index) => {
    gear[tree.guardOfNode[plus] ?? -1]?.push(index);
  });
  const outermostFirst: number[] = [];
  for (let at = tree.order.length - 1; at >= 0; at -= 1) {
    const device = deviceOf[tree.parentBranch[tree.order[at] ?? -1] ?? -1] ?? -1;
    if (device >= 0) outermostFirst.push(device);
  }
  return { branches, gear, nearer, branchOf, outermostFirst };
}

/** Guard of a branch: that of the end the supply reaches first. */
function upstreamGuard(tree: SupplyTree, from: number, to: number, branch: number): number {
  if (tree.parentBranch[to] === branch) return tree.guardOfNode[from] ?? -1;
  if (tree.parentBranch[from] === branch) return tree.guardOfNode[to] ?? -1;
  return tree.guardOfNode[from] ?? -1;
}
