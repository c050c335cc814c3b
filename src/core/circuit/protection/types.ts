import type { Protection } from "../../plan/model/common.js";

/** The conditions a device must meet, each named once here, in the findings and in the docs. */
export const protectionConditions = [
  "carries-load",
  "rides-start",
  "protects-weakest",
  "gear-limit",
  "clears-far-short",
  "withstands-short",
  "interrupts",
  "near-source",
  "before-main",
] as const;
export type ProtectionCondition = (typeof protectionConditions)[number];

/** Conditions a thicker conductor can mend. */
export const mendedByCopper: ReadonlySet<ProtectionCondition> = new Set([
  "protects-weakest",
  "clears-far-short",
  "withstands-short",
]);

/** A branch that a device at some rating does not spare, where a thicker one would be spared, and the condition that says so. */
export interface Harm {
  readonly condition: ProtectionCondition;
  readonly branch: string;
}

/** One condition at one device: what it demands of the rating (or distance, or capacity) and whether it holds. */
export interface ConditionResult {
  readonly condition: ProtectionCondition;
  /** `unchecked` where a figure is missing; the finding says which. */
  readonly state: "holds" | "fails" | "unchecked";
  /** Figure and limit in `unit`, in the sense of the condition. */
  readonly figure?: number;
  readonly limit?: number;
  readonly unit: "A" | "s" | "m" | "A²s";
  /** Conductor, lead or device that sets the limit. */
  readonly binds?: string;
}

export interface ProtectionFigures {
  /** `helm / lamps / fuse`, `house / main`, `pump feed / fuse`, `helm / main`. */
  readonly id: string;
  /** Way, run, panel or battery that has it. */
  readonly of: string;
  readonly device: Protection["device"];
  readonly ratingA: number;
  readonly fixedByOwner: boolean;
  /** A way on which nothing hangs yet: the rating stands for none, and no fuse is to be fitted before something does. */
  readonly spare?: true;
  readonly loadA: number;
  readonly startA: number;
  /** Least conductor downstream that has no protection of its own. */
  readonly weakest?: { readonly id: string; readonly sizeKey: string; readonly allowedA: number };
  /** Greatest fault current at the device and least at the farthest end it guards [A]; undefined where a figure is missing. */
  readonly shortAtDeviceA?: number;
  readonly shortAtFarEndA?: number;
  readonly clearsWithinS?: number;
  /** A condition that does not apply (no gear, no device nearer the source) is left out. */
  readonly conditions: readonly ConditionResult[];
  /**
   * Standard ratings that break no condition a rating can mend (all but `interrupts` and `near-source`). Empty: two of them
   * conflict, or, where `conflict` is undefined, one alone excludes every rating the kind is made in.
   */
  readonly possibleA: readonly number[];
  readonly conflict?: readonly [ProtectionCondition, ProtectionCondition];
  /**
   * Where no rating suits, or none of a main lets every device beyond it open first: the smallest that would if the conductors it harms
   * were thicker [A], and what it harms, of each condition the conductor that stands it least. Undefined: copper alone would not help, or
   * the rating is the owner's.
   */
  readonly withThicker?: { readonly ratingA: number; readonly harms: readonly Harm[] };
  /** The standard rating below the one taken, and the conditions it breaks (none: it was the owner's or a main's choice). */
  readonly nextSmaller?: { readonly ratingA: number; readonly fails: readonly ProtectionCondition[] };
}
