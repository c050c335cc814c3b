/** In-process time of proving on the largest example: ranking faults, what to measure next, bands, the whole test sheet. */
import { readFileSync } from "node:fs";
import { workOut } from "../src/core/figures.js";
import { readPlan } from "../src/core/plan/read.js";
import { bandsOf } from "../src/core/proving/bands.js";
import { type Bench, benchOf } from "../src/core/proving/bench-network.js";
import { findFaults } from "../src/core/proving/faults.js";
import { nextReadings } from "../src/core/proving/next-reading.js";
import type { Probe } from "../src/core/proving/probe.js";
import { type Reading, ReadingModel } from "../src/core/proving/reading-model.js";
import { polePairs } from "../src/core/proving/shadows.js";
import { testSheet } from "../src/core/proving/sheet/sheet.js";
import { spreadOf } from "../src/core/proving/spread.js";

export interface ProvingRow {
  readonly what: string;
  readonly ms: number;
  readonly aimMs?: number;
}

export function provingBench(): ProvingRow[] {
  const read = readPlan(readFileSync("examples/launch.yaml", "utf8"));
  if (!read.ok) throw new Error("launch does not read");
  const { figures, circuit } = workOut(read.plan);
  const bench = benchOf(figures.plan, circuit);
  const readings = withBadJoint(bench, "saloon / coaming");
  const report = findFaults(bench, readings);
  const probes = readings.map(({ probe }) => probe);
  return [
    { what: "launch: faults ranked by 8 readings", ms: msOf(() => findFaults(bench, readings)), aimMs: 200 },
    { what: "launch: what to measure next", ms: msOf(() => nextReadings(bench, report)) },
    { what: "launch: bands of one way, 10,000 samples", ms: msOf(() => bandsOf(bench, probes)), aimMs: 1000 },
    {
      what: "launch: the whole test sheet, 10,000 samples",
      ms: msOf(() => testSheet(bench, figures)),
    },
  ];
}

/** Readings of a way with 0.6 Ω too much in the wire to its first gear. */
function withBadJoint(bench: Bench, circuit: string): Reading[] {
  const { topology } = bench;
  const gear = topology.gear.filter((piece) => piece.circuit === circuit);
  const on = gear.map(({ id }) => id);
  const name = (node: number) => topology.nodes[node] ?? "";
  const battery = bench.plan.circuits.get(circuit)?.battery;
  const poles = [...topology.sources.filter((one) => one.battery === battery), ...gear];
  const fuse = `${circuit} / fuse`;
  const probes: Probe[] = [
    ...poles.map(({ plus, minus }): Probe => ({ kind: "voltage", at: name(plus), against: name(minus), on })),
    ...(bench.branchOf.has(fuse) ? [{ kind: "current", at: fuse, on } as const] : []),
  ];
  const row = topology.branches.findIndex(({ to }) => to === gear[0]?.plus);
  const blank = probes.map((probe): Reading => ({ probe, value: 0 }));
  const model = new ReadingModel(bench, spreadOf(bench), blank, polePairs(bench).shadows);
  const { shown } = model.shown({ extraOhm: new Map([[row, 0.6]]) });
  return probes.map((probe, i) => ({ probe, value: shown[i] ?? 0 }));
}

/** Median processor time of one call, after warm-up [ms]. */
function msOf(call: () => unknown): number {
  call();
  const times: number[] = [];
  for (const until = performance.now() + 1500; times.length < 3 || performance.now() < until; ) {
    const start = process.cpuUsage();
    call();
    const { user, system } = process.cpuUsage(start);
    times.push((user + system) / 1000);
  }
  times.sort((a, b) => a - b);
  return Number((times[Math.floor(times.length / 2)] ?? 0).toFixed(1));
}
