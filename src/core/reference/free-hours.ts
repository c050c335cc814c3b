import { commonPractice, type Sourced } from "./source.js";

/** Hours in which someone with a job works on a boat at home, where they do not say: evenings and the weekend. Day 0 is Monday. */
export const usualFreeHours = {
  source: commonPractice,
  windows: [
    ...[0, 1, 2, 3, 4].map((day) => ({ day, fromH: 19, toH: 21.5 })),
    ...[5, 6].flatMap((day) => [
      { day, fromH: 9, toH: 12 },
      { day, fromH: 13.5, toH: 17.5 },
    ]),
  ],
} as const satisfies Sourced;
