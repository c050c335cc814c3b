/** What may be wrong. */
export const faultKinds = [
  "well",
  "resistance",
  "two resistances",
  "open",
  "fuse blown",
  "short",
  "reversed",
  "wrong fuse",
  "gear dead",
  "battery low",
  "battery worn",
] as const;
export type FaultKind = (typeof faultKinds)[number];

/** One explanation of the readings. */
export interface Suspect {
  readonly kind: FaultKind;
  /** Branch (`lamp trunk / helm / lamps / out`), gear or battery; two of them for two resistances; none where all is well. */
  readonly at: readonly string[];
  /** Joints and devices on that branch, the likeliest first: readings at its two ends cannot tell them apart. */
  readonly parts: readonly string[];
  /** 0…1, of all explanations looked at. */
  readonly probability: number;
  /** Resistance each place needs beyond its own [Ω]. */
  readonly extraOhm: readonly number[];
  /** For a low battery: voltage it lacks at rest, below zero [V]. For a wrong fuse: the rating it looks like [A]. */
  readonly figure?: number;
  /** What each reading would then be, in the readings' order and units [V, A or Ω]. */
  readonly shown: readonly number[];
  /** Sum of squares of what is left, in standard deviations; about the number of readings where it explains them. */
  readonly misfit: number;
  readonly explains: boolean;
}
