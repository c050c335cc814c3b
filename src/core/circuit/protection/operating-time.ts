import type { DeviceKind } from "./devices.js";

/**
 * Least and greatest time until a device opens, from the rows of its kind.
 *
 * Between two rows both limits are straight lines on log time against log current. At and below the first row it never opens.
 * Where a row sets no greatest time, none is known until the next row that does. Past the last row a melting wire has
 * no time to lose heat, so I²t stays what it is in that row (arcing, short at 12 V and 24 V, is left out); a mechanism has no known time there.
 */

type Row = DeviceKind["times"]["rows"][number];
type Logs = DeviceKind["logs"][number];

function interpolated(share: number, from: Logs, to: Logs, limit: "minS" | "maxS"): number {
  const along = (Math.log(share) - from.share) / (to.share - from.share);
  return Math.exp(from[limit] + along * (to[limit] - from[limit]));
}

function checkCurrent(currentA: number, ratingA: number): number {
  if (!(ratingA > 0)) throw new RangeError(`rating must be > 0 A, got ${ratingA}`);
  if (!(currentA >= 0)) throw new RangeError(`current must be ≥ 0 A, got ${currentA}`);
  return currentA / ratingA;
}

/** 135 % of 3 A is 4.05 A although 4.05 / 3 is a hair under 1.35 in floating point. */
function same(share: number, rowShare: number): boolean {
  return Math.abs(share - rowShare) <= 1e-12 * rowShare;
}

function timeS(kind: DeviceKind, share: number, limit: "minS" | "maxS"): number | undefined {
  const { rows } = kind.times;
  const first = rows[0];
  if (first === undefined) return undefined;
  if (share <= first.share || same(share, first.share)) return Number.POSITIVE_INFINITY;
  let low = first;
  // by index: asked for thousands of times for a boat
  for (let at = 0; at < rows.length; at += 1) {
    const row = rows[at] as Row;
    if (same(share, row.share)) return row[limit] ?? Number.POSITIVE_INFINITY;
    if (row.share > share) {
      // no greatest time at the lower row: between the two it need not open at all
      if (low[limit] === undefined || row[limit] === undefined) return Number.POSITIVE_INFINITY;
      return interpolated(share, kind.logs[at - 1] as Logs, kind.logs[at] as Logs, limit);
    }
    low = row;
  }
  const lastS = low[limit];
  return kind.melts && lastS !== undefined ? lastS * (low.share / share) ** 2 : undefined;
}

/**
 * Time the device surely stays closed at a current [s]; Infinity where it never opens; undefined where no table says.
 * @throws RangeError if the rating is not above zero or the current is negative.
 */
export function leastOperatingS(kind: DeviceKind, ratingA: number, currentA: number): number | undefined {
  return timeS(kind, checkCurrent(currentA, ratingA), "minS");
}

/**
 * Time within which the device has surely opened [s]; Infinity where it need not open; undefined where no table says.
 * @throws RangeError if the rating is not above zero or the current is negative.
 */
export function greatestOperatingS(kind: DeviceKind, ratingA: number, currentA: number): number | undefined {
  return timeS(kind, checkCurrent(currentA, ratingA), "maxS");
}
