import { jointOhm } from "../conductor/contacts.js";
import { loadTable, priceNetwork } from "../network.js";
import type { Chosen } from "../parts.js";
import type { ExactDrops } from "../sizes/choose.js";
import type { DropLimit } from "../sizes/problem.js";
import { rememberingSolver } from "../solve/solve.js";
import type { SizingInput } from "./problem-of.js";

/**
 * The true drops at a choice of sizes: the network solved in every case of the sizing question.
 * Only the conductors and their joints are priced anew at each call.
 * @param limits Those of `sizingProblemOf(input)`, in their order.
 */
export function exactDropsOf(input: SizingInput, chosen: Chosen, limits: readonly DropLimit[]): ExactDrops {
  const { topology, plan, groups, cases } = input;
  const worst = cases[0]?.state;
  if (!worst) throw new RangeError("at least one sizing case required, got none");
  const priced = priceNetwork(topology, plan, chosen, worst);
  const networks = cases.map(({ state }) => ({ ...priced.numbers, loads: loadTable(topology, plan, state) }));
  const ohm = priced.numbers.branches.ohm;
  const groupIndex = new Map(groups.map(({ id }, index) => [id, index]));
  /** Branches with a conductor of an open size: their group, length, and joints. */
  const open = topology.branches.flatMap((branch, index) => {
    const conductor = branch.parts.find((part) => part.kind === "conductor");
    if (conductor?.kind !== "conductor") return [];
    const group = groupIndex.get(conductor.sizeGroup) ?? -1;
    const joints = branch.parts.flatMap((part) => (part.kind === "joint" ? [part.joint] : []));
    return [{ index, group, lengthM: conductor.lengthM, joints }];
  });
  const asked = limits.map(({ gear }) => {
    const at = topology.gear.findIndex(({ id }) => id === gear);
    const supply = plan.circuits.get(plan.circuitOf.get(gear) ?? "")?.supply;
    const source = topology.sources.find(({ battery }) => battery === supply);
    const converter = topology.converters.find(({ id }) => id === supply);
    return {
      at,
      plus: source?.plus ?? converter?.outPlus ?? 0,
      minus: source?.minus ?? converter?.outMinus ?? 0,
      network: Math.max(
        0,
        cases.findIndex((each) => each.gear?.includes(gear)),
      ),
    };
  });
  const solve = rememberingSolver();
  return (indexes) => {
    for (const { index, group, lengthM, joints } of open) {
      const candidate = groups[group]?.candidates[indexes[group] ?? 0];
      if (!candidate) continue;
      ohm[index] = joints.reduce(
        (sum, kind) => sum + jointOhm(kind, candidate.size.areaMm2),
        candidate.ohmPerM * lengthM,
      );
    }
    const solutions = networks.map((network) => solve(network));
    return Float64Array.from(asked, ({ at, plus, minus, network }) => {
      const solution = solutions[network];
      if (solution?.status !== "solved") return Number.POSITIVE_INFINITY;
      return (solution.nodeV[plus] ?? 0) - (solution.nodeV[minus] ?? 0) - (solution.loadV[at] ?? 0);
    });
  };
}
