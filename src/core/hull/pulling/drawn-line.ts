import { type Point, straightM } from "../vector.js";

/** A place a line can be led through: an opening, a hole, a gap under a frame. It joins the spaces it opens into. */
export interface Passage {
  readonly name: string;
  readonly at: Point;
  readonly spaces: readonly string[];
  /** Clear diameter; undefined: as large as needed [m]. */
  readonly clearM?: number;
}

export interface LinePath {
  readonly passages: readonly string[];
  readonly lengthM: number;
}

/**
 * Shortest way for a drawn line from one passage to another, straight from passage to passage within a space (Dijkstra).
 * @returns Undefined where no chain of spaces joins the two.
 * @throws RangeError if an end is not among the passages.
 */
export function drawnLine(passages: readonly Passage[], from: string, to: string): LinePath | undefined {
  const start = passages.find(({ name }) => name === from);
  if (!start || !passages.some(({ name }) => name === to))
    throw new RangeError(
      `ends must be among ${passages.map(({ name }) => name).join(", ")}, got ${from} and ${to}`,
    );
  const best = new Map<string, { lengthM: number; by?: string }>([[from, { lengthM: 0 }]]);
  const open = new Set([from]);
  while (open.size > 0) {
    const name = [...open].reduce((a, b) =>
      (best.get(b)?.lengthM ?? 0) < (best.get(a)?.lengthM ?? 0) ? b : a,
    );
    open.delete(name);
    if (name === to) break;
    const here = passages.find((one) => one.name === name);
    if (!here) continue;
    for (const next of passages) {
      if (next === here || !next.spaces.some((space) => here.spaces.includes(space))) continue;
      const lengthM = (best.get(name)?.lengthM ?? 0) + straightM(here.at, next.at);
      if (lengthM >= (best.get(next.name)?.lengthM ?? Number.POSITIVE_INFINITY)) continue;
      best.set(next.name, { lengthM, by: name });
      open.add(next.name);
    }
  }
  const end = best.get(to);
  if (!end) return undefined;
  const chain: string[] = [];
  for (let name: string | undefined = to; name !== undefined; name = best.get(name)?.by) chain.unshift(name);
  return { passages: chain, lengthM: end.lengthM };
}
