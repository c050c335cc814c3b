/** A pack as it is sold: so many at so much. */
export interface Pack {
  readonly id: string;
  readonly count: number;
  readonly priceMinor: number;
}

export interface PackChoice {
  readonly packs: readonly { readonly id: string; readonly times: number }[];
  readonly bought: number;
  readonly leftOver: number;
  readonly priceMinor: number;
}

/** Beyond this many pieces the table would be larger than any shopping list needs. */
const maxNeeded = 1_000_000;

/**
 * The cheapest packs that together hold at least `needed`, exactly: cost[n] = min over packs of price + cost[n − count].
 * Of equal prices the choice that leaves most over costs nothing more, but clutters the locker: the least left over wins,
 * then the fewest packs.
 * @returns undefined where nothing is sold and something is needed.
 * @throws RangeError on counts below one, prices below zero, or figures that are not whole.
 */
export function cheapestPacks(needed: number, packs: readonly Pack[]): PackChoice | undefined {
  if (!(Number.isInteger(needed) && needed >= 0 && needed <= maxNeeded)) {
    throw new RangeError(`needed must be a whole number from 0 to ${maxNeeded}, got ${needed}`);
  }
  for (const pack of packs) {
    if (!(Number.isInteger(pack.count) && pack.count > 0)) {
      throw new RangeError(`pack ${pack.id} must hold a whole number ≥ 1, got ${pack.count}`);
    }
    if (!(Number.isSafeInteger(pack.priceMinor) && pack.priceMinor >= 0)) {
      throw new RangeError(`price of pack ${pack.id} must be a whole number ≥ 0, got ${pack.priceMinor}`);
    }
  }
  if (needed === 0) return { packs: [], bought: 0, leftOver: 0, priceMinor: 0 };
  if (packs.length === 0) return undefined;
  const { last, cost } = table(needed, packs);
  const times = new Map<string, number>();
  let bought = 0;
  for (let open = needed; open > 0; ) {
    const pack = packs[last[open] ?? 0];
    if (pack === undefined) return undefined;
    times.set(pack.id, (times.get(pack.id) ?? 0) + 1);
    bought += pack.count;
    open = Math.max(0, open - pack.count);
  }
  return {
    packs: [...times].map(([id, count]) => ({ id, times: count })),
    bought,
    leftOver: bought - needed,
    priceMinor: cost[needed] ?? 0,
  };
}

/** For each number still open: least cost, then least left over, then fewest packs, and the pack to take first. */
function table(needed: number, packs: readonly Pack[]) {
  const cost = new Float64Array(needed + 1);
  const over = new Float64Array(needed + 1);
  const number = new Float64Array(needed + 1);
  const last = new Int32Array(needed + 1);
  for (let open = 1; open <= needed; open += 1) {
    cost[open] = Number.POSITIVE_INFINITY;
    packs.forEach((pack, p) => {
      const rest = Math.max(0, open - pack.count);
      const c = pack.priceMinor + (cost[rest] ?? 0);
      const o = Math.max(0, pack.count - open) + (over[rest] ?? 0);
      const k = 1 + (number[rest] ?? 0);
      const [c0, o0, k0] = [cost[open] ?? 0, over[open] ?? 0, number[open] ?? 0];
      if (c < c0 || (c === c0 && (o < o0 || (o === o0 && k < k0)))) {
        cost[open] = c;
        over[open] = o;
        number[open] = k;
        last[open] = p;
      }
    });
  }
  return { cost, last };
}
