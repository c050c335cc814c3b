import { readFileSync } from "node:fs";
import { workOut } from "../../../src/core/figures.js";
import type { TakenReading } from "../../../src/core/plan/model/work.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { benchOf } from "../../../src/core/proving/bench-network.js";

export function boatOf(text: string) {
  const read = readPlan(text);
  if (!read.ok) throw new Error(`plan does not read: ${JSON.stringify(read.problems[0])}`);
  const { figures, circuit } = workOut(read.plan);
  return { figures, circuit, bench: benchOf(figures.plan, circuit) };
}

export const example = (name: string) => boatOf(readFileSync(`examples/${name}.yaml`, "utf8"));

/** A reading as a plan holds it. */
export function taken(
  at: string,
  against: string,
  value: number,
  withOn: readonly string[] = [],
  more: Partial<TakenReading> = {},
): TakenReading {
  return { kind: "voltage", at, against, withOn, value, ...more };
}
