import { commonPractice, type Sourced } from "./source.js";

/**
 * Work a reading is, against putting a meter to two points one can reach (1): a look at what is printed on a fuse; a wire loosened at a
 * terminal, and put back; a joint that must be cut and made anew.
 */
export const readingEffort = {
  source: commonPractice,
  metered: 1,
  sight: 0.25,
  lifted: 3,
  cut: 6,
  /** Joints that come apart without being destroyed; all others are cut. */
  loosens: [
    "crimped ring",
    "crimped fork",
    "push-on tab",
    "screw terminal",
    "lever clamp",
    "pin plug",
    "twist-on cap",
  ],
} as const satisfies Sourced;

/** Gear that is not run for a reading alone: dry pumps suffer, a propeller in the air draws nothing, a horn is heard. Roles of `plan/model/gear.ts`. */
export const standsIdle = {
  source: commonPractice,
  roles: ["bilge pump", "pump", "propulsion", "sound signal"],
} as const satisfies Sourced;
