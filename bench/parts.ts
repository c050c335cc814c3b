/**
 * Times of boxes, cut list and packs. `partsBench()` returns rows to print; nothing here decides pass or fail.
 * All boxes, wires and prices are invented.
 */
import { readFileSync } from "node:fs";
import { arrange } from "../src/core/box/arrange.js";
import { type Entry, usualRoom } from "../src/core/box/entry-rules.js";
import { type BoxBody, facesOf } from "../src/core/box/face.js";
import { nutCornersMm } from "../src/core/box/gland.js";
import { workOut } from "../src/core/figures.js";
import { workOutLayout } from "../src/core/layout-figures.js";
import { solveCuts } from "../src/core/parts/cuts/solve-cuts.js";
import type { CutRequest } from "../src/core/parts/cuts/types.js";
import { cheapestPacks } from "../src/core/parts/packs.js";
import { readPlan } from "../src/core/plan/read.js";

export interface PartsRow {
  readonly what: string;
  readonly medianMs: number;
  readonly aimMs?: number;
  /** Cut lists: proven, or the gap between the price found and the bound. */
  readonly proof?: string;
}

function numbers(seed: number): (least: number, most: number) => number {
  let state = seed * 7919 + 1;
  return (least, most) => {
    state = (state * 48_271) % 2_147_483_647;
    return least + Math.floor((state / 2_147_483_647) * (most - least + 1));
  };
}

function medianMs(runs: number, work: () => void): number {
  work();
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return times[Math.floor(runs / 2)] ?? 0;
}

function pieces(count: number, leastMm: number, mostMm: number, stepMm: number): CutRequest["pieces"] {
  const whole = numbers(count + leastMm);
  return Array.from({ length: count }, (_, k) => ({
    id: `piece ${k + 1}`,
    lengthMm: whole(leastMm / stepMm, mostMm / stepMm) * stepMm,
  }));
}

/** Offcuts on hand and two spools in the shop beside what is asked. */
const shop = (spoolMm: number, price: number): CutRequest["stock"] => [
  { id: "offcut 7.3 m", lengthMm: 7300, source: "offcut", count: 3 },
  { id: "offcut 2.9 m", lengthMm: 2900, source: "offcut", count: 2 },
  { id: "long spool", lengthMm: spoolMm, source: "new", count: "any", priceMinor: price },
  {
    id: "short spool",
    lengthMm: spoolMm / 2,
    source: "new",
    count: "any",
    priceMinor: Math.round(price * 0.55),
  },
];

const cutRequests: readonly (readonly [string, CutRequest])[] = [
  [
    "300 pieces over 20 spools on hand",
    {
      kind: "16 AWG, 2 cores",
      pieces: pieces(300, 300, 6000, 10),
      stock: Array.from({ length: 20 }, (_, k) => ({
        id: `spool ${k + 1}`,
        lengthMm: 50_000 + 730 * k,
        source: "spool",
        count: 1,
      })),
    },
  ],
  [
    "300 pieces, spools of 60 m and 30 m to buy",
    { kind: "a", pieces: pieces(300, 1500, 6000, 10), stock: shop(60_000, 6000) },
  ],
  [
    "300 long pieces, spools of 10 m and 5 m to buy",
    { kind: "b", pieces: pieces(300, 2000, 6000, 10), stock: shop(10_000, 1000) },
  ],
];

function fortyEntries(): { faces: ReturnType<typeof facesOf>; entries: Entry[]; body: BoxBody } {
  const body: BoxBody = {
    widthMm: 300,
    heightMm: 220,
    depthMm: 90,
    wallMm: 3,
    material: "abs",
    mounted: "wall",
    bossMm: 10,
  };
  const entries = Array.from({ length: 40 }, (_, k): Entry => {
    const [holeMm, flatsMm] = k % 4 === 0 ? [16.5, 19] : [12.5, 15];
    return { id: `entry ${k + 1}`, holeMm, acrossMm: nutCornersMm(flatsMm), spanner: true };
  });
  return { faces: facesOf(body), entries, body };
}

export function partsBench(): PartsRow[] {
  const { faces, entries, body } = fortyEntries();
  const rows: PartsRow[] = [
    {
      what: "box of 40 entries laid out",
      medianMs: medianMs(5, () => {
        arrange(faces, entries, body, usualRoom);
      }),
      aimMs: 200,
    },
  ];
  for (const [what, request] of cutRequests) {
    let proof = "";
    const median = medianMs(3, () => {
      const answer = solveCuts(request);
      if (!answer.ok) throw new Error(`${what}: ${answer.problems.map((one) => one.problem).join(", ")}`);
      const { total, bound, proof: state } = answer.plan;
      const gap = total.priceMinor > 0 ? (100 * (total.priceMinor - bound.priceMinor)) / total.priceMinor : 0;
      proof = state === "proven" ? "proven" : `price within ${gap.toFixed(2)} %`;
    });
    rows.push({ what, medianMs: median, aimMs: 2000, proof });
  }
  const packs = [
    { id: "single", count: 1, priceMinor: 60 },
    { id: "10", count: 10, priceMinor: 400 },
    { id: "25", count: 25, priceMinor: 900 },
    { id: "100", count: 100, priceMinor: 3100 },
  ];
  rows.push({
    what: "cheapest packs for 977 pieces",
    medianMs: medianMs(9, () => {
      cheapestPacks(977, packs);
    }),
  });
  for (const plan of ["tender", "utility", "launch"]) {
    const read = readPlan(readFileSync(`examples/${plan}.yaml`, "utf8"));
    if (!read.ok) throw new Error(`${plan} does not read`);
    const worked = workOut(read.plan);
    for (let warm = 0; warm < 10; warm += 1) workOutLayout(worked);
    rows.push({
      what: `${plan}: boxes, ways, ends, cuts and parts together`,
      medianMs: medianMs(15, () => {
        workOutLayout(worked);
      }),
      ...(plan === "utility" ? { aimMs: 50 } : {}),
    });
  }
  return rows;
}
