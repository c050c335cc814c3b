import { type SupportRule, supportRules } from "../reference/supports.js";

export interface LegSupports {
  readonly leg: string;
  readonly maxApartM: number;
  readonly apartM: number;
  /** From the leg's start [m]; its ends are held as well, at the waypoints. */
  readonly atM: readonly number[];
  readonly rule: SupportRule;
}

/** The rule with the least distance for what runs on a leg. */
export function supportRule(rules: "us" | "iso", what: readonly SupportRule["what"][]): SupportRule {
  const [first, ...others] = supportRules.filter((rule) => rule.rules === rules && what.includes(rule.what));
  if (first === undefined)
    throw new RangeError(`a kind of conductor required, got ${what.join(", ") || "none"}`);
  return others.reduce((a, b) => (b.maxApartM < a.maxApartM ? b : a), first);
}

/**
 * Supports between the ends of a leg, evenly spread and no farther apart than the rule allows. One support holds the whole
 * bundle. Where a terminal is at the start, the first comes within its own limit.
 * @throws RangeError if the length is not ≥ 0.
 */
export function legSupports(
  leg: string,
  lengthM: number,
  rule: SupportRule,
  fromTerminal = false,
): LegSupports {
  if (!(lengthM >= 0)) throw new RangeError(`length of leg ${leg} must be ≥ 0 m, got ${lengthM}`);
  const { maxApartM, maxFirstM } = rule;
  const limit = fromTerminal && maxFirstM !== undefined ? Math.min(maxApartM, maxFirstM) : maxApartM;
  const gaps = Math.max(1, Math.ceil(lengthM / limit - 1e-9));
  const apartM = lengthM / gaps;
  const atM = Array.from({ length: gaps - 1 }, (_, k) => (k + 1) * apartM);
  return { leg, maxApartM: limit, apartM, atM, rule };
}
