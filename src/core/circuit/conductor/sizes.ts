import type { ConductorSize } from "../../plan/model/common.js";
import { readConductorSize } from "../../quantity/conductor-size.js";
import type { RuleSet } from "../../reference/rule-set-type.js";

const known = new Map<string, ConductorSize>();

/**
 * The size a key stands for, `16 AWG` or `1.5 mm²`.
 * @throws RangeError if it is not a conductor size.
 */
export function sizeOfKey(key: string): ConductorSize {
  const before = known.get(key);
  if (before) return before;
  const read = readConductorSize(key);
  if (!read.ok) throw new RangeError(`a conductor size such as 16 AWG or 1.5 mm² required, got ${key}`);
  known.set(key, read.value);
  return read.value;
}

/** The whole series of a rule-set, rising. */
export function seriesOf(rules: RuleSet): ConductorSize[] {
  return rules.sizeKeys.map(sizeOfKey);
}

/** Sizes by rising copper area; of two alike the first stays. */
export function rising(sizes: readonly ConductorSize[]): ConductorSize[] {
  const sorted = [...sizes].sort((a, b) => a.areaMm2 - b.areaMm2);
  return sorted.filter((size, index) => index === 0 || size.areaMm2 !== sorted[index - 1]?.areaMm2);
}
