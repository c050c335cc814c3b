import { commonPractice } from "./source.js";

/** What is bought once for a boat: a tube where anything is bedded in the wet, a roll where a joint could want it. */
export const consumables = {
  source: commonPractice,
  sealant: "sealant, tube",
  tape: "self-fusing tape, roll",
} as const;

/** The end of wire that has lain about is cut back to bright copper before anything is measured from it. */
export const oldWireEnd = {
  source: commonPractice,
  trimMm: 25,
} as const;
