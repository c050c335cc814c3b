import type { PartsFigures } from "./plan-parts.js";

export interface PricesWanting {
  /** Lines to buy that have no price. */
  readonly without: number;
  /** Lines to buy. */
  readonly all: number;
}

/**
 * A list to buy of which most lines have no price: it is said once over the list, not on each line.
 * Undefined: most have one, or prices in two currencies are why there are none.
 */
export function pricesWanting({
  list,
  wire,
  withoutPrice,
  currencies,
}: PartsFigures): PricesWanting | undefined {
  const all =
    list.lines.filter(({ toBuy }) => toBuy > 0).length + wire.filter(({ buy }) => buy.length > 0).length;
  const without = withoutPrice.length;
  return currencies.length > 1 || without * 2 <= all ? undefined : { without, all };
}
