import { describe, expect, test } from "vitest";
import { edgeOf, shareAlong, squareOff } from "../../../src/core/hull/faces/edge.js";
import {
  type Face,
  flatFace,
  frameAt,
  movedOn as moved,
  placeOn,
  twinOf,
  wayOn,
} from "../../../src/core/hull/faces/face.js";
import type { Spot } from "../../../src/core/hull/faces/patch.js";
import { stripFace } from "../../../src/core/hull/faces/strip.js";
import { formOfTape, type TapeSurvey } from "../../../src/core/hull/form/survey.js";
import { landing } from "../../../src/core/hull/marks/graduation.js";
import type { Hole, Mark } from "../../../src/core/hull/marks/mark.js";
import type { Measured } from "../../../src/core/hull/marks/network.js";
import { markSheet } from "../../../src/core/hull/marks/sheet.js";
import type { ReferencePoint, Tape } from "../../../src/core/hull/marks/tape.js";
import { twinMarks } from "../../../src/core/hull/marks/twins.js";
import { checkMarks } from "../../../src/core/hull/marks/verdict.js";
import { dot, type Point } from "../../../src/core/hull/vector.js";

// an invented utility boat, 4.6 m, measured at six stations
const survey: TapeSurvey = {
  stationsM: [0, 0.92, 1.84, 2.76, 3.68, 4.6],
  sigmaM: 0.003,
  lines: [
    { name: "keel", knuckle: true, above: "flat", heightsM: [0, 0, 0, 0.01, 0.08, 0.35] },
    {
      name: "chine",
      knuckle: true,
      above: "flat",
      halfBreadthsM: [0.71, 0.73, 0.725, 0.66, 0.43, 0],
      heightsM: [0.1, 0.11, 0.12, 0.16, 0.27, 0.5],
    },
    {
      name: "sheer",
      knuckle: true,
      above: "flat",
      halfBreadthsM: [0.83, 0.865, 0.87, 0.84, 0.63, 0],
      heightsM: [0.6, 0.6, 0.61, 0.64, 0.71, 0.8],
    },
  ],
};
const { form } = formOfTape(survey);
if (!form) throw new Error("no form");
const coaming = stripFace(form, { lower: "chine", upper: "sheer", fromM: 0.6, toM: 3.9 });
const tape: Tape = {
  sigmaM: 0.0008,
  graduationM: 0.0254 / 16,
  longestM: 5,
  lies: "on the surface",
  side: "inside",
};
const on = (face: Face, name: string, spot: Spot): ReferencePoint => ({
  name,
  at: placeOn(face, spot),
  spot,
  sigmaM: 0.0005,
});
const references = [
  on(coaming, "rowlock", [2.5, 1]),
  on(coaming, "knee end", [0.8, 1]),
  on(coaming, "breast hook", [3.8, 1]),
  on(coaming, "aft frame foot", [1.3, 0]),
  on(coaming, "fore frame foot", [2.6, 0]),
];
const upper = edgeOf(coaming, "upper");
const holes = [1.0, 1.9, 2.8].map(
  (along, i): Hole => ({
    name: `coaming lamp ${i + 1}`,
    spot: squareOff(coaming, upper, shareAlong(coaming, upper, 0, along - 0.3), 0.09),
  }),
);
const sheet = markSheet(coaming, holes, references, tape, "two tapes");

const spotted = (mark: Mark) => mark.readings.map((one) => one.from);
const readingsOf = (
  face: Face,
  refs: readonly ReferencePoint[],
  marks: readonly Mark[],
  moved: (mark: Mark) => Spot,
  slip = 0,
): Measured[] =>
  marks.flatMap((mark) =>
    refs.flatMap((ref) =>
      ref.spot
        ? [{ mark: mark.name, from: ref.name, readM: wayOn(face, ref.spot, moved(mark)).lengthM + slip }]
        : [],
    ),
  );
const network = (face: Face, refs: readonly ReferencePoint[]) => ({
  face,
  marks: sheet.marks.map((mark) => ({
    name: mark.name,
    spot: mark.spot,
    setFrom: [spotted(mark)[0] ?? "", spotted(mark)[1] ?? ""] as const,
  })),
  references: refs,
  lies: "on the surface" as const,
  sigmaM: 0.0009,
});

describe("marks on a curved side", () => {
  test("each of three lamps gets two readings, a check, an ellipse and a reason", () => {
    expect(sheet.marks.map(({ name }) => name).sort()).toEqual(holes.map(({ name }) => name));
    for (const mark of sheet.marks) {
      expect(mark.problems).toEqual([]);
      expect(mark.method).toBe("two tapes");
      expect(mark.crossingDeg).toBeGreaterThanOrEqual(30);
      expect(mark.crossingDeg).toBeLessThanOrEqual(150);
      expect(mark.check).toBeDefined();
      expect(mark.reasons.length).toBeGreaterThan(0);
      expect(mark.ellipse?.majorM).toBeLessThan(0.004);
    }
  });
  test("going to the rounded readings lands where the sheet says", () => {
    for (const mark of sheet.marks) {
      const [a, b] = mark.readings;
      const [ra, rb] = [
        references.find((r) => r.name === a?.from),
        references.find((r) => r.name === b?.from),
      ];
      if (!a || !b || !ra?.spot || !rb?.spot || !mark.rounding) continue;
      // second method: walk the promised shift and measure there
      const movedSpot = walked(coaming, mark.spot, mark.rounding);
      expect(Math.abs(wayOn(coaming, ra.spot, movedSpot).lengthM - a.roundedM)).toBeLessThan(2e-5);
      expect(Math.abs(wayOn(coaming, rb.spot, movedSpot).lengthM - b.roundedM)).toBeLessThan(2e-5);
      expect(Math.abs(a.roundedM - a.exactM)).toBeLessThanOrEqual(tape.graduationM / 2 + 1e-12);
    }
  });
  test("a mirrored boat gives mirrored marks with the same numbers", () => {
    const twin = twinOf(coaming);
    const mirroredRefs = references.map((r): ReferencePoint => ({ ...r, at: [r.at[0], -r.at[1], r.at[2]] }));
    const other = markSheet(twin, holes, mirroredRefs, tape, "two tapes");
    for (const [i, mark] of sheet.marks.entries()) {
      const twinMark = other.marks[i];
      expect(twinMark?.at[1]).toBeCloseTo(-mark.at[1], 12);
      expect(twinMark?.readings.map((r) => r.roundedM)).toEqual(mark.readings.map((r) => r.roundedM));
    }
    expect(
      twinMarks(sheet.marks, twin, mirroredRefs, tape, 0.001).every((one) => one.shared && one.shiftM < 1e-6),
    ).toBe(true);
  });
  test("where the other side is not alike, the twin says so and gets its own numbers", () => {
    const twin = twinOf(coaming);
    const off = references.map((r) =>
      r.name === "rowlock"
        ? on(twin, "rowlock", [2.49, 1])
        : { ...r, at: [r.at[0], -r.at[1], r.at[2]] as Point },
    );
    const twins = twinMarks(sheet.marks, twin, off, tape, 0.002);
    for (const mark of sheet.marks) {
      const one = twins.find(({ name }) => name === mark.name);
      expect(one?.shared).toBe(!spotted(mark).includes("rowlock"));
    }
    expect(twins.some((one) => !one.shared && one.shiftM > 0.005)).toBe(true);
  });
});

describe("checking marks", () => {
  test("readings as planned: every mark is good", () => {
    const checked = checkMarks(
      network(coaming, references),
      readingsOf(coaming, references, sheet.marks, (m) => m.spot),
      0.003,
    );
    expect(checked.explanation.faults).toEqual([]);
    expect(checked.verdicts.every((one) => one.verdict === "good")).toBe(true);
  });
  test("one mark 5 mm off is named, with the way back", () => {
    const wrong = "coaming lamp 2";
    const moved = (mark: Mark): Spot =>
      mark.name === wrong ? walked(coaming, mark.spot, [0.003, -0.004]) : mark.spot;
    const { verdicts, explanation } = checkMarks(
      network(coaming, references),
      readingsOf(coaming, references, sheet.marks, moved),
      0.003,
    );
    expect(explanation.faults).toEqual([{ kind: "misplaced mark", name: wrong }]);
    for (const one of verdicts) expect(one.verdict).toBe(one.name === wrong ? "misplaced" : "good");
    const one = verdicts.find(({ name }) => name === wrong);
    expect(one?.moveAlongM).toBeCloseTo(-0.003, 3);
    expect(one?.moveUpM).toBeCloseTo(0.004, 3);
  });
  test("one reading 5 mm off puts that reading in doubt, of that mark and no other", () => {
    const read = readingsOf(coaming, references, sheet.marks, (m) => m.spot).map((one) =>
      one.mark === "coaming lamp 3" && one.from === "rowlock" ? { ...one, readM: one.readM + 0.005 } : one,
    );
    const { verdicts, explanation } = checkMarks(network(coaming, references), read, 0.003);
    expect(explanation.faults.length).toBe(1);
    for (const one of verdicts) expect(one.verdict === "good").toBe(one.name !== "coaming lamp 3");
  });
  test("a reference point that stands 10 mm off is told from misplaced marks", () => {
    const shifted = on(coaming, "rowlock", [2.51, 1]);
    const real = references.map((r) => (r.name === "rowlock" ? shifted : r));
    // the sheet's readings were set out from the real points, so the marks follow the one that is off
    const asSet = (mark: Mark): Spot => {
      let spot = mark.spot;
      for (let turn = 0; turn < 4; turn++) {
        const [first, second] = mark.readings.map((one) => {
          const from = real.find((r) => r.name === one.from)?.spot ?? spot;
          const { along, up } = frameAt(coaming, spot);
          const way = wayOn(coaming, from, spot);
          return {
            along: dot(way.endDirection, along),
            up: dot(way.endDirection, up),
            miss: one.exactM - way.lengthM,
          };
        });
        if (!first || !second) throw new Error("two readings");
        spot = walked(coaming, spot, landing([first, second], [first.miss, second.miss]) ?? [0, 0]);
      }
      return spot;
    };
    const read = readingsOf(coaming, real, sheet.marks, asSet);
    const { explanation, referencesOff } = checkMarks(network(coaming, references), read, 0.003);
    expect(explanation.faults[0]).toEqual({ kind: "reference off", name: "rowlock" });
    expect(Math.abs(referencesOff[0]?.offM[0] ?? 0)).toBeGreaterThan(0.005);
  });
});

describe("what is refused", () => {
  const board = flatFace(
    [0, 0, 0],
    [1, 0, 0],
    [0, 0, 1],
    [
      [-1, -1],
      [1, -1],
      [1, 1],
      [-1, 1],
    ],
  );
  const hole = { name: "socket", spot: [0.2, 0.3] as const };
  const problems = (refs: ReferencePoint[], longestM = 5) =>
    markSheet(board, [hole], refs, { ...tape, longestM }, "two tapes").marks[0]?.problems.map(
      (p) => p.problem,
    );
  test("two references that cross flat", () => {
    const found = markSheet(
      board,
      [hole],
      [on(board, "a", [-0.9, 0.28]), on(board, "b", [0.9, 0.29])],
      tape,
      "two tapes",
    ).marks[0];
    expect(found?.method).toBe("none");
    expect(found?.problems[0]?.problem).toBe("poor crossing");
    expect(found?.problems[0]?.figure).toBeLessThan(30);
  });
  test("a tape too short", () =>
    expect(problems([on(board, "a", [-0.9, -0.9]), on(board, "b", [0.9, -0.9])], 0.5)).toContain(
      "unreachable by tape",
    ));
  test("three references in a line: the mirror image would read the same", () =>
    expect(problems([on(board, "a", [-0.5, 0]), on(board, "b", [0, 0]), on(board, "c", [0.5, 0])])).toContain(
      "references in a line",
    ));
  test("only two references: no check", () =>
    expect(problems([on(board, "a", [-0.5, 0]), on(board, "b", [0.5, 0])])).toEqual(["no check reading"]));
  test("a hole off the face", () =>
    expect(markSheet(board, [{ name: "x", spot: [2, 0] }], [], tape).marks[0]?.problems[0]?.problem).toBe(
      "off the face",
    ));
});

function walked(face: Face, spot: Spot, [along, up]: readonly [number, number]): Spot {
  return moved(face, spot, along, up);
}
