import { commonPractice, type Sourced } from "./source.js";

/**
 * Resting voltage of a 12 V block at 25 °C by state of charge (0…1), falling; straight lines between the points. After at
 * least 8 h of rest. A 24 V battery is two blocks.
 */
const floodedResting = {
  source: {
    title: "battery council type table",
    place: "recalled; its specific gravities were read",
    status: "memory",
  },
  rows: [
    { charge: 1, v: 12.65 },
    { charge: 0.75, v: 12.45 },
    { charge: 0.5, v: 12.24 },
    { charge: 0.25, v: 12.06 },
    { charge: 0, v: 11.89 },
  ],
} as const satisfies Sourced;

const agmResting = {
  source: commonPractice,
  rows: [
    { charge: 1, v: 12.85 },
    { charge: 0.75, v: 12.6 },
    { charge: 0.5, v: 12.3 },
    { charge: 0.25, v: 12 },
    { charge: 0, v: 11.8 },
  ],
} as const satisfies Sourced;

/** Taken as AGM: both hold their acid in place. */
const gelResting = { source: commonPractice, rows: agmResting.rows } as const satisfies Sourced;

/** Flat: voltage alone is a poor gauge of charge. Suppliers disagree by up to 0.6 V; the lower practice figures are taken. */
const lifepo4Resting = {
  source: commonPractice,
  rows: [
    { charge: 1, v: 13.6 },
    { charge: 0.7, v: 13.2 },
    { charge: 0.4, v: 13.1 },
    { charge: 0.2, v: 12.9 },
    { charge: 0.1, v: 12 },
    { charge: 0, v: 10.4 },
  ],
} as const satisfies Sourced;

/** By the chemistries of `plan/model/supply.ts`. */
export const resting = {
  flooded: floodedResting,
  agm: agmResting,
  gel: gelResting,
  lifepo4: lifepo4Resting,
} as const;
