import { commonPractice, type Sourced } from "./source.js";

/** Minutes a careful amateur takes, tools at hand; setting up is counted apart. */
export const workMinutes = {
  source: commonPractice,
  surveyBoat: 30,
  surveyRun: 6,
  markBox: 12,
  cutBoxHole: 6,
  deburrBox: 8,
  markGear: 10,
  drillGear: 8,
  edgeSeal: 5,
  cutWire: 4,
  drawWire: 8,
  drawWirePerM: 3,
  joinConductor: 4,
  solderConductor: 8,
  shrinkSleeve: 2,
  seal: 12,
  fitContent: 8,
  fitGrommet: 4,
  batteryOff: 5,
  coverPanel: 3,
  openBox: 4,
  mountBox: 20,
  mountPanel: 30,
  mountBattery: 20,
  mountSupply: 20,
  mountGear: 12,
  connectConductor: 4,
  support: 2,
  label: 2,
  reading: 2,
  seenFromOutside: 10,
  leakTest: 15,
  closeBox: 6,
  batteryOn: 15,
} as const satisfies Sourced;

/** What counts as the same place, hole and length: a tape, a drill and a cut are not finer [m]. */
export const setOutLimits = {
  source: commonPractice,
  samePlaceM: 0.003,
  sameHoleM: 0.00025,
  sameLengthM: 0.003,
} as const satisfies Sourced;
