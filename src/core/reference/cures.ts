import { cure } from "./sealants.js";
import { commonPractice, type Sourced } from "./source.js";

/** What must rest before the next thing may be done to it. */
const cureKeys = ["sealant before wet", "edge sealer", "shrunk sleeve cold"] as const;
export type CureKey = (typeof cureKeys)[number];

/** Hours at usual air; a sealant's own label comes first. */
export const cureHours = {
  source: commonPractice,
  "sealant before wet": 24,
  "edge sealer": 12,
  "shrunk sleeve cold": 0.25,
} as const satisfies Sourced & Readonly<Record<CureKey, number>>;

/** Colder than this a sealant takes so many times as long (`sealants.ts` says from where). */
export const coldCure = {
  source: cure.coldOrDry.source,
  belowC: cure.coldBelowC,
  times: cure.coldOrDry.times,
} as const;
