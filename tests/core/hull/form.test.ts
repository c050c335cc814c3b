import { describe, expect, test } from "vitest";
import { startingAgreement, surveyAgreement } from "../../../src/core/hull/form/agreement.js";
import { unfairIn } from "../../../src/core/hull/form/fair-survey.js";
import { formFrom, type LinePoints } from "../../../src/core/hull/form/form.js";
import { lengthAlongM, lineAt } from "../../../src/core/hull/form/line.js";
import { nextForStarting } from "../../../src/core/hull/form/next-for-starting.js";
import { nextMeasurements } from "../../../src/core/hull/form/next-measurement.js";
import { parseOffsets, readOffset } from "../../../src/core/hull/form/offsets.js";
import { contradictions } from "../../../src/core/hull/form/redundant.js";
import { sectionAt } from "../../../src/core/hull/form/section.js";
import { cubicSpline, monotoneSpline, splineAt } from "../../../src/core/hull/form/spline.js";
import { startingLines } from "../../../src/core/hull/form/starting-form.js";
import { formOfTape, type TapeSurvey } from "../../../src/core/hull/form/survey.js";
import type { Point } from "../../../src/core/hull/vector.js";
import { type StartingKind, startingForms } from "../../../src/core/reference/starting-forms.js";

const stationsM = [0, 0.6, 1.2, 1.8, 2.4, 3.0, 3.6, 4.2];
/** An invented skiff with fair lines in closed form. */
const half = (x: number) => 0.75 - 0.045 * (x - 1.4) ** 2;
const survey = (change: (i: number) => number = () => 0): TapeSurvey => ({
  stationsM,
  sigmaM: 0.002,
  lines: [
    { name: "keel", knuckle: true, above: "flat", heightsM: stationsM.map((x) => 0.02 * (x - 2) ** 2) },
    {
      name: "chine",
      knuckle: true,
      above: "flat",
      halfBreadthsM: stationsM.map((x) => half(x) - 0.15),
      heightsM: stationsM.map((x) => 0.02 * (x - 2) ** 2 + 0.02),
    },
    {
      name: "sheer",
      knuckle: true,
      above: "flat",
      halfBreadthsM: stationsM.map((x, i) => half(x) + change(i)),
      heightsM: stationsM.map((x) => 0.5 + 0.02 * (x - 1.5) ** 2),
    },
  ],
});

describe("fair lines", () => {
  test("not-a-knot ends give back a cubic; natural ones a straight line; level ones leave level", () => {
    const cubic = (t: number) => t ** 3 - 2 * t * t + 1;
    const knots = [0, 0.4, 1, 1.7, 2];
    const smooth = cubicSpline(knots, knots.map(cubic), "smooth");
    expect(splineAt(smooth, 1.3).value).toBeCloseTo(cubic(1.3), 12);
    expect(
      splineAt(
        cubicSpline(
          knots,
          knots.map((t) => 3 * t),
        ),
        1.3,
      ).value,
    ).toBeCloseTo(3.9, 12);
    expect(splineAt(cubicSpline(knots, knots.map(cubic), "level"), 0).slope).toBeCloseTo(0, 12);
  });
  test("a natural spline bends smoothly: slope and bending agree from both sides of each knot", () => {
    const knots = [0, 1, 2.5, 3, 4];
    const spline = cubicSpline(knots, [0, 2, 1, 4, 4]);
    for (const knot of knots.slice(1, -1)) {
      const [before, after] = [splineAt(spline, knot - 1e-9), splineAt(spline, knot)];
      expect(before.slope).toBeCloseTo(after.slope, 6);
      expect(before.bend).toBeCloseTo(after.bend, 6);
    }
    expect(splineAt(spline, 0).bend).toBeCloseTo(0, 9);
  });
  test("the monotone one never turns back", () => {
    const spline = monotoneSpline([0, 1, 1.1, 5], [0, 0.1, 3, 3.1]);
    for (let t = 0; t < 5; t += 0.01) expect(splineAt(spline, t).slope).toBeGreaterThanOrEqual(-1e-12);
  });
  test("a line passes through its points and has the length of its arc", () => {
    const angles = Array.from({ length: 13 }, (_, i) => 0.3 + (i * 1.2) / 12);
    const circle = angles.map((a): Point => [-2 * Math.cos(a), 2 * Math.sin(a), 0]);
    const { form } = formFrom([
      { name: "a", knuckle: true, above: "flat", points: circle.map(([x]) => [x, 0, -1]) },
      { name: "b", knuckle: true, above: "flat", points: circle },
    ]);
    const line = form?.lines[1];
    if (!line) throw new Error("no line");
    for (const [x, y] of circle) expect(lineAt(line, x)[1]).toBeCloseTo(y, 9);
    // natural ends are straight where the arc is not: the length errs by less than a millimetre on 2.4 m
    expect(Math.abs(lengthAlongM(line, line.fromM, line.toM) - 2.4)).toBeLessThan(1e-3);
  });
});

describe("survey", () => {
  test("a fair boat has no problems and its sections pass through what was measured", () => {
    const { form, problems } = formOfTape(survey());
    expect([...problems, ...unfairIn(survey())]).toEqual([]);
    if (!form) throw new Error("no form");
    const section = sectionAt(form, 1.8);
    expect(section.length).toBe(3);
    expect(section[2]?.[0]).toBeCloseTo(half(1.8), 9);
  });
  test("one half-breadth 25 mm off is named, with what it should be, and nothing else is", () => {
    const problems = unfairIn(survey((i) => (i === 3 ? 0.025 : 0)));
    expect(problems.map(({ problem }) => problem)).toEqual(["unfair measurement"]);
    expect(problems[0]?.at).toBe("sheer at 1.800 m");
    expect(problems[0]?.figure).toBeCloseTo(0.025, 2);
    expect(problems[0]?.right).toBeCloseTo(half(1.8), 2);
    // shown, not smoothed away: the line still runs through it
    const sheer = formOfTape(survey((i) => (i === 3 ? 0.025 : 0))).form?.lines[2];
    expect(sheer && lineAt(sheer, 1.8)[1]).toBeCloseTo(half(1.8) + 0.025, 9);
  });
  test("too few stations are not judged, and that is said", () => {
    const few = survey();
    const cut = {
      ...few,
      stationsM: few.stationsM.slice(0, 4),
      lines: few.lines.map((l) => ({
        ...l,
        heightsM: l.heightsM.slice(0, 4),
        ...(l.halfBreadthsM ? { halfBreadthsM: l.halfBreadthsM.slice(0, 4) } : {}),
      })),
    };
    expect(new Set(unfairIn(cut).map(({ problem }) => problem))).toEqual(new Set(["fairness not judged"]));
  });
  test("a girth and a breadth that disagree are told, with the figure they should have", () => {
    const { form } = formOfTape(survey());
    if (!form) throw new Error("no form");
    const girth = Math.hypot(0.15, 0.5 + 0.02 * 0.3 ** 2 - (0.02 * 0.2 ** 2 + 0.02));
    const found = contradictions(
      form,
      [
        { kind: "girth", line: "chine", to: "sheer", atM: 1.8, readM: girth + 0.001 },
        { kind: "girth", line: "chine", to: "sheer", atM: 1.8, readM: girth + 0.03 },
        { kind: "breadth", line: "sheer", atM: 1.2, readM: 2 * half(1.2) - 0.02 },
      ],
      0.002,
    );
    expect(found.length).toBe(2);
    expect(found[0]?.right).toBeCloseTo(girth, 6);
    expect(found[1]?.figure).toBeCloseTo(-0.02, 6);
  });
  test("what to measure next lies in the widest gap, and a skipped station comes first", () => {
    // a sheer whose bend changes along the boat: a plain parabola would be sure enough already
    const wide = survey((i) => 0.04 * Math.sin(2.2 * (stationsM[i] ?? 0)));
    const gap = {
      ...wide,
      stationsM: [0, 0.6, 1.2, 3.0, 3.6, 4.2],
      lines: wide.lines.map((l) => {
        const drop = (list: readonly (number | undefined)[]) => list.filter((_, i) => i !== 3 && i !== 4);
        return {
          ...l,
          heightsM: drop(l.heightsM),
          ...(l.halfBreadthsM ? { halfBreadthsM: drop(l.halfBreadthsM) } : {}),
        };
      }),
    };
    const [next] = nextMeasurements({ ...gap, sigmaM: 0.0005 });
    expect(next?.reason).toBe("gap");
    expect(next?.atM).toBeCloseTo(2.1, 9);
    const [check] = nextMeasurements({ ...survey(), sigmaM: 0.02 });
    expect(check?.reason).toBe("check");
  });
});

describe("what is wrong with a form", () => {
  const line = (name: string, points: Point[]): LinePoints => ({
    name,
    knuckle: true,
    above: "flat",
    points,
  });
  const keel = line("keel", [
    [0, 0, 0],
    [2, 0, 0],
    [4, 0, 0.1],
  ]);
  const sheer = line("sheer", [
    [0, 0.5, 0.5],
    [2, 0.6, 0.5],
    [4, 0, 0.6],
  ]);
  const kinds = (lines: LinePoints[]) => formFrom(lines).problems.map(({ problem, at }) => [problem, at]);
  test("nothing, where nothing is", () => expect(kinds([keel, sheer])).toEqual([]));
  test("stations out of order give no form", () => {
    const { form, problems } = formFrom([
      keel,
      line("sheer", [
        [0, 0.5, 0.5],
        [4, 0, 0.6],
        [2, 0.6, 0.5],
      ]),
    ]);
    expect(form).toBeUndefined();
    expect(problems).toEqual([
      { problem: "stations out of order", at: "sheer", figure: 2, limit: 4, unit: "m" },
    ]);
  });
  test("lines that cross", () =>
    expect(
      kinds([
        keel,
        line("chine", [
          [0, 0.4, 0.1],
          [2, 0.5, 0.7],
          [4, 0, 0.3],
        ]),
        sheer,
      ]),
    ).toEqual([["lines cross", "sheer"]]));
  test("an open surface: no keel on the centreline, a keel too short, a chine that ends in the air", () => {
    expect(
      kinds([
        line("chine", [
          [0, 0.3, 0],
          [2, 0.4, 0],
          [4, 0.2, 0],
        ]),
        sheer,
      ]),
    ).toContainEqual(["open surface", "chine"]);
    expect(
      kinds([
        line("keel", [
          [0, 0, 0],
          [3, 0, 0],
        ]),
        sheer,
      ]),
    ).toContainEqual(["open surface", "keel"]);
    expect(
      kinds([
        keel,
        line("chine", [
          [0, 0.4, 0.1],
          [3, 0.4, 0.1],
        ]),
        sheer,
      ]),
    ).toContainEqual(["open surface", "chine"]);
  });
});

describe("starting forms", () => {
  const scale = { lengthM: 4.6, beamM: 1.75, depthM: 0.62 };
  const kinds = Object.keys(startingForms.kinds) as StartingKind[];
  test.each(kinds)("%s: closed, no crossing lines, of the asked beam and depth", (kind) => {
    const { form, problems } = formFrom(startingLines(kind, scale));
    expect(problems).toEqual([]);
    const widest = Math.max(...startingLines(kind, scale).flatMap(({ points }) => points.map(([, y]) => y)));
    expect(widest).toBeCloseTo(1.75 / 2, 9);
    const section = form ? sectionAt(form, 2.3) : [];
    const heights = section.map(([, z]) => z);
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(0.62, 2);
  });
  test("a measurement wins exactly, widens its neighbours too, and leaves the stem on the centreline", () => {
    const said = { line: "sheer", coordinate: "half-breadth", atM: 2.0, valueM: 0.93 } as const;
    const [before, after] = [
      startingLines("vee-bottomed utility", scale),
      startingLines("vee-bottomed utility", scale, [said]),
    ];
    const at = (lines: LinePoints[], name: string, x: number) => {
      const found = formFrom(lines).form?.lines.find((line) => line.name === name);
      if (!found) throw new Error("no line");
      return lineAt(found, x)[1];
    };
    expect(at(after, "sheer", 2)).toBeCloseTo(0.93, 6);
    expect(at(after, "chine", 2)).toBeGreaterThan(at(before, "chine", 2) + 0.005);
    expect(after[2]?.points.at(-1)?.[1]).toBe(0);
  });
  test("measuring somewhere makes that place the least unsure", () => {
    const first = nextForStarting("canoe", scale, [])[0];
    if (!first || first.coordinate === "breadth") throw new Error("nothing to measure");
    const then = nextForStarting(
      "canoe",
      scale,
      [{ line: first.line, coordinate: first.coordinate, atM: first.atM, valueM: 0.4 }],
      200,
    );
    const there = then.find(
      (one) => one.line === first.line && one.coordinate === first.coordinate && one.atM === first.atM,
    );
    expect(there?.uncertaintyM).toBeLessThan(0.01 * first.uncertaintyM);
  });
});

describe("table of offsets as text", () => {
  const text =
    "station,keel height,chine half-breadth,chine height,sheer half-breadth,sheer height\n0,0,600,100,700,500\n2000,0,650,110,750,510\n4000,200,-,,0,600\n";
  test("reads columns into lines; a gap leaves the line out there", () => {
    const { lines, problems } = parseOffsets(text, { unitM: 0.001 });
    expect(problems).toEqual([]);
    expect(lines.map(({ name, points }) => [name, points.length])).toEqual([
      ["keel", 3],
      ["chine", 2],
      ["sheer", 3],
    ]);
    expect(lines[2]?.points[1]).toEqual([2, 0.75, 0.51]);
  });
  test("loftsman's feet-inches-eighths", () => {
    expect(readOffset("2-7-4", "feet-inches-eighths")).toBeCloseTo(0.8001, 9);
    expect(readOffset("0-0-1+", "feet-inches-eighths")).toBeCloseTo(0.0047625, 9);
    expect(readOffset("2-13-0", "feet-inches-eighths")).toBeUndefined();
  });
  test("what cannot be read is named by line and column", () => {
    const { problems } = parseOffsets("station,keel height,colour\n0,low,red\n1,0,\n", { unitM: 1 });
    expect(problems).toEqual([
      { problem: "unknown column", at: "column 3", terms: { found: "colour" } },
      { problem: "number expected", at: "line 2, column 2", terms: { found: "low" } },
    ]);
  });
});

describe("how figures agree", () => {
  test("of a fair survey every figure agrees, each within the spread told; one slip differs by what it is, and alone", () => {
    const fair = surveyAgreement(survey());
    expect(fair).toHaveLength(5 * stationsM.length);
    expect(new Set(fair.map(({ verdict }) => verdict))).toEqual(new Set(["agrees"]));
    for (const { against } of fair)
      expect(Math.abs(against?.differsM ?? 1)).toBeLessThan(3.5 * (against?.sigmaM ?? 0));
    const slipped = surveyAgreement(survey((i) => (i === 3 ? 0.03 : 0)));
    const wrong = slipped.filter(({ verdict }) => verdict === "differs");
    expect(wrong).toMatchObject([{ line: "sheer", coordinate: "half-breadth", atM: 1.8 }]);
    // the others are a parabola: what they say of the place is right to a millimetre
    expect(wrong[0]?.against?.differsM).toBeCloseTo(0.03, 3);
    expect(wrong[0]?.against?.fairM).toBeCloseTo(half(1.8), 3);
  });
  test("a line with five figures is not checked, and says nothing", () => {
    const few = { ...survey(), stationsM: stationsM.slice(0, 5) };
    const cut = few.lines.map((line) => ({
      ...line,
      heightsM: line.heightsM.slice(0, 5),
      ...(line.halfBreadthsM && { halfBreadthsM: line.halfBreadthsM.slice(0, 5) }),
    }));
    for (const one of surveyAgreement({ ...few, lines: cut })) {
      expect(one.verdict).toBe("not checked");
      expect(one.against).toBeUndefined();
    }
  });
  test("a figure of a starting form is judged by the shape bent through the others, as if it were not there", () => {
    const scale = { lengthM: 4.2, beamM: 1.5, depthM: 0.6 };
    const drawn = (x: number, measured: Parameters<typeof startingLines>[2] = []) => {
      const { form } = formFrom(startingLines("flat-bottomed skiff", scale, measured));
      const sheer = form?.lines.at(-1);
      if (!sheer) throw new Error("no form");
      return lineAt(sheer, x)[1];
    };
    const at = (atM: number, valueM: number) =>
      ({ line: "sheer", coordinate: "half-breadth", atM, valueM }) as const;
    const measured = [at(1.26, drawn(1.26) + 0.02), at(2.1, drawn(2.1) + 0.02), at(2.94, drawn(2.94) - 0.25)];
    const found = startingAgreement("flat-bottomed skiff", scale, measured, 0.002);
    expect(found.map(({ atM, verdict }) => [atM, verdict])).toEqual([
      [2.94, "differs"],
      [1.26, "agrees"],
      [2.1, "agrees"],
    ]);
    expect(found[0]?.against?.fairM).toBeCloseTo(drawn(2.94, measured.slice(0, 2)), 3);
    // one alone has the shape itself to go by, within its eight hundredths of half the beam
    const [lone] = startingAgreement("flat-bottomed skiff", scale, measured.slice(0, 1), 0.002);
    expect(lone?.against?.differsM).toBeCloseTo(0.02, 6);
    expect(lone?.against?.sigmaM).toBeGreaterThan(0.06);
  });
});
