import { type ProtectionCondition, protectionConditions } from "./types.js";

/** A standard rating and the conditions it breaks, of those a rating can mend (all but `interrupts` and `near-source`). */
export interface TriedRating {
  readonly ratingA: number;
  readonly fails: readonly ProtectionCondition[];
}

export interface RatingChoice {
  readonly ratingA: number;
  readonly possibleA: readonly number[];
  readonly conflict?: readonly [ProtectionCondition, ProtectionCondition];
}

/** Conditions that spare the owner trouble; the others spare conductors and gear. */
const forUse: ReadonlySet<ProtectionCondition> = new Set(["carries-load", "rides-start", "before-main"]);

/**
 * The two conditions no tried rating satisfies together, each satisfied by some; the pair that lies farthest apart.
 * @returns undefined where one condition alone excludes every rating.
 */
function conflictOf(
  tried: readonly TriedRating[],
): readonly [ProtectionCondition, ProtectionCondition] | undefined {
  const holds = protectionConditions
    .filter((condition) => tried.some(({ fails }) => fails.includes(condition)))
    .map((condition) => ({
      condition,
      at: tried.flatMap(({ fails }, index) => (fails.includes(condition) ? [] : [index])),
    }));
  let widest: { gap: number; pair: readonly [ProtectionCondition, ProtectionCondition] } | undefined;
  for (const [index, a] of holds.entries()) {
    for (const b of holds.slice(index + 1)) {
      const [firstA, lastA, firstB, lastB] = [a.at[0], a.at.at(-1), b.at[0], b.at.at(-1)];
      if (firstA === undefined || lastA === undefined || firstB === undefined || lastB === undefined)
        continue;
      const gap = Math.max(firstA - lastB, firstB - lastA);
      if (gap > 0 && gap > (widest?.gap ?? 0)) widest = { gap, pair: [a.condition, b.condition] };
    }
  }
  return widest?.pair;
}

/**
 * Chooses among standard ratings in rising order.
 * @param prefers Of the ratings that break nothing, take the smallest it accepts, if it accepts any.
 * @throws RangeError if there is no rating to choose from.
 */
export function chooseRating(
  tried: readonly TriedRating[],
  prefers: (ratingA: number) => boolean = () => true,
): RatingChoice {
  const least = tried[0];
  if (least === undefined) throw new RangeError("at least one standard rating is required, got none");
  const possibleA = tried.filter(({ fails }) => fails.length === 0).map(({ ratingA }) => ratingA);
  const best = possibleA.find(prefers) ?? possibleA[0];
  if (best !== undefined) return { ratingA: best, possibleA };
  // a main that opens too leaves the boat dark but harms nothing: better than a fuse that cannot carry its load
  const inDark = tried.find(({ fails }) => fails.every((condition) => condition === "before-main"));
  // a fuse that opens too soon is a nuisance, one that opens too late a fire
  const harmless = tried.findLast(({ fails }) => fails.every((condition) => forUse.has(condition)));
  const conflict = conflictOf(tried);
  return { ratingA: (inDark ?? harmless ?? least).ratingA, possibleA, ...(conflict && { conflict }) };
}
