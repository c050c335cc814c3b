import type { CompletePlan, CompleteRun } from "../../plan/completed.js";
import type { ConductorSize } from "../../plan/model/common.js";
import type { RuleSet } from "../../reference/rule-sets.js";
import { conductorMassKgPerM, relativeCostPerM } from "../conductor/make.js";
import { conductorOhmPerM } from "../conductor/resistance.js";
import { rising, seriesOf, sizeOfKey } from "../conductor/sizes.js";
import { runAmpacity } from "../guards/conductors.js";
import type { SizeCandidate } from "../sizes/problem.js";
import { outGroup, returnGroup } from "../topology/build.js";

/** Conductors of the plan that must be alike, before anything is known of their current. */
export interface RunGroup {
  /** `fore trunk`, `fore trunk / return`. */
  readonly id: string;
  /** First of the single runs, which stands for all: same make, same place. */
  readonly run: CompleteRun;
  /** Cable length of all of them with their slack [m], and conductors in each. */
  readonly lengthM: number;
  readonly cores: number;
  readonly candidates: readonly SizeCandidate[];
  readonly fixed?: number;
  readonly least?: { readonly index: number; readonly clause: string };
}

/** Every group of the plan, in the plan's order. */
export function runGroups(
  plan: CompletePlan,
  rules: RuleSet,
  copperC: number,
  engineSpaceCopperC: number,
): RunGroup[] {
  const byGroup = new Map<string, CompleteRun[]>();
  for (const run of plan.runs) {
    const list = byGroup.get(run.group);
    if (list) list.push(run);
    else byGroup.set(run.group, [run]);
  }
  const priced = priceScale(plan);
  return [...byGroup.values()].flatMap((runs): RunGroup[] => {
    const run = runs[0];
    if (!run) return [];
    const lengthM = runs.reduce((sum, each) => sum + each.pulledM, 0);
    const returnM = runs.reduce((sum, each) => sum + each.returnPulledM, 0);
    const outs = run.legs === "return" ? 0 : Math.max(1, run.carries.length);
    const returns = returnsOf(run);
    const at = { plan, rules, copperC: run.inEngineSpace ? engineSpaceCopperC : copperC, priced };
    const back = returnGroup(run);
    const cores = back === outGroup(run) ? outs + returns * (lengthM > 0 ? returnM / lengthM : 1) : outs;
    const groups: RunGroup[] = [];
    if (outs > 0) groups.push(makeGroup(outGroup(run), run, run.size, lengthM, cores, at));
    if (back !== outGroup(run) && returns > 0)
      groups.push(makeGroup(back, run, run.returnSize, returnM, returns, at));
    return groups;
  });
}

function returnsOf(run: CompleteRun): number {
  if (run.legs === "out" || run.return === "hull") return 0;
  return run.return === "shared" ? 1 : Math.max(1, run.carries.length);
}

interface GroupContext {
  readonly plan: CompletePlan;
  readonly rules: RuleSet;
  readonly copperC: number;
  readonly priced: ReturnType<typeof priceScale>;
}

function makeGroup(
  id: string,
  run: CompleteRun,
  fixedSize: ConductorSize | undefined,
  lengthM: number,
  cores: number,
  context: GroupContext,
): RunGroup {
  const { plan, rules, copperC, priced } = context;
  const offered = plan.source.conductors.sizes.length > 0 ? plan.source.conductors.sizes : seriesOf(rules);
  const sizes = rising(fixedSize ? [fixedSize, ...offered] : offered);
  const candidates = sizes.map(
    (size): SizeCandidate => ({
      size,
      ohmPerM: conductorOhmPerM(size, { tinned: run.tinned, copperC }),
      costPerM: priced(size, cores, run.tinned),
      massKgPerM: conductorMassKgPerM(size),
      ampacityA: runAmpacity(run, plan, rules, size).ampacityA,
    }),
  );
  const fixed = fixedSize ? sizes.findIndex(({ areaMm2 }) => areaMm2 === fixedSize.areaMm2) : -1;
  const least = leastSize(run, rules, sizes);
  return {
    id,
    run,
    lengthM,
    cores,
    candidates,
    ...(fixed >= 0 && { fixed }),
    ...(least && { least }),
  };
}

/** First size the rule-set lets lie here; pigtails short enough are exempt. */
function leastSize(run: CompleteRun, rules: RuleSet, sizes: readonly ConductorSize[]): RunGroup["least"] {
  if (run.lengthM <= rules.leastSizeExemptM.value) return undefined;
  const least = run.sheathed ? rules.leastSheathed : rules.leastSingle;
  const { areaMm2 } = sizeOfKey(least.value);
  const index = sizes.findIndex((size) => size.areaMm2 >= areaMm2 * (1 - 1e-9));
  return {
    index: index < 0 ? sizes.length - 1 : index,
    clause: `${least.source.title}, ${least.source.place}`,
  };
}

/**
 * Price of a metre of one conductor. The plan's own prices win; sizes it does not price are set beside them in proportion
 * to the neutral model, so that money and model never mix.
 */
function priceScale(plan: CompletePlan): (size: ConductorSize, cores: number, tinned: boolean) => number {
  const prices = plan.source.wirePrices;
  if (prices.length === 0) return (size, _cores, tinned) => relativeCostPerM(size, tinned);
  const ratios = prices.map(({ size, cores, perM }) => perM / cores / relativeCostPerM(size, true));
  const scale = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
  return (size, cores, tinned) => {
    const match = prices.find(
      (price) => price.size.areaMm2 === size.areaMm2 && price.cores === Math.round(cores),
    );
    return match ? match.perM / match.cores : relativeCostPerM(size, tinned) * scale;
  };
}
