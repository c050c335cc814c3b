/** How high an open boat should stand. Lengths in m, angles in degrees. No stability assessment: see docs/methods/float.md. */
export const afloat = {
  /** Least height of the lowest place over which water comes in, as a share of the boat's length. */
  height: {
    source: {
      title: "ISO 12217 (small craft, stability)",
      place: "basic required downflooding height of design category D, LH/20",
      status: "memory",
    },
    lengthShare: 1 / 20,
  },
  /** Heel under a load at the side that is still allowed: 10° + (24 − LH)³/600. */
  heel: {
    source: {
      title: "ISO 12217 (small craft, stability)",
      place: "offset load heel limit",
      status: "memory",
    },
    baseDeg: 10,
    lengthM: 24,
    divisor: 600,
  },
} as const;
