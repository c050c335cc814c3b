import type { Sourced } from "./source.js";

/** Shortest and longest time [s] until a device opens, at a share of its rating. Undefined `maxS`: it need not open. */
export interface OperatingTimes extends Sourced {
  readonly rows: readonly { readonly share: number; readonly minS: number; readonly maxS?: number }[];
}

/** Blade fuses, ratings of 3 A and above. Between rows times are interpolated on logarithms; beyond the last row the last time holds. */
export const bladeFuseTimes = {
  source: { title: "ISO 8820-3", place: "operating times, type C, recalled", status: "memory" },
  rows: [
    { share: 1.1, minS: 360_000 },
    { share: 1.35, minS: 0.75, maxS: 600 },
    { share: 1.6, minS: 0.25, maxS: 50 },
    { share: 2, minS: 0.15, maxS: 5 },
    { share: 3.5, minS: 0.04, maxS: 0.5 },
    { share: 6, minS: 0.02, maxS: 0.1 },
  ],
} as const satisfies OperatingTimes;

/** Bolted fuse links. */
export const boltedFuseTimes = {
  source: { title: "ISO 8820-5", place: "operating times, recalled", status: "memory" },
  rows: [
    { share: 1, minS: 360_000 },
    { share: 1.35, minS: 120, maxS: 1800 },
    { share: 2, minS: 1, maxS: 15 },
    { share: 3.5, minS: 0.3, maxS: 5 },
    { share: 6, minS: 0.1, maxS: 1 },
  ],
} as const satisfies OperatingTimes;

/** Fast cartridge fuses. The rows at 1.35 and 2 times follow UL 248-14 for ratings to 60 A; the rest is usual for the kind. */
export const cartridgeFuseTimes = {
  source: { title: "common practice, no source", place: "-; long times as in UL 248-14", status: "practice" },
  rows: [
    { share: 1.1, minS: 14_400 },
    { share: 1.35, minS: 10, maxS: 3600 },
    { share: 2, minS: 1, maxS: 240 },
    { share: 3.5, minS: 0.1, maxS: 10 },
    { share: 6, minS: 0.01, maxS: 1 },
    { share: 10, minS: 0.002, maxS: 0.05 },
  ],
} as const satisfies OperatingTimes;

/** Thermal breakers. */
export const breakerTimes = {
  source: { title: "common practice, no source", place: "-", status: "practice" },
  rows: [
    { share: 1, minS: 360_000 },
    { share: 1.35, minS: 30, maxS: 3600 },
    { share: 2, minS: 5, maxS: 60 },
    { share: 3.5, minS: 1, maxS: 15 },
    { share: 6, minS: 0.3, maxS: 5 },
    { share: 10, minS: 0.1, maxS: 2 },
  ],
} as const satisfies OperatingTimes;
