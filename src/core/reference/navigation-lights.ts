import type { Sourced } from "./source.js";

/** Which lights a boat under way shows by night, by what moves her and how long she is; under 12 m, as all boats here are. */
export const underWay = {
  source: {
    title: "International Regulations for Preventing Collisions at Sea",
    place: "Rules 23 (a) and (d), 25 (a) and (d)",
    status: "published",
  },
  /** Shorter than this an all-round white light may stand for masthead light and sternlight [m]. */
  allRoundUnderM: 12,
  /** Shorter than this, and no faster, it may stand alone where sidelights are not practicable; a sailing boat may have a torch ready [m], [kn]. */
  shortUnderM: 7,
  slowKnots: 7,
} as const satisfies Sourced;

/** How much higher than the sidelights an all-round or masthead light stands on a power-driven boat under 12 m [m]. */
export const overSidelights = {
  source: {
    title: "International Regulations for Preventing Collisions at Sea",
    place: "Annex I, 2 (d)",
    status: "memory",
  },
  leastM: 1,
} as const satisfies Sourced;
