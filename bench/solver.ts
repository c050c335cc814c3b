/**
 * The solver against ngspice: processor time of whole processes side by side in one run, on the same networks, both printing every voltage.
 * Writing networks and decks is outside the timed part. Then the same networks inside a warm process.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { cpus, tmpdir, totalmem } from "node:os";
import { join } from "node:path";
import { serialize } from "node:v8";
import { solveNetwork } from "../src/core/circuit/solve/solve.js";
import { generatedNetwork } from "../tests/laws/generated-network.js";
import { spiceDeck } from "../tests/outside/ngspice-deck.js";
import { median, processorMs, watchedRun } from "./whole-process.js";

export interface SolverBenchRow {
  readonly gear: number;
  readonly kind: "radial" | "meshed";
  readonly nodes: number;
  readonly oursMs: number;
  readonly ngspiceMs: number;
  readonly oursMb: number;
  readonly ngspiceMb: number;
  /** In a warm process, the network already in memory. */
  readonly warmMs: number;
}

/** What takes longer than this is run once only [ms]. */
const longMs = 10_000;

/** As good as the agreement that is tested, 1e-6; every voltage printed. */
const operatingPoint = [".options reltol=1e-6 gmin=1e-15 itl1=1000", ".op"];

/**
 * @param program The bundled `solver-process.ts`.
 * @param sizes Pieces of gear.
 * @param told Called with each row as it is measured: the large ones take minutes.
 * @throws Error where ngspice (Debian package `ngspice`) is missing or fails.
 */
export async function solverBench(
  program: string,
  sizes: readonly number[],
  told: (row: SolverBenchRow) => void = () => {},
): Promise<SolverBenchRow[]> {
  const folder = mkdtempSync(join(tmpdir(), "solver-bench-"));
  const rows: SolverBenchRow[] = [];
  try {
    for (const gear of sizes)
      for (const kind of ["radial", "meshed"] as const) {
        const network = generatedNetwork(7, { gear, meshed: kind === "meshed", converters: 0 });
        const networkFile = join(folder, "network.bin");
        const deckFile = join(folder, "network.cir");
        writeFileSync(networkFile, serialize(network));
        writeFileSync(
          deckFile,
          spiceDeck(network, new Set([Number(network.sources.minus[0])]), operatingPoint),
        );
        const ours = [process.execPath, [program, networkFile]] as const;
        const ngspice = ["ngspice", ["-b", deckFile]] as const;
        const oursWatched = await watchedRun(...ours);
        const ngspiceWatched = await watchedRun(...ngspice);
        // alternating, so that what else the machine does falls on both alike
        const oursMs: number[] = [];
        const long = ngspiceWatched.tookMs > longMs;
        const ngspiceMs: number[] = long ? [ngspiceWatched.tookMs] : [];
        for (let run = 0; run < (gear < 10_000 ? 7 : 3); run++) {
          oursMs.push(processorMs(...ours));
          if (!long) ngspiceMs.push(processorMs(...ngspice));
        }
        const row: SolverBenchRow = {
          gear,
          kind,
          nodes: network.nodeCount,
          oursMs: median(oursMs),
          ngspiceMs: median(ngspiceMs),
          oursMb: oursWatched.peakMb,
          ngspiceMb: ngspiceWatched.peakMb,
          warmMs: warmMs(() => solveNetwork(network)),
        };
        rows.push(row);
        told(row);
      }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return rows;
}

/** Time of a process of ours that does nothing: the floor under every figure above [ms]. */
export function emptyProcessMs(): number {
  return median(Array.from({ length: 15 }, () => processorMs(process.execPath, ["-e", "0"])));
}

function warmMs(work: () => void): number {
  const began = performance.now();
  for (let i = 0; i < 200 && performance.now() - began < 1500; i++) work();
  const times = Array.from({ length: 15 }, () => {
    const start = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  });
  return median(times);
}

/** The table as Markdown, the machine told by its size only. */
export function solverTable(rows: readonly SolverBenchRow[], emptyMs: number): string {
  const version =
    /ngspice-\d+/.exec(spawnSync("ngspice", ["-v"], { encoding: "utf8" }).stdout)?.[0] ?? "ngspice";
  const gigabytes = Math.round(totalmem() / 2 ** 30);
  const head = [
    "gear",
    "kind",
    "nodes",
    "ours ms",
    "ngspice ms",
    "time ratio",
    "ours MB",
    "ngspice MB",
    "memory ratio",
    "warm ms",
  ];
  return [
    `${cpus().length} cores, ${gigabytes} GB, Node ${process.versions.node}, ${version}. An empty Node process takes ${emptyMs.toFixed(0)} ms.`,
    "",
    `| ${head.join(" | ")} |`,
    `| ${head.map(() => "---:").join(" | ")} |`,
    ...rows.map(solverLine),
  ].join("\n");
}

/** One row of the table. */
export function solverLine(row: SolverBenchRow): string {
  const cells = [
    row.gear.toLocaleString("en"),
    row.kind,
    row.nodes.toLocaleString("en"),
    row.oursMs.toFixed(0),
    row.ngspiceMs.toFixed(0),
    (row.oursMs / row.ngspiceMs).toPrecision(2),
    row.oursMb.toFixed(0),
    row.ngspiceMb.toFixed(0),
    (row.oursMb / row.ngspiceMb).toPrecision(2),
    row.warmMs.toPrecision(2),
  ];
  return `| ${cells.join(" | ")} |`;
}
