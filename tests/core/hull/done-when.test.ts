import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { movedOn } from "../../../src/core/hull/faces/face.js";
import type { HullFigures, SideFigures } from "../../../src/core/hull/figures.js";
import { reading } from "../../../src/core/hull/marks/tape.js";
import { tapeOf } from "../../../src/core/hull/plan-marks.js";
import { workOutHull } from "../../../src/core/hull-figures.js";
import { completePlan } from "../../../src/core/plan/complete.js";
import { applyEdits } from "../../../src/core/plan/edits/apply.js";
import type { Edit } from "../../../src/core/plan/edits/edit.js";
import { readPlan } from "../../../src/core/plan/read.js";

const utility = readFileSync(new URL("../../../examples/utility.yaml", import.meta.url), "utf8");

function figuresOf(text: string): HullFigures {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return workOutHull(completePlan(read.plan));
}

function side(figures: HullFigures, face: string, of: "port" | "starboard"): SideFigures {
  const found = figures.faces.find(({ name }) => name === face)?.sides.find((one) => one.side === of);
  if (!found) throw new Error(`no ${face} ${of}`);
  return found;
}

/** What a tape to the nearest 1/16 in reads at each mark, one of them set so far off its place: the edits one would make. */
function readingsWith(figures: HullFigures, off: { mark: string; alongM: number; upM: number }): Edit[] {
  const tape = tapeOf(figures.plan.marks);
  return (["port", "starboard"] as const).flatMap((of) => {
    const here = side(figures, "lining", of);
    return here.marks.flatMap(({ mark }): Edit[] => {
      const spot = mark.name === off.mark ? movedOn(here.face, mark.spot, off.alongM, off.upM) : mark.spot;
      return here.references.flatMap((reference): Edit[] => {
        const taken = reading(here.face, reference, spot, tape, mark.name);
        if ("problem" in taken) return [];
        const inches = Math.round((taken.exactM / 0.0254) * 16) / 16;
        return [
          { edit: "set field", at: "checked", field: `${mark.name} / ${reference.name}`, to: `${inches} in` },
        ];
      });
    });
  });
}

describe("utility, from the tape survey alone", () => {
  const figures = figuresOf(utility);
  const lining = (of: "port" | "starboard") => side(figures, "lining", of);

  test("the form is fair, its check readings agree, and nothing else is wrong with the hull", () => {
    expect(figures.form?.source).toBe("survey");
    expect(figures.problems).toEqual([]);
  });
  test.each([
    ["port", ["coaming lamp 1", "coaming lamp 2", "coaming lamp 3"]],
    ["starboard", ["coaming lamp 4", "coaming lamp 5", "coaming lamp 6"]],
  ] as const)("marks of the lamps to %s, each with two tapes and a check", (of, names) => {
    const marks = lining(of).marks.map(({ mark }) => mark);
    expect(marks.map(({ name }) => name).toSorted()).toEqual(names);
    for (const mark of marks) {
      expect(mark.method).toBe("two tapes");
      expect(mark.readings.length).toBe(2);
      expect(mark.check?.roundedM).toBeGreaterThan(0);
      expect(mark.crossingDeg).toBeGreaterThanOrEqual(30);
      // on the owner's tape
      for (const { roundedM } of [...mark.readings, ...(mark.check ? [mark.check] : [])])
        expect((roundedM / 0.0254) * 16).toBeCloseTo(Math.round((roundedM / 0.0254) * 16), 9);
      // nineteen of twenty marks land within a sixth of an inch
      expect((mark.ellipse?.majorM ?? 1) * (mark.ellipse?.growthFor95 ?? 1)).toBeLessThan(0.0045);
    }
  });
  test("a symmetrical boat shares its numbers from side to side", () => {
    for (const { mark, twin } of lining("starboard").marks) {
      const of = lining("port").marks.find((one) => one.mark.name === twin?.of)?.mark;
      expect(twin?.shared).toBe(true);
      expect(mark.readings.map(({ roundedM }) => roundedM)).toEqual(
        of?.readings.map(({ roundedM }) => roundedM),
      );
      expect(mark.at[1]).toBeCloseTo(-(of?.at[1] ?? 0), 12);
    }
  });
  test.each([
    ["coaming lamp 2", 0.005, 0],
    ["coaming lamp 2", 0, -0.005],
    ["coaming lamp 1", 0.0035, 0.0035],
    ["coaming lamp 4", -0.005, 0],
    ["coaming lamp 6", 0, 0.005],
  ])(
    "%s set %d m along and %d m up of its place: named, with the correction, and no other",
    (mark, alongM, upM) => {
      const edited = applyEdits(utility, readingsWith(figures, { mark, alongM, upM }));
      if (!edited.ok) throw new Error(JSON.stringify(edited.problem));
      const checked = figuresOf(edited.text)
        .faces.flatMap(({ sides }) => sides)
        .flatMap((one) => one.checked?.verdicts ?? []);
      expect(checked.length).toBe(6);
      const wrong = checked.filter(({ verdict }) => verdict !== "good");
      expect(wrong.map(({ name, verdict }) => [name, verdict])).toEqual([[mark, "misplaced"]]);
      // back where it came from, to a tape's reading
      expect(Math.hypot((wrong[0]?.moveAlongM ?? 9) + alongM, (wrong[0]?.moveUpM ?? 9) + upM)).toBeLessThan(
        0.0015,
      );
    },
  );
  test("marks that stand right are all called good", () => {
    const edited = applyEdits(utility, readingsWith(figures, { mark: "", alongM: 0, upM: 0 }));
    if (!edited.ok) throw new Error(JSON.stringify(edited.problem));
    const all = figuresOf(edited.text).faces.flatMap(({ sides }) =>
      sides.flatMap((one) => one.checked?.verdicts ?? []),
    );
    expect(new Set(all.map(({ verdict }) => verdict))).toEqual(new Set(["good"]));
  });
  test("a boat whose sides differ: the second side gets numbers of its own, and the readings name the reference point", () => {
    const uneven = utility.replace(
      "board corner: {",
      "stem foot: {at: [140 in, 0 in, 4 in]}\n  board corner: {",
    );
    const apart = (port: string, starboard: string) =>
      uneven.replace(
        /seat bracket: \{([^}]*)\}/,
        (_all, inside) =>
          `seat bracket: {${inside}, measured: [{from: stem foot, port: ${port}, starboard: ${starboard}}]}`,
      );
    const even = figuresOf(apart("60 in", "60 in"));
    expect(side(even, "lining", "starboard").marks.every(({ twin }) => twin?.shared)).toBe(true);
    const odd = figuresOf(apart("60 in", "60 3/4 in"));
    expect(odd.references.find(({ name }) => name === "seat bracket")?.asymmetryM).toBeGreaterThan(0.004);
    expect(side(odd, "lining", "starboard").marks.some(({ twin }) => twin?.shared === false)).toBe(true);
  });
});

test("a battery moved forward brings the bow down by about what its table says, and the holes with it", () => {
  const [before, after] = [utility, utility.replace("stands at: [22 in,", "stands at: [42 in,")].map(
    figuresOf,
  );
  const trimDeg = (of?: HullFigures) => of?.float?.rest?.floating.trimDeg ?? Number.NaN;
  const move = before?.float?.moves.find(({ name }) => name === "house");
  const turnedDeg = trimDeg(after) - trimDeg(before);
  expect(turnedDeg).toBeGreaterThan(0);
  // the table is of small moves: within a tenth for half a metre
  expect(turnedDeg / (20 * 0.0254 * (move?.trimDegPerM ?? 0))).toBeCloseTo(1, 1);
  const bowM = (of?: HullFigures) =>
    of?.holes.find(({ name }) => name === "coaming lamp 3")?.afloat?.heightM ?? Number.NaN;
  expect(bowM(after)).toBeLessThan(bowM(before));
});
