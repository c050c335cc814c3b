import { commonPractice, type Sourced } from "./source.js";

/** How alike batteries in parallel should be. */
export const parallelBatteries = {
  source: commonPractice,
  maxCapacityDifferenceShare: 0.1,
  maxAgeDifferenceYears: 1,
} as const satisfies Sourced;

/** Charging that takes longer than this is worth knowing before the next outing. */
export const chargingPatience = {
  source: commonPractice,
  maxHours: 24,
  maxSunDays: 5,
} as const satisfies Sourced;

/** How much of a battery is better left in it: below this share of charge lead ages fast. */
export const gentleReserve = {
  source: commonPractice,
  leadShare: 0.5,
  lithiumShare: 0.05,
} as const satisfies Sourced;

/** Colours kept for bonding conductors, never for a live or returning one. */
export const bondingColours = {
  source: { title: "ISO 10133:2012 and US practice", place: "colour tables, recalled", status: "memory" },
  colours: ["green", "green and yellow", "green/yellow", "green-yellow"],
} as const satisfies Sourced;
