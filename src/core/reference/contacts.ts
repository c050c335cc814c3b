import { commonPractice, type Sourced } from "./source.js";

/**
 * Drop across a device at its rated current [V]; its resistance is taken as that over the rating. Fuses and thermal breakers work
 * by getting warm, so a small one has more resistance than a big one. No published figure per rating was found.
 */
export const deviceDrop = {
  source: commonPractice,
  "blade fuse": 0.1,
  "bolted fuse": 0.08,
  "cartridge fuse": 0.08,
  breaker: 0.15,
} as const satisfies Sourced;

/** Holder and its contacts, on top of the fuse [V at rated current]. */
export const holderDrop = {
  source: commonPractice,
  "blade fuse": 0.02,
  "bolted fuse": 0.01,
  "cartridge fuse": 0.01,
  breaker: 0,
} as const satisfies Sourced;

/** Switches: drop across closed contacts at the rated current [V], and the rating taken where none is given [A]. */
export const switchDrop = {
  source: commonPractice,
  atRatingV: 0.05,
  usualRatingA: 10,
  usualMasterRatingA: 100,
} as const satisfies Sourced;
