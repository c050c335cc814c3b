import { holeDistances } from "../reference/drilling.js";
import type { Source } from "../reference/source.js";

/** Where the least distances of holes come from, each source once. */
export const holeDistanceSources: readonly Source[] = [
  ...new Map(Object.values(holeDistances).map(({ source }) => [source.title, source])).values(),
];
