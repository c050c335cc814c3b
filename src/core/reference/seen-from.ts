import type { Sourced } from "./source.js";

/** Over which arc each light must be seen, and where to stand to see that it is cut off [degrees from right ahead]. */
export const seenFrom = {
  source: {
    title: "International Regulations for Preventing Collisions at Sea, Rule 21",
    place: "definitions (a) to (e)",
    status: "published",
  },
  masthead: { arcDeg: 225 },
  sidelight: { arcDeg: 112.5 },
  stern: { arcDeg: 135 },
  "all-round": { arcDeg: 360 },
} as const satisfies Sourced;
