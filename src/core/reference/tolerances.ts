import { commonPractice, type Sourced } from "./source.js";

/**
 * How far the boat as built may lie from the figures of its plan and still be sound. Shares are standard deviations of a normal
 * spread cut at three of them; `factor` is the standard deviation of the logarithm (0.35: two in three lie within a factor 1.42).
 */
export const tolerances = {
  source: commonPractice,
  /** Resistance of a metre of conductor against its table: strand count, lay, drawing. */
  conductorShare: 0.03,
  /** Length of a run against the plan, where it was not measured after pulling. */
  lengthShare: 0.03,
  /** Copper against the air taken [K]. */
  copperK: 6,
  /** Sound joints: they differ a great deal, and always have. */
  jointFactor: 0.35,
  /** Fuse with its holder, and switch contacts. */
  contactFactor: 0.3,
  /** What gear draws against its label. */
  gearShare: { power: 0.06, current: 0.08, resistance: 0.06, motor: 0.12 },
  /** What the same piece of gear draws from one day to another. */
  gearDailyShare: 0.02,
  /** Resting voltage of a battery of unknown charge, per 12 V block [V]. */
  restingV: 0.15,
  /** The same once it was measured at its posts just before: what it sags while one works [V]. */
  restingMeasuredV: 0.02,
  internalOhmFactor: 0.25,
  /** A converter's output against its label. */
  converterShare: 0.01,
} as const satisfies Sourced;

/** Share of sound boats whose reading lies within the band of a test sheet; with a hundred readings about one is outside. */
export const bandShare = { source: commonPractice, share: 0.99 } as const satisfies Sourced;
