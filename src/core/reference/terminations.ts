import { commonPractice, type Source } from "./source.js";

export interface PullTest {
  readonly gauge: string;
  /** As printed, pounds-force. */
  readonly lbf: number;
  /** As printed, newtons. */
  readonly n: number;
  /** Harder values of the military column, where read. */
  readonly hardLbf?: number;
}

/** Least pull a crimp holds for one minute. 2/0 AWG prints 1235 N beside 300 lbf (1334 N): the pounds are used. */
export const pullTests = {
  source: {
    title: "UL and commercial pull-test minima; SAE AS7928 (formerly MIL-T-7928)",
    place: "as quoted in a connector maker's application specifications",
    status: "published",
  },
  newtonsPerLbf: 4.4482216,
  rows: [
    { gauge: "26 AWG", lbf: 3, n: 13.4, hardLbf: 7 },
    { gauge: "24 AWG", lbf: 5, n: 22.3, hardLbf: 10 },
    { gauge: "22 AWG", lbf: 8, n: 35.6, hardLbf: 15 },
    { gauge: "20 AWG", lbf: 13, n: 57.9, hardLbf: 19 },
    { gauge: "18 AWG", lbf: 20, n: 89, hardLbf: 38 },
    { gauge: "16 AWG", lbf: 30, n: 133.5, hardLbf: 50 },
    { gauge: "14 AWG", lbf: 50, n: 222.5, hardLbf: 70 },
    { gauge: "12 AWG", lbf: 70, n: 311.5, hardLbf: 110 },
    { gauge: "10 AWG", lbf: 80, n: 356, hardLbf: 150 },
    { gauge: "8 AWG", lbf: 90, n: 400.5 },
    { gauge: "6 AWG", lbf: 100, n: 445 },
    { gauge: "4 AWG", lbf: 140, n: 623 },
    { gauge: "2 AWG", lbf: 180, n: 801 },
    { gauge: "1/0 AWG", lbf: 250, n: 1112.5 },
    { gauge: "2/0 AWG", lbf: 300, n: 1235 },
  ],
} as const satisfies { source: Source; newtonsPerLbf: number; rows: readonly PullTest[] };

/** A crimp that stays in use is pulled no harder than this share of its minimum. */
export const inProcessPull = {
  source: { title: "NASA-STD-8739.4", place: "13.8.2", status: "published" },
  share: 0.8,
} as const;

export interface BarrelColour {
  readonly colour: "red" | "blue" | "yellow";
  readonly largestGauge: number;
  readonly smallestGauge: number;
  readonly minAreaMm2: number;
  readonly maxAreaMm2: number;
}

/** Colour of insulated terminals. Gauges as numbers (16 for 16 AWG). Some makers print red 22 to 18, yellow from 2.5 mm². */
export const barrelColours = {
  source: { title: "terminal makers' colour tables", place: "insulated terminals", status: "published" },
  rows: [
    { colour: "red", smallestGauge: 22, largestGauge: 16, minAreaMm2: 0.5, maxAreaMm2: 1.5 },
    { colour: "blue", smallestGauge: 16, largestGauge: 14, minAreaMm2: 1.5, maxAreaMm2: 2.5 },
    { colour: "yellow", smallestGauge: 12, largestGauge: 10, minAreaMm2: 4, maxAreaMm2: 6 },
  ],
} as const satisfies { source: Source; rows: readonly BarrelColour[] };

/**
 * Copper that an insulated barrel takes in all, in circular mils (the square of a diameter in thousandths of an inch): what
 * counts when several conductors share it. That it goes by the total is published; the limits are recalled.
 */
export const barrelTotals = {
  source: {
    title: "terminal makers' circular mil ranges of insulated terminals and splices",
    place: "by the total area of the wires in the barrel, never by how they fit",
    status: "memory",
  },
  mm2PerCircularMil: 5.067075e-4,
  rows: [
    { colour: "red", minCircularMils: 509, maxCircularMils: 3260 },
    { colour: "blue", minCircularMils: 2050, maxCircularMils: 5180 },
    { colour: "yellow", minCircularMils: 5180, maxCircularMils: 13100 },
  ],
} as const satisfies { source: Source; mm2PerCircularMil: number; rows: readonly object[] };

/** Depth of an insulated barrel, which is what is stripped, less the end that shows. Measure the one that was bought. */
export const barrelDepths = {
  source: commonPractice,
  showsMm: 1,
  insulated: { red: 6, blue: 6, yellow: 8 },
  lugs: [
    { toAreaMm2: 10, depthMm: 10 },
    { toAreaMm2: 16, depthMm: 12 },
    { toAreaMm2: 25, depthMm: 14 },
    { toAreaMm2: 35, depthMm: 16 },
    { toAreaMm2: 50, depthMm: 18 },
    { toAreaMm2: 70, depthMm: 20 },
    { toAreaMm2: 120, depthMm: 24 },
  ],
  screwMm: 8,
  leverMm: 11,
  pinMm: 5,
  solderSleeveMm: 8,
  lapMm: 15,
} as const;

/** Male tabs for push-on terminals. */
export const tabSizes = {
  source: { title: "IEC 61210", place: "tab widths and thicknesses", status: "memory" },
  rows: [
    { series: "2.8", widthMm: 2.8, maxAreaMm2: 1 },
    { series: "4.8", widthMm: 4.8, maxAreaMm2: 1.5 },
    { series: "6.3", widthMm: 6.3, maxAreaMm2: 6 },
    { series: "9.5", widthMm: 9.5, maxAreaMm2: 6 },
  ],
  maxArea: commonPractice,
} as const;

/** Holes of ring terminals by stud. M6 was read in an article on sizing terminals; the others are practice. */
export const studHoles = {
  source: commonPractice,
  /** A hole wider than its stud by this or more lets the ring shift. */
  maxPlayMm: 1,
  rows: [
    { stud: "M3", studMm: 3, holeMm: 3.2 },
    { stud: "M4", studMm: 4, holeMm: 4.3 },
    { stud: "M5", studMm: 5, holeMm: 5.3 },
    { stud: "M6", studMm: 6, holeMm: 6.4 },
    { stud: "M8", studMm: 8, holeMm: 8.4 },
    { stud: "M10", studMm: 10, holeMm: 10.5 },
  ],
} as const;

/** What makes each kind of joint; what it takes and stands is in `joints.ts`. */
export const jointTools = {
  source: commonPractice,
  rows: {
    "crimped butt": "ratchet crimper for insulated terminals",
    "sealed butt": "ratchet crimper for heat-shrink terminals, hot air",
    "solder sleeve": "hot air",
    "soldered and sleeved": "soldering iron, hot air",
    "crimped ring": "ratchet crimper for insulated terminals",
    "crimped fork": "ratchet crimper for insulated terminals",
    "push-on tab": "ratchet crimper for insulated terminals",
    "screw terminal": "ferrule crimper, screwdriver",
    "lever clamp": "fingers",
    "pin plug": "pin crimper",
    tap: "pliers",
    "twist-on cap": "fingers",
    "twisted and taped": "fingers",
  },
  /** Above this area a bare lug is pressed with the die of its size and sleeved. */
  lugAboveMm2: 6,
  lug: "lug press with the die of the size, hot air",
} as const;

/** Conductors together in one butt: more is no joint any more. */
export const inOneButt = { source: commonPractice, most: 8 } as const;

/** A tap clips onto a through conductor: what it takes there, and what it takes off; what it carries is in `joints.ts`. */
export const tapLimits = {
  source: commonPractice,
  rows: [
    { colour: "red", minThroughMm2: 0.5, maxThroughMm2: 1.5, minTapMm2: 0.5, maxTapMm2: 1.5 },
    { colour: "blue", minThroughMm2: 1, maxThroughMm2: 2.5, minTapMm2: 0.75, maxTapMm2: 2.5 },
  ],
} as const;

export interface SleeveRow {
  readonly suppliedMm: number;
  readonly recoveredMm: number;
}

/** Heat-shrink sleeve, inside diameters as supplied and fully shrunk. */
export const sleeves = {
  source: {
    title: "sizes commonly sold; 2:1 after SAE AMS-DTL-23053/5",
    place: "recalled",
    status: "memory",
  },
  /** Supplied must exceed the thickest thing it slips over, recovered stay under the thinnest it grips. */
  margin: { slipOver: 1.1, grip: 0.9, source: commonPractice },
  plain: [
    { suppliedMm: 1.6, recoveredMm: 0.8 },
    { suppliedMm: 2.4, recoveredMm: 1.2 },
    { suppliedMm: 3.2, recoveredMm: 1.6 },
    { suppliedMm: 4.8, recoveredMm: 2.4 },
    { suppliedMm: 6.4, recoveredMm: 3.2 },
    { suppliedMm: 9.5, recoveredMm: 4.75 },
    { suppliedMm: 12.7, recoveredMm: 6.35 },
    { suppliedMm: 19.1, recoveredMm: 9.55 },
    { suppliedMm: 25.4, recoveredMm: 12.7 },
  ],
  lined: [
    { suppliedMm: 3, recoveredMm: 1 },
    { suppliedMm: 6, recoveredMm: 2 },
    { suppliedMm: 9, recoveredMm: 3 },
    { suppliedMm: 12, recoveredMm: 4 },
    { suppliedMm: 18, recoveredMm: 6 },
    { suppliedMm: 24, recoveredMm: 8 },
    { suppliedMm: 39, recoveredMm: 13 },
  ],
  /** Onto the insulation at each end, in diameters and at least so much. */
  overlap: { perDiameter: 2, minMm: 10, lengthwiseShrink: 0.1, source: commonPractice },
} as const;
