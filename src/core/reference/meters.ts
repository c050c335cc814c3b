import { commonPractice, type Sourced } from "./source.js";

/** What a meter measures here. */
export type MeterFunction = "voltage" | "current" | "ohm" | "insulation";

/** One range of a meter: greatest reading, and its error as a share of the reading plus so many of the last digit. */
export interface MeterRange {
  readonly key: string;
  readonly function: MeterFunction;
  /** Greatest reading [V, A or Ω by function]. */
  readonly max: number;
  readonly errorShare: number;
  readonly digits: number;
  /** Value of one step of the last digit [V, A or Ω]. */
  readonly digit: number;
}

/**
 * A plain pocket meter of 2,000 counts and a clamp for direct current. The share and the digits are what such meters state; the
 * owner's own leaflet is better. The error is taken as a limit, so a standard deviation is half of it.
 */
export const pocketMeter = {
  source: commonPractice,
  ranges: [
    { key: "200 mV", function: "voltage", max: 0.2, errorShare: 0.005, digits: 2, digit: 1e-4 },
    { key: "2 V", function: "voltage", max: 2, errorShare: 0.005, digits: 2, digit: 1e-3 },
    { key: "20 V", function: "voltage", max: 20, errorShare: 0.005, digits: 2, digit: 0.01 },
    { key: "200 V", function: "voltage", max: 200, errorShare: 0.005, digits: 2, digit: 0.1 },
    { key: "clamp 20 A", function: "current", max: 20, errorShare: 0.02, digits: 5, digit: 0.01 },
    { key: "clamp 200 A", function: "current", max: 200, errorShare: 0.02, digits: 5, digit: 0.1 },
    { key: "200 Ω", function: "ohm", max: 200, errorShare: 0.01, digits: 3, digit: 0.1 },
    { key: "2 kΩ", function: "ohm", max: 2e3, errorShare: 0.008, digits: 2, digit: 1 },
    { key: "20 kΩ", function: "ohm", max: 2e4, errorShare: 0.008, digits: 2, digit: 10 },
    { key: "2 MΩ", function: "insulation", max: 2e6, errorShare: 0.01, digits: 5, digit: 1e3 },
    { key: "20 MΩ", function: "insulation", max: 2e7, errorShare: 0.02, digits: 5, digit: 1e4 },
  ],
  /** Its own two leads and their contact, which every reading on the lowest ohm range includes [Ω]. */
  leadOhm: { usual: 0.2, most: 0.5 },
  /** Input resistance on the voltage ranges [Ω]. */
  inputOhm: 1e7,
  /** What it shows between points that nothing joins to a supply, as a standard deviation [V]. */
  ghostV: 1e-3,
} as const satisfies Sourced & { readonly ranges: readonly MeterRange[] };

/** What a reading must show at least or at most, whatever the boat: limits of the trade. */
export const readingLimits = {
  source: commonPractice,
  /** Between the poles, and from each pole to a metal hull, all gear off and the battery apart [Ω]. */
  leastInsulationOhm: 1e6,
  /** What a meter may pick up on a conductor that is switched off [V]. */
  mostWhenOffV: 0.05,
  /** No voltage is more than this many times the resting voltage of all sources in a row: that is a battery on charge. */
  mostOverRest: 1.25,
  /** A standard deviation is this share of a stated limit of error. */
  sigmaPerLimit: 0.5,
  /** Under this a voltage is one lost along a wire, not one between the poles [V]. */
  fullFromV: 2,
  /** Full voltages that are off by shares no further apart than this are off alike; by less than the other they are not off. */
  alikeShare: 0.02,
  offShare: 0.05,
  /** Two readings of one point, or a reading and what is possible, may lie this many standard deviations apart. */
  contradictionSigmas: 4,
} as const satisfies Sourced;
