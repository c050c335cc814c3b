import type { Sourced } from "./source.js";

/**
 * When a compartment with a fixed petrol engine that has a starter needs no blower, and how long one is run before the start. Read as the
 * section is quoted by the Coast Guard's handbook for boatbuilders, and in a copy of the code.
 */
export const engineSpaceAir = {
  source: {
    title: "33 CFR Part 183 Subpart K",
    place: "183.605, 183.610",
    status: "published",
  },
  /** Open to the atmosphere: so much opening for the net volume [in² for each ft³], and the same in metres. */
  openIn2PerFt3: 15,
  openM2PerM3: 0.34,
  /** By the label at the starting switch, 183.610(f) [min]. */
  minutes: 4,
} as const satisfies Sourced;
