import { commonPractice, type Sourced } from "./source.js";

/** Internal resistance over that at full charge, by state of charge; straight lines between. */
export const resistanceByCharge = {
  source: commonPractice,
  lead: [
    { charge: 1, factor: 1 },
    { charge: 0.5, factor: 1.3 },
    { charge: 0.2, factor: 2 },
    { charge: 0, factor: 3 },
  ],
  lifepo4: [
    { charge: 1, factor: 1 },
    { charge: 0.2, factor: 1.1 },
    { charge: 0.1, factor: 1.3 },
    { charge: 0, factor: 2 },
  ],
} as const satisfies Sourced;

/**
 * The ampere-hour law of lead-acid charging: the current a battery takes at absorption voltage is what it still lacks divided
 * by this time [h]. Full is where the current has fallen to `tailPerAh` of capacity.
 */
export const chargeAcceptance = {
  source: commonPractice,
  flooded: { hours: 1, tailPerAh: 0.02 },
  agm: { hours: 0.6, tailPerAh: 0.02 },
  gel: { hours: 1, tailPerAh: 0.02 },
  lifepo4: { hours: 0.1, tailPerAh: 0.05 },
} as const satisfies Sourced;

/** Share of a solar panel's rated power that reaches the battery in an hour of full sun: heat, angle, dirt and regulator. */
export const solarYield = { source: commonPractice, share: 0.7 } as const satisfies Sourced;
