import { commonPractice, type Sourced } from "./source.js";

/** Spares worth their weight in a small open boat: so many fuses of each rating in use, and the things that mend a lead afloat. */
export const spares = {
  source: commonPractice,
  fusesOfEachRating: 2,
  always: ["torch", "meter", "sealed butts", "tape"],
} as const satisfies Sourced;

/** Measured voltages near rest tell charge only so well; under load the drop inside the battery is added back first. */
export const chargeReading = {
  source: commonPractice,
  /** Resting means so long without load or charge [h]. */
  restHours: 1,
  /** Uncertainty of charge read from a voltage at rest and under load, as shares of full. */
  restingShare: 0.1,
  loadedShare: 0.2,
} as const satisfies Sourced;

/** Charges the card of hours is written for. */
export const chargeRows = {
  source: commonPractice,
  shares: [1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3],
} as const satisfies Sourced;
