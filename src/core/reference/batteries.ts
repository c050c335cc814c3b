import { commonPractice, type Sourced } from "./source.js";

/** Peukert exponents: t = H · (C / (I·H))^k. `k` is what is taken where the owner names none; the range is what the trade reports. */
export const peukertExponents = {
  source: commonPractice,
  flooded: { minK: 1.2, maxK: 1.6, k: 1.25 },
  agm: { minK: 1.05, maxK: 1.15, k: 1.1 },
  gel: { minK: 1.1, maxK: 1.25, k: 1.15 },
  lifepo4: { minK: 1, maxK: 1.05, k: 1.03 },
} as const satisfies Sourced;

/** Internal resistance of a new, charged 12 V block at 25 °C times its capacity [Ω·Ah], and what ageing and cold do to it. */
export const internalResistance = {
  source: commonPractice,
  flooded: { ohmAh: 0.5 },
  agm: { ohmAh: 0.4 },
  gel: { ohmAh: 0.55 },
  /** With its protection electronics. */
  lifepo4: { ohmAh: 0.4 },
  /** Rise for each year of age, as a share of new. */
  perYear: 0.08,
  /** Factor by temperature of the battery; straight lines between. */
  byTemperature: [
    { atC: -18, factor: 2 },
    { atC: 0, factor: 1.4 },
    { atC: 25, factor: 1 },
    { atC: 50, factor: 0.9 },
  ],
} as const satisfies Sourced;

/**
 * What a 12 V or 24 V battery of the kind drives into a dead short, for each Ah [A/Ah]. Upper end of what makers state, since too
 * little is the dangerous side; LiFePO4 as bare cells, because electronics may fail closed.
 */
export const shortCircuitPerAh = {
  source: commonPractice,
  flooded: 25,
  agm: 40,
  gel: 25,
  lifepo4: 80,
} as const satisfies Sourced;

/** Charging: absorption and float of a 12 V block at 25 °C [V], greatest charge current as a share of capacity, coldest charge [°C]. */
export const chargeLimits = {
  source: commonPractice,
  flooded: {
    absorptionV: 14.4,
    minAbsorptionV: 14.2,
    maxAbsorptionV: 14.8,
    floatV: 13.4,
    maxPerAh: 0.2,
    efficiency: 0.8,
  },
  agm: {
    absorptionV: 14.4,
    minAbsorptionV: 14.2,
    maxAbsorptionV: 14.8,
    floatV: 13.5,
    maxPerAh: 0.3,
    efficiency: 0.88,
  },
  gel: {
    absorptionV: 14.2,
    minAbsorptionV: 14.1,
    maxAbsorptionV: 14.4,
    floatV: 13.6,
    maxPerAh: 0.2,
    efficiency: 0.88,
  },
  lifepo4: {
    absorptionV: 14.4,
    minAbsorptionV: 14.2,
    maxAbsorptionV: 14.6,
    floatV: 13.5,
    maxPerAh: 0.5,
    efficiency: 0.97,
    minC: 0,
  },
  /** Lead-acid: change of charge voltage for each kelvin above 25 °C [V per cell]. */
  leadPerCellPerK: -0.004,
} as const satisfies Sourced;

/** Limits of one LiFePO4 cell [V]. */
export const lithiumCell = {
  source: { title: "two battery suppliers' pages that agree", place: "cell limits", status: "published" },
  chargeMinV: 3.55,
  chargeMaxV: 3.65,
  absoluteMaxV: 3.7,
  nominalV: 3.2,
  cutOffMinV: 2.5,
  cutOffMaxV: 2.8,
} as const satisfies Sourced;

/** Where a 12 V block stops being used: terminal voltage [V], and the share of capacity kept back by habit. */
export const dischargeLimits = {
  source: commonPractice,
  flooded: { cutOffV: 10.5, reserveShare: 0.5 },
  agm: { cutOffV: 10.5, reserveShare: 0.5 },
  gel: { cutOffV: 10.5, reserveShare: 0.5 },
  /** The highest figure cells are stopped at, 4 × 2.8 V. */
  lifepo4: { cutOffV: 11.2, reserveShare: 0.2 },
} as const satisfies Sourced;

/** Share of the rated capacity left at a battery temperature; straight lines between, flat beyond the ends. */
export const capacityByTemperature = {
  source: {
    title: "lead-acid capacity against temperature",
    place: "slow rates, recalled",
    status: "memory",
  },
  lead: [
    { atC: -18, share: 0.5 },
    { atC: 0, share: 0.8 },
    { atC: 25, share: 1 },
  ],
} as const satisfies Sourced;

export const lithiumCapacityByTemperature = {
  source: commonPractice,
  lifepo4: [
    { atC: -20, share: 0.5 },
    { atC: -10, share: 0.7 },
    { atC: 0, share: 0.85 },
    { atC: 25, share: 1 },
  ],
} as const satisfies Sourced;

/** Share of new capacity lost each year of ordinary care, and the least taken whatever the age. */
export const capacityByAge = {
  source: commonPractice,
  flooded: { lossPerYear: 0.06 },
  agm: { lossPerYear: 0.05 },
  gel: { lossPerYear: 0.05 },
  lifepo4: { lossPerYear: 0.02 },
  leastShare: 0.5,
} as const satisfies Sourced;

/** Ready for the defaults of a plan: one 12 V block of a chemistry. */
