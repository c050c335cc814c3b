/**
 * Shapes to start a survey from: ours, drawn up by eye to look like the kind of boat, no boat's lines.
 * Eleven stations, evenly from the aft end to the fore end. Half-breadths as shares of half the beam, heights as shares of the depth
 * amidships, from the base line. A line without half-breadths lies on the centreline.
 */
export const startingForms = {
  source: { title: "drawn up for this tool", place: "no published lines", status: "practice" },
  kinds: {
    "flat-bottomed skiff": {
      open: true,
      lines: [
        {
          name: "keel",
          knuckle: true,
          above: "flat",
          heights: [0.13, 0.06, 0.02, 0, 0, 0, 0.02, 0.06, 0.13, 0.24, 0.4],
        },
        {
          name: "chine",
          knuckle: true,
          above: "flat",
          halfBreadths: [0.62, 0.7, 0.76, 0.79, 0.8, 0.78, 0.72, 0.61, 0.45, 0.24, 0],
          heights: [0.13, 0.06, 0.02, 0, 0, 0, 0.02, 0.06, 0.13, 0.24, 0.4],
        },
        {
          name: "sheer",
          knuckle: true,
          above: "flat",
          halfBreadths: [0.78, 0.87, 0.94, 0.98, 1, 0.99, 0.94, 0.84, 0.66, 0.38, 0],
          heights: [1.04, 1.01, 0.99, 0.98, 0.99, 1, 1.04, 1.09, 1.16, 1.25, 1.36],
        },
      ],
    },
    "vee-bottomed utility": {
      open: true,
      lines: [
        {
          name: "keel",
          knuckle: true,
          above: "flat",
          heights: [0, 0, 0, 0, 0, 0, 0.01, 0.05, 0.13, 0.28, 0.55],
        },
        {
          name: "chine",
          knuckle: true,
          above: "flat",
          halfBreadths: [0.82, 0.83, 0.84, 0.84, 0.83, 0.8, 0.74, 0.63, 0.46, 0.25, 0],
          heights: [0.16, 0.17, 0.18, 0.19, 0.21, 0.24, 0.29, 0.36, 0.46, 0.6, 0.78],
        },
        {
          name: "sheer",
          knuckle: true,
          above: "flat",
          halfBreadths: [0.95, 0.97, 0.99, 1, 1, 0.99, 0.96, 0.88, 0.72, 0.44, 0],
          heights: [0.96, 0.96, 0.97, 0.98, 0.99, 1, 1.03, 1.07, 1.12, 1.18, 1.24],
        },
      ],
    },
    "round tender": {
      open: true,
      lines: [
        {
          name: "keel",
          knuckle: false,
          above: "round",
          heights: [0.16, 0.08, 0.03, 0.01, 0, 0, 0.01, 0.03, 0.09, 0.22, 0.5],
        },
        {
          name: "bilge",
          knuckle: false,
          above: "round",
          halfBreadths: [0.5, 0.59, 0.65, 0.69, 0.71, 0.7, 0.65, 0.55, 0.4, 0.2, 0],
          heights: [0.36, 0.26, 0.2, 0.17, 0.16, 0.16, 0.18, 0.23, 0.33, 0.5, 0.74],
        },
        {
          name: "topside",
          knuckle: false,
          above: "round",
          halfBreadths: [0.68, 0.79, 0.87, 0.92, 0.94, 0.93, 0.88, 0.77, 0.59, 0.32, 0],
          heights: [0.72, 0.64, 0.59, 0.56, 0.55, 0.55, 0.58, 0.63, 0.71, 0.84, 1.02],
        },
        {
          name: "sheer",
          knuckle: true,
          above: "flat",
          halfBreadths: [0.72, 0.84, 0.93, 0.98, 1, 0.99, 0.95, 0.86, 0.69, 0.4, 0],
          heights: [1.12, 1.06, 1.02, 1, 0.99, 1, 1.03, 1.08, 1.15, 1.24, 1.36],
        },
      ],
    },
    canoe: {
      open: true,
      lines: [
        {
          name: "keel",
          knuckle: false,
          above: "round",
          heights: [0.3, 0.06, 0.02, 0, 0, 0, 0, 0, 0.02, 0.06, 0.3],
        },
        {
          name: "bilge",
          knuckle: false,
          above: "round",
          halfBreadths: [0, 0.22, 0.48, 0.69, 0.81, 0.85, 0.81, 0.69, 0.48, 0.22, 0],
          heights: [0.6, 0.32, 0.22, 0.18, 0.16, 0.16, 0.16, 0.18, 0.22, 0.32, 0.6],
        },
        {
          name: "topside",
          knuckle: false,
          above: "round",
          halfBreadths: [0, 0.3, 0.62, 0.84, 0.96, 1, 0.96, 0.84, 0.62, 0.3, 0],
          heights: [1, 0.7, 0.6, 0.55, 0.53, 0.52, 0.53, 0.55, 0.6, 0.7, 1],
        },
        {
          name: "sheer",
          knuckle: true,
          above: "flat",
          halfBreadths: [0, 0.34, 0.66, 0.86, 0.96, 0.98, 0.96, 0.86, 0.66, 0.34, 0],
          heights: [1.6, 1.28, 1.12, 1.04, 1.01, 1, 1.01, 1.04, 1.12, 1.28, 1.6],
        },
      ],
    },
    "sit-on-top kayak": {
      open: false,
      lines: [
        {
          name: "keel",
          knuckle: false,
          above: "round",
          heights: [0.5, 0.16, 0.05, 0.01, 0, 0, 0, 0.02, 0.07, 0.2, 0.62],
        },
        {
          name: "bilge",
          knuckle: false,
          above: "round",
          halfBreadths: [0, 0.4, 0.64, 0.78, 0.84, 0.86, 0.84, 0.76, 0.6, 0.34, 0],
          heights: [0.72, 0.4, 0.28, 0.22, 0.2, 0.2, 0.2, 0.23, 0.31, 0.46, 0.84],
        },
        {
          name: "sheer",
          knuckle: true,
          above: "flat",
          halfBreadths: [0, 0.5, 0.77, 0.92, 0.99, 1, 0.98, 0.89, 0.71, 0.42, 0],
          heights: [1.04, 1.02, 1.01, 1, 1, 1, 1.01, 1.04, 1.08, 1.14, 1.22],
        },
      ],
    },
    "sit-inside kayak": {
      open: false,
      lines: [
        {
          name: "keel",
          knuckle: true,
          above: "round",
          heights: [0.62, 0.2, 0.07, 0.02, 0, 0, 0, 0.02, 0.08, 0.24, 0.74],
        },
        {
          name: "bilge",
          knuckle: false,
          above: "round",
          halfBreadths: [0, 0.28, 0.54, 0.72, 0.82, 0.85, 0.81, 0.7, 0.5, 0.25, 0],
          heights: [0.82, 0.46, 0.32, 0.26, 0.23, 0.23, 0.24, 0.27, 0.36, 0.54, 0.94],
        },
        {
          name: "sheer",
          knuckle: true,
          above: "flat",
          halfBreadths: [0, 0.36, 0.66, 0.87, 0.98, 1, 0.96, 0.83, 0.6, 0.31, 0],
          heights: [1.1, 1.04, 1.02, 1.01, 1, 1, 1.02, 1.05, 1.1, 1.17, 1.28],
        },
      ],
    },
  },
  /** How far such a shape may be from the boat before anything is measured (one standard deviation), as a share of beam or depth. */
  uncertainShare: 0.08,
} as const;

export type StartingKind = keyof typeof startingForms.kinds;
