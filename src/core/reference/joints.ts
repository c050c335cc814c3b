import { commonPractice, type Source } from "./source.js";

/** What the trade knows of one kind of joint. */
export interface JointFacts {
  /** Usual resistance of a sound one on a 1 mm² conductor [Ω]; it falls with the copper area, but never below `leastOhm`. */
  readonly ohmAt1Mm2: number;
  readonly leastOhm: number;
  /** Keeps water out of the copper. */
  readonly sealed: boolean;
  /** Surroundings it is fit for. */
  readonly fitFor: readonly ("dry" | "splash" | "wet" | "bilge" | "engine space")[];
  /** Never right on a boat, whatever the place. */
  readonly never: boolean;
  /** Copper it takes [mm²]. */
  readonly minAreaMm2: number;
  readonly maxAreaMm2: number;
  /** Most current it should carry [A]; undefined: as the conductor. */
  readonly maxA?: number;
}

const dryPlaces = ["dry"] as const;
const drip = ["dry", "splash", "engine space"] as const;
const anywhere = ["dry", "splash", "wet", "bilge", "engine space"] as const;

/**
 * By the kinds of `plan/model/common.ts`. No published millivolt table by size was found: the resistances are what
 * the trade sees on sound joints, none of them a limit. A crimp should have no more resistance than the same length of its conductor.
 */
export const joints = {
  "crimped butt": {
    ohmAt1Mm2: 0.0006,
    leastOhm: 0.00005,
    sealed: false,
    fitFor: drip,
    never: false,
    minAreaMm2: 0.3,
    maxAreaMm2: 10,
  },
  "sealed butt": {
    ohmAt1Mm2: 0.0006,
    leastOhm: 0.00005,
    sealed: true,
    fitFor: anywhere,
    never: false,
    minAreaMm2: 0.3,
    maxAreaMm2: 10,
  },
  "solder sleeve": {
    ohmAt1Mm2: 0.0005,
    leastOhm: 0.0001,
    sealed: true,
    fitFor: ["dry", "splash", "wet"],
    never: false,
    minAreaMm2: 0.2,
    maxAreaMm2: 6,
    maxA: 20,
  },
  "soldered and sleeved": {
    ohmAt1Mm2: 0.0004,
    leastOhm: 0.00005,
    sealed: true,
    fitFor: ["dry", "splash", "wet"],
    never: false,
    minAreaMm2: 0.1,
    maxAreaMm2: 6,
  },
  "crimped ring": {
    ohmAt1Mm2: 0.0005,
    leastOhm: 0.00005,
    sealed: false,
    fitFor: drip,
    never: false,
    minAreaMm2: 0.3,
    maxAreaMm2: 120,
  },
  "crimped fork": {
    ohmAt1Mm2: 0.0007,
    leastOhm: 0.0001,
    sealed: false,
    fitFor: drip,
    never: false,
    minAreaMm2: 0.3,
    maxAreaMm2: 6,
  },
  "push-on tab": {
    ohmAt1Mm2: 0.0015,
    leastOhm: 0.0005,
    sealed: false,
    fitFor: ["dry", "splash"],
    never: false,
    minAreaMm2: 0.3,
    maxAreaMm2: 6,
    maxA: 20,
  },
  "screw terminal": {
    ohmAt1Mm2: 0.0012,
    leastOhm: 0.0002,
    sealed: false,
    fitFor: ["dry", "splash"],
    never: false,
    minAreaMm2: 0.2,
    maxAreaMm2: 16,
  },
  "lever clamp": {
    ohmAt1Mm2: 0.0015,
    leastOhm: 0.0005,
    sealed: false,
    fitFor: dryPlaces,
    never: false,
    minAreaMm2: 0.14,
    maxAreaMm2: 6,
    maxA: 32,
  },
  "pin plug": {
    ohmAt1Mm2: 0.005,
    leastOhm: 0.002,
    sealed: false,
    fitFor: ["dry", "splash"],
    never: false,
    minAreaMm2: 0.2,
    maxAreaMm2: 6,
    maxA: 15,
  },
  tap: {
    ohmAt1Mm2: 0.004,
    leastOhm: 0.001,
    sealed: false,
    fitFor: dryPlaces,
    never: false,
    minAreaMm2: 0.5,
    maxAreaMm2: 4,
    maxA: 10,
  },
  "twist-on cap": {
    ohmAt1Mm2: 0.005,
    leastOhm: 0.001,
    sealed: false,
    fitFor: [],
    never: true,
    minAreaMm2: 0.5,
    maxAreaMm2: 6,
  },
  "twisted and taped": {
    ohmAt1Mm2: 0.01,
    leastOhm: 0.002,
    sealed: false,
    fitFor: [],
    never: true,
    minAreaMm2: 0.1,
    maxAreaMm2: 120,
  },
} as const satisfies Readonly<Record<string, JointFacts>>;

export const jointsSource: Source = commonPractice;
