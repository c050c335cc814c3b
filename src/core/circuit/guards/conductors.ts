import type { CompleteGear, CompleteRun } from "../../plan/completed.js";
import type { ConductorSize } from "../../plan/model/common.js";
import type { Chosen } from "../parts.js";
import type { GuardedConductor } from "../protection/guard.js";
import type { PartPlan, TopologyBranch } from "../topology/types.js";
import type { GuardInput } from "./input.js";
import { AmpacityAt } from "./run-ampacities.js";

/** What a branch is as a conductor, whatever its size. */
interface Facts {
  readonly id: string;
  readonly part: PartPlan & { readonly kind: "conductor" | "lead" };
  readonly insulationC: number | undefined;
  /** Undefined: nothing says what the insulation stands. */
  readonly ampacity: AmpacityAt | undefined;
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
  private readonly ofLeads = new Map<number, AmpacityAt>();

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
   * The branch as a conductor to be guarded, as large as `chosen` says.
   * @param hotToSupply Resistance from each node back to its supply, copper hot [Ω].
   * @returns Undefined for what is none: a switch, a link, a lead with a fuse of its own.
   */
  read(index: number, chosen: Chosen, hotToSupply: Float64Array): GuardedConductor | undefined {
    const facts = this.factsAt(index);
    if (!facts) return undefined;
    const { id, part, loop, insulationC, ampacity } = facts;
    const size = part.kind === "conductor" ? chosen.sizes.get(part.sizeGroup) : part.size;
    if (!size) return undefined;
    return conductor(id, loop && loopOhm(loop, hotToSupply), size, insulationC, ampacity?.of(size));
  }

  /** Group whose size the branch has; undefined where it has none. */
  groupOf(index: number): string | undefined {
    const part = this.factsAt(index)?.part;
    return part?.kind === "conductor" ? part.sizeGroup : undefined;
  }

  private factsAt(index: number): Facts | undefined {
    if (!this.facts.has(index)) this.facts.set(index, this.factsOf(index));
    return this.facts.get(index);
  }

  private factsOf(index: number): Facts | undefined {
    const branch = this.input.topology.branches[index];
    const part = branch?.parts.find((each) => each.kind === "conductor" || each.kind === "lead");
    if (!branch || (part?.kind !== "conductor" && part?.kind !== "lead")) return undefined;
    const loop = this.loopOf(branch);
    const base = { id: branch.id, part, ...(loop && { loop }) };
    if (part.kind === "lead") {
      const leads = this.pieces.get(branch.of)?.leads;
      if (!leads || leads.fuseA !== undefined) return undefined;
      return { ...base, insulationC: leads.insulationC, ampacity: this.leadAmpacity(leads.insulationC) };
    }
    const run = this.runs.get(branch.of);
    return run && { ...base, insulationC: run.insulationC, ampacity: this.input.ampacities.at(run) };
  }

  private loopOf(branch: TopologyBranch): Facts["loop"] {
    const key = `${branch.of}\n${branch.circuits[0] ?? ""}`;
    const out = branch.leg === "out" ? branch : this.outs.get(key);
    const back = branch.leg === "return" ? branch.from : this.returnFrom.get(key);
    return out && back !== undefined ? { from: out.from, to: out.to, back } : undefined;
  }

  private leadAmpacity(insulationC: number | undefined): AmpacityAt | undefined {
    if (insulationC === undefined) return undefined;
    const { rules: ruleSet } = this.input;
    const at =
      this.ofLeads.get(insulationC) ??
      new AmpacityAt({ insulationC, engineSpace: false, bundledConductors: 2, nominalV: 12, ruleSet });
    this.ofLeads.set(insulationC, at);
    return at;
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
