import { seededNumbers } from "../../src/core/parts/cuts/seeded.js";
import type { FreeWindow } from "../../src/core/plan/model/work.js";
import { toolKeys } from "../../src/core/reference/tools.js";
import type { Precedence, Step, WorkGraph } from "../../src/core/work/step.js";

/** A made-up job: steps with tools, some that wait for others, a few that must rest. */
export function madeUpGraph(seed: number, count: number, toolCount = 4): WorkGraph {
  const random = seededNumbers(seed);
  const whole = (most: number) => Math.floor(random() * most);
  const steps = Array.from({ length: count }, (_, i): Step => {
    const tool = whole(toolCount + 1);
    return {
      id: `s${i}`,
      kind: "join",
      task: "join end",
      at: [],
      pieces: [],
      sizes: [],
      readings: [],
      tools: tool === toolCount ? [] : toolKeys.slice(tool, tool + 1),
      consumables: [],
      minutes: 5 + 5 * whole(8),
      inOneGo: random() < 0.5,
    };
  });
  const precedences: Precedence[] = [];
  for (let i = 1; i < count; i++)
    for (let links = whole(3); links > 0; links--) {
      const rest = random() < 0.25 ? { cure: { key: "edge sealer" as const, hours: 0.5 + whole(6) } } : {};
      precedences.push({ before: `s${whole(i)}`, after: `s${i}`, reason: "wire before joint", ...rest });
    }
  return { steps, precedences };
}

export const evenings: readonly FreeWindow[] = [
  ...[0, 1, 2, 3, 4].map((day) => ({ day, fromH: 19, toH: 21 })),
  { day: 5, fromH: 9, toH: 12 },
];
