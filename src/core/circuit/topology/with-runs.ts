import type { CompleteRun } from "../../plan/completed.js";
import type { PartPlan, Topology, TopologyBranch } from "./types.js";

/** The circuit as it is joined, with its conductors as long as these runs are. @param runs By the names its branches have. */
export function withRuns(topology: Topology, runs: readonly CompleteRun[]): Topology {
  const byName = new Map(runs.map((run) => [run.name, run]));
  return {
    ...topology,
    branches: topology.branches.map((branch) => {
      const run = byName.get(branch.of);
      return run ? withRun(branch, run) : branch;
    }),
  };
}

function withRun(branch: TopologyBranch, run: CompleteRun): TopologyBranch {
  const [wayM, lengthM] =
    branch.leg === "out" ? [run.lengthM, run.pulledM] : [run.returnLengthM, run.returnPulledM];
  const differs = (part: PartPlan) =>
    part.kind === "conductor" && (part.wayM !== wayM || part.lengthM !== lengthM);
  if (!branch.parts.some(differs)) return branch;
  return {
    ...branch,
    parts: branch.parts.map((part) => (differs(part) ? { ...part, wayM, lengthM } : part)),
  };
}
