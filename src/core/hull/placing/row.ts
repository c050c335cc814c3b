import type { HullProblem } from "../problem.js";

/** A stretch along the edge in which nothing may be drilled [m]. */
export interface Stretch {
  readonly name: string;
  readonly fromM: number;
  readonly toM: number;
}

/** Several alike, evenly along an edge. */
export interface Row {
  readonly name: string;
  readonly count: number;
  readonly fromM: number;
  readonly toM: number;
  /** Kept free at both ends [m]. */
  readonly endMarginM: number;
  /** Half the width of one [m]: so far it stays from a stretch not to drill. */
  readonly halfWidthM: number;
  /** Least distance between centres [m]. */
  readonly leastApartM: number;
}

export interface RowPlaces {
  /** Centres along the edge [m], rising. */
  readonly alongM: readonly number[];
  /** How far each was moved from its even place by a stretch [m]. */
  readonly movedM: readonly number[];
  readonly problems: readonly HullProblem[];
}

/**
 * Places of a row: even between the margins (one alone in the middle), each that falls on a stretch not to drill moved to its nearer
 * free side, then pushed apart where two came too close.
 * @throws RangeError if count is not a whole number ≥ 1, the row does not run forward, or a length is negative.
 */
export function rowPlaces(row: Row, stretches: readonly Stretch[]): RowPlaces {
  if (!(Number.isInteger(row.count) && row.count >= 1))
    throw new RangeError(`a row needs a count ≥ 1, got ${row.count}`);
  if (!(row.toM > row.fromM))
    throw new RangeError(`a row must run forward, got ${row.fromM} to ${row.toM} m`);
  for (const value of [row.endMarginM, row.halfWidthM, row.leastApartM])
    if (!(value >= 0)) throw new RangeError(`margins and widths must be ≥ 0 m, got ${value}`);
  const [first, last] = [row.fromM + row.endMarginM, row.toM - row.endMarginM];
  const problem = (figure: number, limit: number): HullProblem => ({
    problem: "row does not fit",
    at: row.name,
    figure,
    limit,
    unit: "m",
  });
  const room = last - first;
  if (!(room >= 0))
    return { alongM: [], movedM: [], problems: [problem(2 * row.endMarginM, row.toM - row.fromM)] };
  const even = Array.from({ length: row.count }, (_, i) =>
    row.count === 1 ? (first + last) / 2 : first + (room * i) / (row.count - 1),
  );
  const free = freeStretches(first, last, row.halfWidthM, stretches);
  if (free.length === 0) return { alongM: [], movedM: [], problems: [problem(0, row.count)] };
  const places = spread(even, free, row.leastApartM);
  if (places === undefined)
    return {
      alongM: even,
      movedM: even.map(() => 0),
      problems: [problem(room, (row.count - 1) * row.leastApartM)],
    };
  return { alongM: places, movedM: places.map((place, i) => place - (even[i] ?? place)), problems: [] };
}

/** What is left between the ends when each stretch, grown by half a width, is taken out. */
function freeStretches(
  first: number,
  last: number,
  halfWidthM: number,
  stretches: readonly Stretch[],
): [number, number][] {
  const taken = stretches
    .map((one): [number, number] => [
      Math.min(one.fromM, one.toM) - halfWidthM,
      Math.max(one.fromM, one.toM) + halfWidthM,
    ])
    .sort((a, b) => a[0] - b[0]);
  const free: [number, number][] = [];
  let start = first;
  for (const [from, to] of taken) {
    if (from >= start) free.push([start, Math.min(from, last)]);
    start = Math.max(start, to);
    if (start > last) break;
  }
  if (start <= last) free.push([start, last]);
  return free.filter(([from, to]) => to >= from);
}

/** Nearest free places that keep their order and distance: forward pass, then, if it ran out of room, from the far end back. */
function spread(
  even: readonly number[],
  free: readonly (readonly [number, number])[],
  apart: number,
): number[] | undefined {
  const nearest = (wanted: number, least: number, most: number): number | undefined => {
    let best: number | undefined;
    for (const [from, to] of free) {
      const [low, high] = [Math.max(from, least), Math.min(to, most)];
      if (low > high + 1e-12) continue;
      const place = Math.min(Math.max(wanted, low), Math.max(low, high));
      if (best === undefined || Math.abs(place - wanted) < Math.abs(best - wanted)) best = place;
    }
    return best;
  };
  // how far right each may go and still leave room for those after it
  const latest: number[] = [];
  let most = free.at(-1)?.[1] ?? Number.NEGATIVE_INFINITY;
  for (let i = even.length - 1; i >= 0; i--) {
    const place = nearest(most, Number.NEGATIVE_INFINITY, most);
    if (place === undefined) return undefined;
    latest[i] = place;
    most = place - apart;
  }
  const places: number[] = [];
  for (const [i, wanted] of even.entries()) {
    const place = nearest(wanted, (places.at(-1) ?? Number.NEGATIVE_INFINITY) + apart, latest[i] ?? wanted);
    if (place === undefined) return undefined;
    places.push(place);
  }
  return places;
}
