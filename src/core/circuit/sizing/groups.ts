import type { CompletePlan, CompleteRun } from "../../plan/completed.js";
import type { ConductorSize } from "../../plan/model/common.js";
import type { RuleSet } from "../../reference/rule-sets.js";
import { conductorMassKgPerM } from "../conductor/make.js";
import { conductorOhmPerM } from "../conductor/resistance.js";
import { rising, sizeOfKey } from "../conductor/sizes.js";
import type { CornerState } from "../corners.js";
import type { AmpacityAt, RunAmpacities } from "../guards/run-ampacities.js";
import type { SizeCandidate, SizingGroup } from "../sizes/problem.js";
import { outGroup, returnGroup } from "../topology/build.js";
import { offeredSizes, priceScale } from "./prices.js";

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
  readonly least?: NonNullable<SizingGroup["least"]>;
}

/** Every group of the plan, in the plan's order. */
export function runGroups(
  plan: CompletePlan,
  rules: RuleSet,
  ampacities: RunAmpacities,
  { copperC, engineSpaceCopperC }: Pick<CornerState, "copperC" | "engineSpaceCopperC">,
): RunGroup[] {
  const byGroup = new Map<string, CompleteRun[]>();
  for (const run of plan.runs) {
    const list = byGroup.get(run.group);
    if (list) list.push(run);
    else byGroup.set(run.group, [run]);
  }
  const maker = new CandidateMaker(plan, rules);
  return [...byGroup.values()].flatMap((runs): RunGroup[] => {
    const run = runs[0];
    if (!run) return [];
    const lengthM = runs.reduce((sum, each) => sum + each.pulledM, 0);
    const returnM = runs.reduce((sum, each) => sum + each.returnPulledM, 0);
    const outs = run.legs === "return" ? 0 : Math.max(1, run.carries.length);
    const returns = returnsOf(run);
    const place: ConductorPlace = {
      copperC: run.inEngineSpace ? engineSpaceCopperC : copperC,
      tinned: run.tinned,
      ampacity: ampacities.at(run),
    };
    const make = (id: string, fixedSize: ConductorSize | undefined, ofM: number, conductors: number) => {
      const candidates = maker.candidates(place, conductors, fixedSize);
      const fixed = fixedSize
        ? candidates.findIndex(({ size }) => size.areaMm2 === fixedSize.areaMm2)
        : undefined;
      const least = leastSize(run, rules, candidates);
      return {
        id,
        run,
        lengthM: ofM,
        cores: conductors,
        candidates,
        ...(fixed !== undefined && { fixed }),
        ...(least && { least }),
      };
    };
    const back = returnGroup(run);
    const cores = back === outGroup(run) ? outs + returns * (lengthM > 0 ? returnM / lengthM : 1) : outs;
    const groups: RunGroup[] = [];
    if (outs > 0) groups.push(make(outGroup(run), run.size, lengthM, cores));
    if (back !== outGroup(run) && returns > 0) groups.push(make(back, run.returnSize, returnM, returns));
    return groups;
  });
}

function returnsOf(run: CompleteRun): number {
  if (run.legs === "out" || run.return === "hull") return 0;
  return run.return === "shared" ? 1 : Math.max(1, run.carries.length);
}

/** How conductors are made and lie, whatever their size. */
interface ConductorPlace {
  readonly copperC: number;
  readonly tinned: boolean;
  readonly ampacity: AmpacityAt;
}

/** Makes the sizes to choose from. Groups that are made and lie alike share them. */
class CandidateMaker {
  private readonly offered: readonly ConductorSize[];
  private readonly priced: ReturnType<typeof priceScale>;
  private readonly known = new Map<AmpacityAt, Map<string, readonly SizeCandidate[]>>();

  constructor(plan: CompletePlan, rules: RuleSet) {
    this.offered = rising(offeredSizes(plan, rules));
    this.priced = priceScale(plan);
  }

  /** @param fixed The owner's own size: it is one of them, whether it is made or not. */
  candidates(
    { copperC, tinned, ampacity }: ConductorPlace,
    cores: number,
    fixed: ConductorSize | undefined,
  ): readonly SizeCandidate[] {
    const ofPlace = this.known.get(ampacity) ?? new Map<string, readonly SizeCandidate[]>();
    this.known.set(ampacity, ofPlace);
    const key = `${copperC} ${tinned} ${Math.round(cores)} ${fixed?.key ?? ""}`;
    const before = ofPlace.get(key);
    if (before) return before;
    const sizes = fixed ? rising([fixed, ...this.offered]) : this.offered;
    const made = sizes.map(
      (size): SizeCandidate => ({
        size,
        ohmPerM: conductorOhmPerM(size, { tinned, copperC }),
        costPerM: this.priced(size, cores, tinned),
        massKgPerM: conductorMassKgPerM(size),
        ampacityA: ampacity.of(size),
      }),
    );
    ofPlace.set(key, made);
    return made;
  }
}

/** First size the rule-set lets lie here; pigtails short enough are exempt. */
function leastSize(
  run: CompleteRun,
  rules: RuleSet,
  candidates: readonly SizeCandidate[],
): RunGroup["least"] {
  if (run.lengthM <= rules.leastSizeExemptM.value) return undefined;
  const least = run.sheathed ? rules.leastSheathed : rules.leastSingle;
  const { areaMm2 } = sizeOfKey(least.value);
  const index = candidates.findIndex(({ size }) => size.areaMm2 >= areaMm2 * (1 - 1e-9));
  return {
    index: index < 0 ? candidates.length - 1 : index,
    reason: { rule: "least size", clause: `${least.source.title}, ${least.source.place}` },
  };
}
