import type { SizingGroup } from "./problem.js";
import type { SizeReason } from "./types.js";

/** The first rule, apart from drop, that a candidate breaks; undefined: none. */
export function ruleBroken(group: SizingGroup, index: number): SizeReason | undefined {
  const { least, currentA, protectionA, maxProtectionShare } = group;
  if (least && index < least.index) return least.reason;
  const ampacityA = group.candidates[index]?.ampacityA ?? Number.NaN;
  if (!(currentA <= ampacityA)) return { rule: "ampacity", currentA, ampacityA };
  const allowedA = ampacityA * maxProtectionShare;
  if (protectionA !== undefined && !(protectionA <= allowedA))
    return { rule: "protection", ratingA: protectionA, allowedA };
  return undefined;
}

/** Candidates the group may take, by index; the owner's alone where there is one. `forced`: none holds, the largest stands in. */
export function allowed(group: SizingGroup): {
  readonly indexes: readonly number[];
  readonly forced: boolean;
} {
  if (group.fixed !== undefined) return { indexes: [group.fixed], forced: false };
  const indexes = group.candidates.map((_, index) => index).filter((index) => !ruleBroken(group, index));
  if (indexes.length > 0) return { indexes, forced: false };
  return { indexes: [group.candidates.length - 1], forced: true };
}
