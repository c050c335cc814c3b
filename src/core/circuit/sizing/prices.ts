import type { CompletePlan } from "../../plan/completed.js";
import type { ConductorSize } from "../../plan/model/common.js";
import type { WirePrice } from "../../plan/model/plan.js";
import type { RuleSet } from "../../reference/rule-sets.js";
import { relativeCostPerM } from "../conductor/make.js";
import { seriesOf } from "../conductor/sizes.js";
import type { SizeResult } from "../sizes/types.js";

/** Sizes to choose from where the owner fixes none: those the plan is willing to buy, else the whole series of the rules. */
export function offeredSizes({ source }: CompletePlan, rules: RuleSet): readonly ConductorSize[] {
  return source.conductors.sizes.length > 0 ? source.conductors.sizes : seriesOf(rules);
}

/**
 * Price of a metre of one conductor. The plan's own prices win; sizes it does not price are set beside them in proportion
 * to the neutral model, so that money and model never mix.
 */
export function priceScale(
  plan: CompletePlan,
): (size: ConductorSize, cores: number, tinned: boolean) => number {
  const prices = plan.source.wirePrices;
  if (prices.length === 0) return (size, _cores, tinned) => relativeCostPerM(size, tinned);
  const ratios = prices.map(({ size, cores, perM }) => perM / cores / relativeCostPerM(size, true));
  const scale = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
  return (size, cores, tinned) => {
    const match = priceOf(prices, size, cores);
    return match ? match.perM / match.cores : relativeCostPerM(size, tinned) * scale;
  };
}

const priceOf = (prices: readonly WirePrice[], size: ConductorSize, cores: number) =>
  prices.find((price) => price.size.areaMm2 === size.areaMm2 && price.cores === Math.round(cores));

/** What 'cheapest' rests on: the plan's prices of every size weighed, the model of copper alone, or both side by side. */
export type PriceBasis = "prices" | "model" | "both";

/** What the choice among sizes rests on; undefined where none was weighed by cost. */
export function priceBasis(plan: CompletePlan, rules: RuleSet, sizes: SizeResult): PriceBasis | undefined {
  if (sizes.aim !== "cheapest") return undefined;
  const offered = offeredSizes(plan, rules);
  const weighed = sizes.choices
    .filter(({ fixedByOwner }) => !fixedByOwner)
    .flatMap(({ cores }) =>
      offered.map((size) => priceOf(plan.source.wirePrices, size, cores) !== undefined),
    );
  if (weighed.length === 0) return undefined;
  if (plan.source.wirePrices.length === 0) return "model";
  return weighed.every(Boolean) ? "prices" : "both";
}
