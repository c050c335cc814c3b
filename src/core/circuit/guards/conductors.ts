import type { CompletePlan, CompleteRun } from "../../plan/completed.js";
import type { ConductorSize } from "../../plan/model/common.js";
import type { RuleSet } from "../../reference/rule-sets.js";
import { type AmpacityWorking, ampacityA } from "../conductor/ampacity.js";
import type { GuardedConductor } from "../protection/guard.js";
import type { PartPlan, TopologyBranch } from "../topology/types.js";
import type { GuardInput } from "./input.js";

/** Ampacity of a run's conductors where they lie; one loaded conductor more for each that shares its cable or bundle. */
export function runAmpacity(
  run: CompleteRun,
  plan: CompletePlan,
  rules: RuleSet,
  size: ConductorSize,
): AmpacityWorking {
  const loaded =
    run.carries.length + (run.return === "shared" || run.carries.length === 0 ? 1 : run.carries.length);
  return ampacityA(size, {
    insulationC: run.insulationC,
    engineSpace: run.inEngineSpace,
    bundledConductors: Math.max(1, loaded + run.bundledWith),
    nominalV: plan.circuits.get(run.carries[0] ?? "")?.nominalV ?? 12,
    ruleSet: rules,
  });
}
/** Reads branches as conductors that a device must guard. */
export class ConductorReader {
  private readonly runs: ReadonlyMap<string, CompleteRun>;
  private readonly gear: ReadonlyMap<string, CompletePlan["gear"][number]>;
  /** Where the return of a thing's circuit starts, by thing and circuit. */
  private readonly returnFrom = new Map<string, number>();

  constructor(
    private readonly input: GuardInput,
    private readonly hotToSupply: Float64Array,
  ) {
    this.runs = new Map(input.plan.runs.map((run) => [run.name, run]));
    this.gear = new Map(input.plan.gear.map((piece) => [piece.name, piece]));
    for (const { leg, of, circuits, from } of input.topology.branches) {
      if (leg === "return") for (const circuit of circuits) this.returnFrom.set(`${of}\n${circuit}`, from);
    }
  }

  /** The branch as a conductor to be guarded; a switch or link is none. */
  read(index: number): GuardedConductor[] {
    const branch = this.input.topology.branches[index];
    const part = branch?.parts.find(({ kind }) => kind === "conductor" || kind === "lead");
    if (!branch || !part) return [];
    const farLoopOhm = this.farLoopOhm(branch);
    const size = this.sizeOf(part);
    const base = { id: branch.id, ...(farLoopOhm !== undefined && { farLoopOhm }) };
    if (part.kind === "lead") {
      const leads = this.gear.get(branch.of)?.leads;
      if (!leads || leads.fuseA !== undefined) return [];
      const insulationC = leads.insulationC;
      const working =
        insulationC === undefined
          ? undefined
          : ampacityA(leads.size, {
              insulationC,
              engineSpace: false,
              bundledConductors: 2,
              nominalV: 12,
              ruleSet: this.input.rules,
            });
      return [conductor(base, leads.size, insulationC, working?.ampacityA)];
    }
    const run = this.runs.get(branch.of);
    if (!run || !size) return [];
    const working = runAmpacity(run, this.input.plan, this.input.rules, size);
    return [conductor(base, size, run.insulationC, working.ampacityA)];
  }

  private sizeOf(part: PartPlan): ConductorSize | undefined {
    if (part.kind === "lead") return part.size;
    return part.kind === "conductor" ? this.input.chosen.sizes.get(part.sizeGroup) : undefined;
  }

  private farLoopOhm(branch: TopologyBranch): number | undefined {
    const circuit = branch.circuits[0] ?? "";
    const out = branch.leg === "out" ? branch : this.outOf(branch.of, circuit);
    const back = branch.leg === "return" ? branch.from : this.returnFrom.get(`${branch.of}\n${circuit}`);
    if (!out || back === undefined) return undefined;
    const ohm = this.outerOhm(out) + (this.hotToSupply[back] ?? Number.POSITIVE_INFINITY);
    return Number.isFinite(ohm) ? ohm : undefined;
  }

  private outerOhm({ from, to }: TopologyBranch): number {
    return Math.max(this.hotToSupply[from] ?? 0, this.hotToSupply[to] ?? 0);
  }

  private readonly outs = new Map<string, TopologyBranch>();
  private outOf(of: string, circuit: string): TopologyBranch | undefined {
    if (this.outs.size === 0) {
      for (const branch of this.input.topology.branches) {
        if (branch.leg === "out")
          for (const each of branch.circuits) this.outs.set(`${branch.of}\n${each}`, branch);
      }
    }
    return this.outs.get(`${of}\n${circuit}`);
  }
}

function conductor(
  base: { readonly id: string; readonly farLoopOhm?: number },
  size: ConductorSize,
  insulationC: number | undefined,
  ampacity: number | undefined,
): GuardedConductor {
  return {
    ...base,
    sizeKey: size.key,
    areaMm2: size.areaMm2,
    ...(insulationC !== undefined && { insulationC }),
    ...(ampacity !== undefined && { ampacityA: ampacity }),
  };
}
