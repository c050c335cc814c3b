// Both legs of every piece of gear lose together what the solver says it loses, whatever way one counts.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { traceGear } from "../../src/core/circuit/gear-trace.js";
import { workOut } from "../../src/core/figures.js";
import { readPlan } from "../../src/core/plan/read.js";
import { SpotFigures } from "../../src/drawing/circuit-map/at-spot.js";
import { plantTrees } from "../../src/drawing/one-line/tree.js";

describe.each(["tender", "utility", "launch"])("%s", (name) => {
  const read = readPlan(readFileSync(`examples/${name}.yaml`, "utf8"));
  if (!read.ok) throw new RangeError(name);
  const { figures } = workOut(read.plan);

  test("the stretches add up to the drop, out of a supply at its voltage and back to nought", () => {
    let compared = 0;
    for (const corner of figures.corners)
      for (const piece of corner.gear.filter(({ on, inTurn }) => on && inTurn !== true)) {
        const trace = traceGear(figures, corner, piece.id);
        expect(trace?.on).toBe(true);
        const sum = trace?.steps.reduce((all, { dropV }) => all + dropV, 0);
        // The solver stops at 1e-9 V or better; sums of a dozen stretches keep well within this.
        expect(sum).toBeCloseTo(piece.dropV, 7);
        const out = trace?.steps.findLast(({ leg }) => leg === "out")?.againstNegativeV ?? Number.NaN;
        const [first] = trace?.steps.filter(({ leg }) => leg === "back") ?? [];
        const back = (first?.againstNegativeV ?? 0) + (first?.dropV ?? 0);
        expect(out - back).toBeCloseTo(piece.voltageV, 7);
        expect(trace?.steps.at(-1)?.againstNegativeV).toBeCloseTo(0, 9);
        compared += 1;
      }
    expect(compared).toBeGreaterThan(5);
  });

  test("voltage falls from a panel to its ways, on to boxes and gear", () => {
    const corner = figures.corners.find((one) => one.name === "worst drop");
    if (!corner) throw new RangeError(name);
    const known = new SpotFigures(figures, corner);
    const nodes = plantTrees(figures.plan);
    let compared = 0;
    for (const node of nodes) {
      const parent = nodes[node.parent];
      const here = known.at(node);
      const before = parent && known.at(parent);
      // A converter starts anew; what is in its own turn is solved apart; a box of several circuits shows the lowest.
      const several = parent?.kind === "box" && (parent.run?.carries.length ?? 0) > 1;
      if (!parent || several || parent.kind === "converter" || here.inTurn || before?.inTurn) continue;
      if (here.voltageV === undefined || before?.voltageV === undefined) continue;
      expect(here.voltageV, `${parent.name} to ${node.name}`).toBeLessThanOrEqual(before.voltageV + 1e-9);
      compared += 1;
    }
    expect(compared).toBeGreaterThan(3);
  });
});

test("gear that nothing feeds has no trace", () => {
  const text = readFileSync("examples/tender.yaml", "utf8");
  const read = readPlan(text.replace("\ngear:", "\ngear:\n  loose lamp: {draws: 1 W}"));
  if (!read.ok) throw new RangeError(JSON.stringify(read.problems));
  const { figures } = workOut(read.plan);
  expect(figures.corners.length).toBeGreaterThan(0);
  for (const corner of figures.corners) expect(traceGear(figures, corner, "loose lamp")).toBeUndefined();
});
