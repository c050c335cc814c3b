import { commonPractice, type Sourced } from "./source.js";

/**
 * How often a thing is the one at fault when something is wrong, against a sealed crimp in the dry (1). Only the order matters;
 * readings soon outweigh it.
 */
export const faultOdds = {
  source: commonPractice,
  joint: {
    "crimped butt": 2,
    "sealed butt": 1,
    "solder sleeve": 1.2,
    "soldered and sleeved": 1.5,
    "crimped ring": 1.5,
    "crimped fork": 2,
    "push-on tab": 4,
    "screw terminal": 3,
    "lever clamp": 2.5,
    "pin plug": 5,
    tap: 6,
    "twist-on cap": 8,
    "twisted and taped": 10,
  },
  /** A joint where water comes, not sealed. */
  wetFactor: 3,
  /** Conductor between its ends. */
  conductor: 0.3,
  /** The maker's own leads. */
  lead: 0.3,
  fuseContact: 2.5,
  switchContact: 3,
  /** Share of the odds of a place that goes to a break instead of a resistance. */
  openShare: 0.4,
  fuseBlown: 4,
  gearDead: 3,
  short: 0.8,
  reversed: 0.6,
  wrongFuse: 0.3,
  batteryLow: 3,
  batteryWorn: 1,
  /** Odds of a second fault beside a first, against the sum of all single ones. */
  second: 0.05,
  /** Nothing wrong at all. */
  well: 5,
} as const satisfies Sourced;

/** Extra resistance a bad place may have [Ω], any order of size equally likely; above it counts as a break. */
export const extraResistance = {
  source: commonPractice,
  minOhm: 0.02,
  maxOhm: 300,
} as const satisfies Sourced;

/** Gear as an ohmmeter sees it with the power off: electronics block so small a voltage, a motor is its winding [Ω]. */
export const restingGear = { source: commonPractice, electronicsOhm: 5e4 } as const satisfies Sourced;
