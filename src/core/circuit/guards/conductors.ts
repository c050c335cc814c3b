import type { CompleteGear, CompletePlan, CompleteRun } from "../../plan/completed.js";
import type { ConductorSize } from "../../plan/model/common.js";
import type { RuleSet } from "../../reference/rule-sets.js";
import { type AmpacityWorking, ampacityA } from "../conductor/ampacity.js";
import type { Chosen } from "../parts.js";
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

/** What a branch is as a conductor, whatever its size. */
interface Facts {
  readonly id: string;
  readonly part: PartPlan & { readonly kind: "conductor" | "lead" };
  readonly run?: CompleteRun;
  readonly leads?: NonNullable<CompleteGear["leads"]>;
  /** Ends of the outgoing leg, and where the way back starts; undefined where one is missing. */
  readonly loop?: { readonly from: number; readonly to: number; readonly back: number };
}

/** Reads branches as conductors that a device must guard. */
export class ConductorReader {
  private readonly runs: ReadonlyMap<string, CompleteRun>;
  private readonly pieces: ReadonlyMap<string, CompleteGear>;
  /** Where the return of a thing's circuit starts, and its outgoing leg, by thing and circuit. */
  private readonly returnFrom = new Map<string, number>();
  private readonly outs = new Map<string, TopologyBranch>();
  private readonly facts = new Map<number, Facts | undefined>();
  private readonly ampacities = new Map<CompleteRun | string, Map<string, number | undefined>>();

  constructor(private readonly input: GuardInput) {
    this.runs = new Map(input.plan.runs.map((run) => [run.name, run]));
    this.pieces = new Map(input.pieces.flatMap((piece) => (piece ? [[piece.name, piece] as const] : [])));
    for (const branch of input.topology.branches) {
      for (const circuit of branch.circuits) {
        const key = `${branch.of}\n${circuit}`;
        if (branch.leg === "return") this.returnFrom.set(key, branch.from);
        else this.outs.set(key, branch);
      }
    }
  }

  /**
   * The branch as a conductor to be guarded; a switch, a link, and a lead with a fuse of its own is none.
   * @param hotToSupply Resistance from each node back to its supply, copper hot [Ω].
   */
  read(index: number, chosen: Chosen, hotToSupply: Float64Array): GuardedConductor[] {
    if (!this.facts.has(index)) this.facts.set(index, this.factsOf(index));
    const facts = this.facts.get(index);
    if (!facts) return [];
    const { id, part, loop, leads, run } = facts;
    const farLoopOhm = loop && loopOhm(loop, hotToSupply);
    if (leads) return [conductor(id, farLoopOhm, leads.size, leads.insulationC, this.leadAmpacityA(leads))];
    const size = part.kind === "conductor" ? chosen.sizes.get(part.sizeGroup) : undefined;
    if (!run || !size) return [];
    return [conductor(id, farLoopOhm, size, run.insulationC, this.runAmpacityA(run, size))];
  }

  private factsOf(index: number): Facts | undefined {
    const branch = this.input.topology.branches[index];
    const part = branch?.parts.find((each) => each.kind === "conductor" || each.kind === "lead");
    if (!branch || (part?.kind !== "conductor" && part?.kind !== "lead")) return undefined;
    const loop = this.loopOf(branch);
    const base = { id: branch.id, part, ...(loop && { loop }) };
    if (part.kind === "lead") {
      const leads = this.pieces.get(branch.of)?.leads;
      return leads && leads.fuseA === undefined ? { ...base, leads } : undefined;
    }
    const run = this.runs.get(branch.of);
    return run && { ...base, run };
  }

  private loopOf(branch: TopologyBranch): Facts["loop"] {
    const key = `${branch.of}\n${branch.circuits[0] ?? ""}`;
    const out = branch.leg === "out" ? branch : this.outs.get(key);
    const back = branch.leg === "return" ? branch.from : this.returnFrom.get(key);
    return out && back !== undefined ? { from: out.from, to: out.to, back } : undefined;
  }

  private leadAmpacityA({ size, insulationC }: NonNullable<CompleteGear["leads"]>): number | undefined {
    if (insulationC === undefined) return undefined;
    const at = { insulationC, engineSpace: false, bundledConductors: 2, nominalV: 12 };
    return this.remembered(`leads ${insulationC}`, size, () =>
      ampacityA(size, { ...at, ruleSet: this.input.rules }),
    );
  }

  private runAmpacityA(run: CompleteRun, size: ConductorSize): number | undefined {
    return this.remembered(run, size, () => runAmpacity(run, this.input.plan, this.input.rules, size));
  }

  private remembered(
    of: CompleteRun | string,
    { key }: ConductorSize,
    work: () => AmpacityWorking,
  ): number | undefined {
    const bySize = this.ampacities.get(of) ?? new Map<string, number | undefined>();
    this.ampacities.set(of, bySize);
    if (!bySize.has(key)) bySize.set(key, work().ampacityA);
    return bySize.get(key);
  }
}

function loopOhm(
  { from, to, back }: NonNullable<Facts["loop"]>,
  hotToSupply: Float64Array,
): number | undefined {
  const outerOhm = Math.max(hotToSupply[from] ?? 0, hotToSupply[to] ?? 0);
  const ohm = outerOhm + (hotToSupply[back] ?? Number.POSITIVE_INFINITY);
  return Number.isFinite(ohm) ? ohm : undefined;
}

function conductor(
  id: string,
  farLoopOhm: number | undefined,
  size: ConductorSize,
  insulationC: number | undefined,
  ampacityA: number | undefined,
): GuardedConductor {
  const made: { -readonly [K in keyof GuardedConductor]: GuardedConductor[K] } = {
    id,
    sizeKey: size.key,
    areaMm2: size.areaMm2,
  };
  if (farLoopOhm !== undefined) made.farLoopOhm = farLoopOhm;
  if (insulationC !== undefined) made.insulationC = insulationC;
  if (ampacityA !== undefined) made.ampacityA = ampacityA;
  return made;
}
