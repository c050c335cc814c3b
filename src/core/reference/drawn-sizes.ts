/**
 * What a drawing takes where the plan gives no size, no form, no dimension: for the eye only. No figure is ever worked out from these, and the
 * drawing says where it used them. Sizes are along, across and up [m].
 */
export const drawnSizes = {
  source: {
    title: "drawn for the eye where the plan gives no size",
    place: "no source; own judgement",
    status: "practice",
  },
  kinds: {
    battery: [0.2, 0.17, 0.17],
    charger: [0.16, 0.1, 0.06],
    converter: [0.12, 0.09, 0.05],
    panel: [0.06, 0.24, 0.16],
    box: [0.12, 0.1, 0.06],
    gear: [0.06, 0.06, 0.06],
    waypoint: [0.02, 0.02, 0.02],
  },
  roles: {
    lighting: [0.05, 0.05, 0.02],
    "navigation light": [0.07, 0.07, 0.07],
    "bilge pump": [0.1, 0.07, 0.11],
    blower: [0.14, 0.1, 0.1],
    pump: [0.16, 0.09, 0.09],
    electronics: [0.06, 0.19, 0.15],
    socket: [0.04, 0.04, 0.04],
    gauge: [0.05, 0.06, 0.06],
    "sound signal": [0.14, 0.08, 0.08],
    propulsion: [0.32, 0.26, 0.5],
    heating: [0.2, 0.14, 0.14],
    other: [0.08, 0.08, 0.08],
  },
} as const;

/** Outline of a boat of which only the kind is known: beam as a share of length, depth as a share of beam, and a length where there is none. */
export const usualOutline = {
  source: {
    title: "proportions of small open boats, drawn for the eye",
    place: "no source; own judgement",
    status: "practice",
  },
  lengthM: 4.5,
  beamShare: 0.38,
  depthShare: 0.38,
  /** Words of the owner's kind of boat, and the starting form they are drawn by; the first that fits counts. */
  kinds: [
    ["sit-inside", "sit-inside kayak"],
    ["sea kayak", "sit-inside kayak"],
    ["kayak", "sit-on-top kayak"],
    ["canoe", "canoe"],
    ["skiff", "flat-bottomed skiff"],
    ["jon", "flat-bottomed skiff"],
    ["punt", "flat-bottomed skiff"],
    ["flat", "flat-bottomed skiff"],
    ["tender", "round tender"],
    ["dinghy", "round tender"],
    ["row", "round tender"],
    ["launch", "round tender"],
  ],
  otherwise: "vee-bottomed utility",
} as const;
