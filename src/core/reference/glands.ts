import { commonPractice, type Source } from "./source.js";

/** A cable gland's thread. `pitchMm` of the PG rows is 25.4 over the threads per inch. */
export interface GlandThread {
  readonly size: string;
  readonly threadOuterMm: number;
  readonly pitchMm: number;
}

export const metricGlandThreads = {
  source: {
    title: "EN 60423 (thread list also in EN 50262)",
    place: "read as quoted in a maker's technical annex",
    status: "published",
  },
  rows: [
    { size: "M6", threadOuterMm: 6, pitchMm: 0.75 },
    { size: "M8", threadOuterMm: 8, pitchMm: 1 },
    { size: "M10", threadOuterMm: 10, pitchMm: 1 },
    { size: "M12", threadOuterMm: 12, pitchMm: 1.5 },
    { size: "M16", threadOuterMm: 16, pitchMm: 1.5 },
    { size: "M20", threadOuterMm: 20, pitchMm: 1.5 },
    { size: "M25", threadOuterMm: 25, pitchMm: 1.5 },
    { size: "M32", threadOuterMm: 32, pitchMm: 1.5 },
    { size: "M40", threadOuterMm: 40, pitchMm: 1.5 },
    { size: "M50", threadOuterMm: 50, pitchMm: 1.5 },
    { size: "M63", threadOuterMm: 63, pitchMm: 1.5 },
    { size: "M75", threadOuterMm: 75, pitchMm: 1.5 },
  ],
} as const satisfies { source: Source; rows: readonly GlandThread[] };

/** PG7 is not M16, whatever shop pages say: it is 12.5 mm over the thread. Thread angle 80°. */
export const pgGlandThreads = {
  source: {
    title: "DIN 40430, steel conduit thread",
    place: "read in an encyclopedia's table; another copy prints 15.5 mm for PG9",
    status: "published",
  },
  rows: [
    { size: "PG7", threadOuterMm: 12.5, pitchMm: 1.27, threadsPerInch: 20, coreMm: 11.28 },
    { size: "PG9", threadOuterMm: 15.2, pitchMm: 1.411, threadsPerInch: 18, coreMm: 13.86 },
    { size: "PG11", threadOuterMm: 18.6, pitchMm: 1.411, threadsPerInch: 18, coreMm: 17.26 },
    { size: "PG13.5", threadOuterMm: 20.4, pitchMm: 1.411, threadsPerInch: 18, coreMm: 19.06 },
    { size: "PG16", threadOuterMm: 22.5, pitchMm: 1.411, threadsPerInch: 18, coreMm: 21.16 },
    { size: "PG21", threadOuterMm: 28.3, pitchMm: 1.5875, threadsPerInch: 16, coreMm: 26.78 },
    { size: "PG29", threadOuterMm: 37, pitchMm: 1.5875, threadsPerInch: 16, coreMm: 35.48 },
    { size: "PG36", threadOuterMm: 47, pitchMm: 1.5875, threadsPerInch: 16, coreMm: 45.48 },
  ],
} as const satisfies {
  source: Source;
  rows: readonly (GlandThread & { threadsPerInch: number; coreMm: number })[];
};

/** What a gland of one size takes and needs. All mm; `spannerMm` is the width across flats. */
export interface GlandFit {
  readonly series: "metric" | "pg";
  readonly size: string;
  readonly threadOuterMm: number;
  readonly holeMm: number;
  readonly minCableMm: number;
  readonly maxCableMm: number;
  readonly spannerMm: number;
  /** Thread that reaches through the wall, lock nut included. */
  readonly threadLengthMm: number;
  /** How far body and dome nut stand out of the wall. */
  readonly standsOutMm: number;
}

const outerOf = (rows: readonly GlandThread[]): ReadonlyMap<string, number> =>
  new Map(rows.map(({ size, threadOuterMm }) => [size, threadOuterMm]));
const threadOuterMm = { metric: outerOf(metricGlandThreads.rows), pg: outerOf(pgGlandThreads.rows) };

/**
 * Holes, clamping ranges and spanners. EN 62444 fixes none of them: they differ between makers, and the gland bought
 * goes before the table. Rows rise in size within a series.
 */
export const glandFits = {
  source: commonPractice,
  columns: {
    metricThread: metricGlandThreads.source,
    pgThread: pgGlandThreads.source,
    pgCable: pgGlandThreads.source,
    m12Hole: {
      title: "panel-punch maker's note on EN 62444",
      place: "M12: hole and cable",
      status: "published",
    },
    spanner: commonPractice,
    threadLength: commonPractice,
  },
  lockNutMm: 5,
  rows: (
    [
      ["metric", "M12", 12.5, 3, 6, 15, 8, 20],
      ["metric", "M16", 16.5, 5, 10, 19, 9, 22],
      ["metric", "M20", 20.5, 6, 13, 24, 10, 25],
      ["metric", "M25", 25.5, 9, 17, 29, 11, 29],
      ["metric", "M32", 32.5, 13, 21, 36, 12, 34],
      ["pg", "PG7", 12.8, 3, 6.5, 15, 8, 20],
      ["pg", "PG9", 15.5, 4, 8, 19, 8, 22],
      ["pg", "PG11", 19, 5, 10, 22, 8, 24],
      ["pg", "PG13.5", 21, 6, 12, 24, 9, 26],
      ["pg", "PG16", 23, 10, 14, 27, 10, 28],
      ["pg", "PG21", 28.8, 13, 18, 33, 11, 32],
      ["pg", "PG29", 37.5, 18, 25, 42, 12, 38],
    ] as const
  ).map(
    ([series, size, holeMm, minCableMm, maxCableMm, spannerMm, threadLengthMm, standsOutMm]): GlandFit => ({
      series,
      size,
      threadOuterMm: threadOuterMm[series].get(size) ?? Number.NaN,
      holeMm,
      minCableMm,
      maxCableMm,
      spannerMm,
      threadLengthMm,
      standsOutMm,
    }),
  ),
} as const satisfies {
  source: Source;
  columns: Readonly<Record<string, Source>>;
  lockNutMm: number;
  rows: readonly GlandFit[];
};

/** Twin cable flatter than this share of its width leaks past a round seal. */
export const roundSeal = { source: commonPractice, leastFlatShare: 0.9 } as const;

/** Corners of a hexagon over its flats: 2/√3. */
export const hexagon = {
  source: { title: "geometry of the regular hexagon", place: "2/√3", status: "computed" },
  cornersPerFlats: 2 / Math.sqrt(3),
} as const;
