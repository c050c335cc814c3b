import type { CompletePlan, CompleteRun } from "../../plan/completed.js";
import type { ConductorSize } from "../../plan/model/common.js";
import type { RuleSet } from "../../reference/rule-sets.js";
import { type AmpacityConditions, ampacityA } from "../conductor/ampacity.js";
import type { AmpacityWorking } from "../conductor/ampacity-working.js";

/** Ampacity of a run's conductors where they lie; one loaded conductor more for each that shares its cable or bundle. */
export function runAmpacity(
  run: CompleteRun,
  plan: CompletePlan,
  rules: RuleSet,
  size: ConductorSize,
): AmpacityWorking {
  return ampacityA(size, conditionsOf(run, plan, rules));
}

function conditionsOf(run: CompleteRun, plan: CompletePlan, ruleSet: RuleSet): AmpacityConditions {
  const loaded =
    run.carries.length + (run.return === "shared" || run.carries.length === 0 ? 1 : run.carries.length);
  return {
    insulationC: run.insulationC,
    engineSpace: run.inEngineSpace,
    bundledConductors: Math.max(1, loaded + run.bundledWith),
    nominalV: plan.circuits.get(run.carries[0] ?? "")?.nominalV ?? 12,
    ruleSet,
  };
}

/** Conductors under one set of conditions: each size is looked up in the tables once. */
export class AmpacityAt {
  private readonly bySize = new Map<string, number | undefined>();

  constructor(private readonly conditions: AmpacityConditions) {}

  /** [A]; undefined where no table has it. */
  of(size: ConductorSize): number | undefined {
    const known = this.bySize.get(size.key);
    if (known !== undefined || this.bySize.has(size.key)) return known;
    const allowedA = ampacityA(size, this.conditions).ampacityA;
    this.bySize.set(size.key, allowedA);
    return allowedA;
  }
}

/** The runs of one plan by how they lie: most lie like many others. */
export class RunAmpacities {
  private readonly byRun = new Map<CompleteRun, AmpacityAt>();
  private readonly byConditions = new Map<string, AmpacityAt>();

  constructor(
    private readonly plan: CompletePlan,
    private readonly rules: RuleSet,
  ) {}

  /** The same object for runs that lie alike. */
  at(run: CompleteRun): AmpacityAt {
    const known = this.byRun.get(run);
    if (known) return known;
    const conditions = conditionsOf(run, this.plan, this.rules);
    const { insulationC, engineSpace, bundledConductors, nominalV } = conditions;
    const key = `${insulationC} ${engineSpace} ${bundledConductors} ${nominalV}`;
    const at = this.byConditions.get(key) ?? new AmpacityAt(conditions);
    this.byConditions.set(key, at);
    this.byRun.set(run, at);
    return at;
  }
}
