/**
 * Times of the hull's figures, and the error of the tape against a much finer one, in the same run.
 * `marksBench()` returns rows to print; nothing here decides pass or fail.
 */
import { readFileSync } from "node:fs";
import { edgeOf, shareAlong, spotOnEdge, squareOff } from "../src/core/hull/faces/edge.js";
import { type CurvedFace, placeOn } from "../src/core/hull/faces/face.js";
import { geodesic } from "../src/core/hull/faces/geodesic.js";
import { patchThrough, type Spot } from "../src/core/hull/faces/patch.js";
import { stripFace } from "../src/core/hull/faces/strip.js";
import { loadOf, type Weight } from "../src/core/hull/float/equilibrium.js";
import { drowningTable, holeAfloat } from "../src/core/hull/float/holes-afloat.js";
import { restOf, rightingCurve } from "../src/core/hull/float/stability.js";
import { cutHull } from "../src/core/hull/float/stations.js";
import { formFrom } from "../src/core/hull/form/form.js";
import { startingLines } from "../src/core/hull/form/starting-form.js";
import type { Hole } from "../src/core/hull/marks/mark.js";
import { markSheet } from "../src/core/hull/marks/sheet.js";
import type { ReferencePoint, Tape } from "../src/core/hull/marks/tape.js";
import { clearances } from "../src/core/hull/placing/clearances.js";
import { workOutHull } from "../src/core/hull-figures.js";
import { completePlan } from "../src/core/plan/complete.js";
import { readPlan } from "../src/core/plan/read.js";

export interface BenchRow {
  readonly what: string;
  readonly medianMs: number;
  readonly aimMs?: number;
  readonly worstErrorM?: number;
}

const tape: Tape = {
  sigmaM: 0.0008,
  graduationM: 0.001,
  longestM: 8,
  lies: "on the surface",
  side: "inside",
};

/** Median over several runs after warm-up of the processor time used [ms]: other work on the machine does not count. */
function medianMs(runs: number, work: (run: number) => void): number {
  for (let i = 0; i < runs; i++) work(i);
  const times = Array.from({ length: runs }, (_, i) => {
    const start = process.cpuUsage();
    work(i);
    const used = process.cpuUsage(start);
    return (used.user + used.system) / 1000;
  });
  return times.sort((a, b) => a - b)[runs >> 1] ?? Number.NaN;
}

function cylinderStrip(): CurvedFace {
  const us = Array.from({ length: 25 }, (_, i) => i / 12);
  const at = (u: number, v: number) => [1.5 * Math.sin(u / 1.5), 1.5 * Math.cos(u / 1.5), 0.6 * v] as const;
  return {
    kind: "curved",
    patch: patchThrough(
      us,
      [0, 1],
      [0, 1].map((v) => us.map((u) => at(u, v))),
    ),
  };
}

/** A boat the size of the launch: 7 m, three faces a side, 40 holes. */
function launch() {
  const { form } = formFrom(startingLines("round tender", { lengthM: 7, beamM: 2.1, depthM: 0.8 }));
  if (!form) throw new Error("no form");
  return form;
}

function fitOut(face: CurvedFace, count: number): { holes: Hole[]; references: ReferencePoint[] } {
  const upper = edgeOf(face, "upper");
  const holes = Array.from({ length: count }, (_, i): Hole => {
    const share = shareAlong(face, upper, 0, 0.5 + (4 * i) / count);
    return { name: `hole ${i + 1}`, spot: squareOff(face, upper, share, 0.07 + 0.05 * (i % 3)) };
  });
  const spots: Spot[] = [
    [0.1, "upper"],
    [0.5, "upper"],
    [0.9, "upper"],
    [0.25, "lower"],
    [0.7, "lower"],
  ].map(([s, e]) => spotOnEdge(edgeOf(face, String(e)), Number(s)));
  return {
    holes,
    references: spots.map((spot, i) => ({
      name: `point ${i + 1}`,
      at: placeOn(face, spot),
      spot,
      sigmaM: 0.0005,
    })),
  };
}

export function marksBench(): BenchRow[] {
  const rows: BenchRow[] = [];
  const strip = cylinderStrip();
  for (const toleranceM of [1e-4, 2e-5, 2e-6, 2e-8]) {
    let worst = 0;
    const pairs = Array.from({ length: 60 }, (_, i): [Spot, Spot] => [
      [0.02 * i, (i % 7) / 7],
      [2 - 0.013 * i, ((3 * i) % 11) / 11],
    ]);
    for (const [a, b] of pairs) {
      const exact = Math.hypot(b[0] - a[0], 0.6 * (b[1] - a[1]));
      worst = Math.max(worst, Math.abs(geodesic(strip.patch, a, b, toleranceM).lengthM - exact));
    }
    const ms = medianMs(5, () => {
      for (const [a, b] of pairs) geodesic(strip.patch, a, b, toleranceM);
    });
    rows.push({
      what: `one tape on a cylinder, refined to ${toleranceM} m`,
      medianMs: ms / pairs.length,
      worstErrorM: worst,
    });
  }
  const form = launch();
  const round = stripFace(form, { lower: "bilge", upper: "sheer", fromM: 0.8, toM: 6 });
  let finer = 0;
  for (let i = 0; i < 20; i++) {
    const [a, b]: [Spot, Spot] = [
      [0.9 + 0.1 * i, 0.1 + 0.04 * i],
      [5.8 - 0.1 * i, 0.95 - 0.04 * i],
    ];
    finer = Math.max(
      finer,
      Math.abs(geodesic(round.patch, a, b).lengthM - geodesic(round.patch, a, b, 1e-11).lengthM),
    );
  }
  rows.push({
    what: "one tape on a round side, against one refined to 1e-11 m",
    medianMs: medianMs(21, () => geodesic(round.patch, [0.9, 0.1], [5.8, 0.9])),
    worstErrorM: finer,
  });

  const weights: Weight[] = [
    { name: "boat", massKg: 420, at: [3.2, 0, 0.45] },
    { name: "people", massKg: 300, at: [3, 0.1, 0.6] },
    { name: "battery", massKg: 60, at: [1.2, -0.2, 0.3] },
  ];
  rows.push({
    what: "whole boat: form, three faces, marks of 40 holes, clearances, float with levers to 60° and holes",
    aimMs: 150,
    medianMs: medianMs(9, () => wholeBoat(weights)),
  });
  rows.push(...fromPlan());
  return rows;
}

/** The same from a plan as it is written: `examples/launch.yaml`, everything. */
function fromPlan(): BenchRow[] {
  const read = readPlan(readFileSync("examples/launch.yaml", "utf8"));
  if (!read.ok) throw new Error("examples/launch.yaml must be sound");
  const plan = completePlan(read.plan);
  return [
    {
      what: "launch from its plan: form, faces, marks both sides, holes, float",
      aimMs: 150,
      medianMs: medianMs(9, () => workOutHull(plan)),
    },
  ];
}

function wholeBoat(weights: readonly Weight[]): void {
  const form = launch();
  const faces = [
    stripFace(form, { lower: "topside", upper: "sheer", fromM: 0.8, toM: 6 }),
    stripFace(form, { lower: "bilge", upper: "topside", fromM: 0.8, toM: 6 }),
    stripFace(form, { lower: "keel", upper: "bilge", fromM: 0.8, toM: 6 }),
  ];
  const places = faces.flatMap((face, i) => {
    const { holes, references } = fitOut(face, i === 0 ? 16 : 12);
    markSheet(face, holes, references, tape);
    clearances(
      face,
      "glass",
      holes.map((hole) => ({ ...hole, holeM: 0.016, flangeM: 0.025 })),
      [],
    );
    return holes.map((hole) => ({ name: `${i} ${hole.name}`, at: placeOn(face, hole.spot) }));
  });
  const hull = cutHull(form, true);
  const rest = restOf(hull, weights);
  if ("problem" in rest) throw new Error(rest.problem);
  const curve = rightingCurve(
    hull,
    loadOf(weights),
    Array.from({ length: 25 }, (_, i) => 5 * (i - 12)),
  );
  const table = drowningTable(hull, rest.floating, curve);
  for (const { name, at } of places) holeAfloat(table, name, at);
}
