/**
 * The example boats at every corner, through the SPICE text the tool prints, in a circuit simulator that knows nothing of it.
 * Witness: ngspice (Debian). Tolerance 1e-6 relative: the simulator's own reltol is 1e-9, its printing gives twelve digits.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { netlistOf } from "../../src/core/circuit/netlist.js";
import { workOut } from "../../src/core/figures.js";
import { readPlan } from "../../src/core/plan/read.js";

function gearVoltages(deck: string): number[] {
  const folder = mkdtempSync(join(tmpdir(), "deck-"));
  try {
    const file = join(folder, "boat.cir");
    writeFileSync(file, deck);
    const run = spawnSync("ngspice", ["-b", file], { encoding: "utf8" });
    if (run.error) throw run.error;
    return [...run.stdout.matchAll(/^v\(.*\) = (\S+)$/gm)].map(([, value]) => Number(value));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const boats = readdirSync("examples").filter((name) => name.endsWith(".yaml"));

describe.each(boats)("%s", (name) => {
  const read = readPlan(readFileSync(join("examples", name), "utf8"));
  if (!read.ok) throw new Error(`${name} does not read`);
  const { figures, circuit } = workOut(read.plan);

  test.each(figures.corners.map((corner) => [corner.name, corner] as const))("%s", (cornerName, corner) => {
    const simulated = gearVoltages(netlistOf(figures.plan, circuit, cornerName));
    expect(simulated).toHaveLength(corner.gear.length);
    corner.gear.forEach((gear, index) => {
      if (gear.inTurn) return;
      expect(Math.abs((simulated[index] ?? 0) / gear.voltageV - 1), gear.id).toBeLessThan(1e-6);
    });
  });
});
