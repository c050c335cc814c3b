import type { SizeCandidate, SizingGroup, SizingProblem } from "../../../src/core/circuit/sizes/problem.js";

/** Seeded numbers in 0…1 (mulberry32), so that a failing problem can be made again. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const areas = [0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95];

/** Sizes as in the metric series, with prices that wander a little. */
export function candidates(random: () => number, count: number): SizeCandidate[] {
  return areas.slice(0, count).map((areaMm2) => ({
    size: { series: "metric", key: `${areaMm2} mm²`, areaMm2 },
    ohmPerM: 0.0195 / areaMm2,
    costPerM: (0.4 + 0.6 * areaMm2) * (0.9 + 0.3 * random()),
    massKgPerM: 0.004 + 0.0105 * areaMm2,
    ampacityA: 12 * areaMm2 ** 0.7,
  }));
}

export function group(
  id: string,
  lengthM: number,
  currentA: number,
  sizes: readonly SizeCandidate[],
): SizingGroup {
  return { id, run: id, lengthM, cores: 2, candidates: sizes, currentA, maxProtectionShare: 1.5 };
}

/**
 * A branching circuit: feed, ways, and on each way a trunk that carries several circuits or a chain of gear. `shape` mixes in what is
 * awkward: cables shared by circuits with different currents, and returns that cross between ways.
 */
export function branching(
  seed: number,
  gearCount: number,
  sizeCount: number,
  shape: "tree" | "shared cables" | "crossing",
): SizingProblem {
  const random = seeded(seed);
  const groups: SizingGroup[] = [];
  const limits: SizingProblem["limits"][number][] = [];
  const add = (lengthM: number) => {
    const sizes = candidates(random, sizeCount);
    const fixed = random() < 0.1 ? Math.floor(random() * sizeCount) : undefined;
    groups.push({
      ...group(`g${groups.length}`, lengthM, random() * 8, sizes),
      ...(fixed === undefined ? {} : { fixed }),
    });
    return groups.length - 1;
  };
  const feed = add(1 + random());
  // no boat's feed carries more, however much gear is switched in turn
  const feedA = Math.min(gearCount, 80) * 0.8;
  let made = 0;
  let before: { group: number; ampereM: number }[] = [];
  while (made < gearCount) {
    const inThisWay = Math.min(gearCount - made, 1 + Math.floor(random() * 4));
    const trunk = add(1 + 3 * random());
    const trunkM = groups[trunk]?.lengthM ?? 1;
    const spread = shape !== "tree";
    let path = [{ group: feed, ampereM: feedA * 2 * (groups[feed]?.lengthM ?? 1) }];
    const sharedA = inThisWay * 1.1;
    if (!spread) path.push({ group: trunk, ampereM: 2 * trunkM * sharedA });
    if (shape === "crossing" && before.length > 0 && random() < 0.7) path.push(...before);
    const chain = random() < 0.5;
    before = [];
    for (let piece = 0; piece < inThisWay; piece += 1) {
      const own = add(0.3 + 2 * random());
      const ownTerm = { group: own, ampereM: 2 * (groups[own]?.lengthM ?? 1) * (0.2 + random()) };
      const terms = [...path, ownTerm];
      if (spread) terms.push({ group: trunk, ampereM: trunkM * (sharedA + 0.2 + random()) });
      if (chain) path = [...path, ownTerm];
      if (shape === "crossing") before = [{ group: own, ampereM: 0.1 + random() }];
      const share = random() < 0.5 ? 0.03 : 0.1;
      limits.push({
        gear: `gear ${made}`,
        maxDropV: 12 * share * (0.7 + 2 * random()),
        nominalV: 12,
        fixedDropV: 0.02 + 0.1 * random(),
        terms,
      });
      made += 1;
    }
  }
  return { aim: seed % 2 === 0 ? "cheapest" : "lightest", groups, limits };
}
