/** Names of parts, wire and tools in Spanish: whatever the plan makes of them has its Spanish name, and what is the owner's stays. */
import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import * as names from "../../src/core/parts/item-names.js";
import { type PartKind, partKinds } from "../../src/core/parts/parts-list.js";
import type { Protection } from "../../src/core/plan/model/common.js";
import { drillSizes, wallMaterials } from "../../src/core/reference/boxes.js";
import { consumables } from "../../src/core/reference/consumables.js";
import { jointTools } from "../../src/core/reference/terminations.js";
import { planWork } from "../../src/core/work/plan-work.js";
import { layoutInEnglish as english } from "../../src/words/layout/english.js";
import { layoutInSpanish as spanish } from "../../src/words/spanish/layout.js";
import { sizeLines } from "../../src/words/step-lines.js";
import { english as stepsInEnglish } from "../../src/words/steps/english.js";
import { spanish as stepsInSpanish } from "../../src/words/steps/spanish.js";
import { stepTitles } from "../../src/words/work-words.js";
import { planAt } from "../packet/pages.js";
import { englishLeftIn, keysOf, sameFigures } from "./spanish.js";

/** English words of the shop that have a Spanish one here. */
const shop =
  /\b(ring|lug|fork|butt|ferrule|sleeve|fuse|breaker|holder|switch|gland|plug|bar|studs?|strip|wires?|cable clip|flag|tape|tube|red|blue|black|yellow|white|brown|green|cores?|single|pair|ways|grommet|crimper|hot air|pliers|fingers)\b/i;

function inSpanish(said: string, other: string): void {
  expect(englishLeftIn(said), said).toEqual([]);
  expect(said).not.toMatch(shop);
  expect(said).not.toBe(other);
  sameFigures(said, other);
}

const devices: readonly Protection["device"][] = ["blade fuse", "bolted fuse", "cartridge fuse", "breaker"];
const sleeve = {
  ok: true,
  suppliedMm: 6.4,
  recoveredMm: 2.1,
  lined: true,
  ratio: "3:1",
  lengthMm: 30,
} as const;
const made: readonly (readonly [string, PartKind])[] = [
  ...devices.flatMap((device) => [
    [names.fuseName(device, 7.5), "fuse"] as const,
    [names.deviceEndName(device), "fuse holder"] as const,
    ...[names.holderName(device) ?? []].flat().map((holder) => [holder, "fuse holder"] as const),
  ]),
  [names.switchName({}), "switch"],
  [names.switchName({ ratingA: 10 }, true), "switch"],
  [names.insidePanel, "bus"],
  ["bus bar, 6 studs", "bus"],
  ["terminal strip, one pole", "bus"],
  [names.sleeveName(sleeve), "sleeve"],
  ["M20 gland", "gland"],
  ["M20 plug", "gland"],
  ["cable clip or tie", "tie"],
  ["wire flag", "label"],
  [consumables.sealant, "sealant"],
  [consumables.tape, "tape"],
  ["grommet for a 22.5 mm hole", "other"],
  ["16 AWG, 2 cores", "conductor"],
  ["16 AWG, 1 core in a sheath", "conductor"],
  ["8 AWG, single", "conductor"],
  ["2.5 mm2, green and yellow", "conductor"],
];

describe("parts", () => {
  test.each(made)("%s", (name, kind) => inSpanish(spanish.part(name, kind), name));
  test("a name of the owner's own stays, whatever it says", () => {
    for (const kind of ["box", "gear"] as const)
      expect(spanish.part("ring, red, M6", kind)).toBe("ring, red, M6");
    for (const kind of partKinds) expect(spanish.part("caja Pepe 3000", kind)).toBe("caja Pepe 3000");
  });
  test("kinds, slacks, tools and walls", () => {
    for (const kind of partKinds)
      if (kind !== "other") inSpanish(spanish.partKinds[kind], english.partKinds[kind]);
    for (const why of keysOf(english.slack))
      for (const list of ["slack", "shortSlack"] as const) inSpanish(spanish[list][why], english[list][why]);
    for (const tool of [...Object.values(jointTools.rows), jointTools.lug])
      inSpanish(spanish.tool(tool), tool);
    for (const wall of wallMaterials) if (wall !== "abs") inSpanish(spanish.material(wall), wall);
    expect(drillSizes.pilotMm).toBeGreaterThan(0);
  });
});

describe.each(["tender", "utility", "launch"])("the example %s", (example) => {
  const whole = workOutWhole(planAt(`examples/${example}.yaml`));
  const { figures, layout } = whole;
  test("every part and every wire of its list", () => {
    for (const { item, kind } of layout.parts.list.lines)
      if (!["box", "gear", "other"].includes(kind)) inSpanish(spanish.part(item, kind), item);
    for (const { item } of layout.parts.wire) inSpanish(spanish.wire(item), item);
  });
  test("every figure of every step", () => {
    const work = planWork(figures, whole);
    const { shows } = figures.plan.source;
    const [title, inEnglish] = [
      stepTitles(work.step.values(), stepsInSpanish),
      stepTitles(work.step.values()),
    ];
    for (const step of work.step.values()) {
      const lines = [stepsInEnglish, stepsInSpanish].map((words) => sizeLines(step, shows, words).join("\n"));
      sameFigures(lines[1] ?? "", lines[0] ?? "");
      expect(title(step.id)).not.toBe(inEnglish(step.id));
    }
  });
});
