import { describe, expect, test } from "vitest";
import type { FaceTemplate } from "../../src/core/box/template.js";
import { boundsOf } from "../../src/drawing/bounds.js";
import type { Shape, Sheet } from "../../src/drawing/shapes.js";
import { templateParts } from "../../src/drawing/template-sheet.js";

const template = (
  widthMm: number,
  heightMm: number,
  holes: readonly (readonly [number, number])[],
): FaceTemplate => ({
  box: "fore box",
  face: "down",
  widthMm,
  heightMm,
  lidEdge: "upper",
  lidLipMm: 5,
  wallMm: 3,
  holes: holes.map(([x, y], k) => ({
    id: `lead ${k + 1}`,
    x,
    y,
    holeMm: 12.5,
    pilotMm: 3.5,
    acrossMm: 17.3,
  })),
  barMm: 100,
  squareMm: 50,
});

const papers = { letter: [215.9, 279.4], a4: [210, 297] } as const;

/** The face on as many upright sheets as it takes, with the room that a page leaves it. */
function sheetsOf(face: FaceTemplate, paper: keyof typeof papers): Sheet[] {
  const [widthMm, heightMm] = papers[paper];
  const area = { left: 10, bottom: 10, widthMm: widthMm - 20, heightMm: heightMm - 34 };
  return templateParts(face, area).map(({ part, shapes }) => ({ title: part, widthMm, heightMm, shapes }));
}

const circles = (sheet: Sheet, r: number) =>
  sheet.shapes.flatMap((shape) => (shape.kind === "circle" && Math.abs(shape.r - r) < 1e-9 ? [shape] : []));
const lines = (sheet: Sheet) => sheet.shapes.flatMap((shape) => (shape.kind === "line" ? [shape] : []));

function extent(shape: Shape): readonly number[] {
  if (shape.kind === "line") return [shape.x1, shape.y1, shape.x2, shape.y2];
  if (shape.kind === "circle")
    return [shape.cx - shape.r, shape.cy - shape.r, shape.cx + shape.r, shape.cy + shape.r];
  return [];
}

/** Nothing but words may come near the edge a printer does not reach. */
function onPaper(sheet: Sheet): void {
  for (const shape of sheet.shapes) {
    const [x1 = 10, y1 = 10, x2 = 10, y2 = 10] = extent(shape);
    expect(Math.min(x1, x2)).toBeGreaterThanOrEqual(5);
    expect(Math.min(y1, y2)).toBeGreaterThanOrEqual(5);
    expect(Math.max(x1, x2)).toBeLessThanOrEqual(sheet.widthMm - 5);
    expect(Math.max(y1, y2)).toBeLessThanOrEqual(sheet.heightMm - 5);
  }
}

describe("one sheet", () => {
  const face = template(176, 78, [
    [30, 40],
    [80.25, 40],
    [140, 45.5],
  ]);
  test.each(["letter", "a4"] as const)("%s: centres as far apart as in the plan", (paper) => {
    const [sheet, ...more] = sheetsOf(face, paper);
    expect(more).toEqual([]);
    if (sheet === undefined) throw new Error("a sheet");
    const at = circles(sheet, 6.25);
    expect(at).toHaveLength(3);
    face.holes.forEach((hole, k) => {
      const [here, first] = [at[k], at[0]];
      expect((here?.cx ?? 0) - (first?.cx ?? 0)).toBeCloseTo(hole.x - 30, 9);
      expect((here?.cy ?? 0) - (first?.cy ?? 0)).toBeCloseTo(hole.y - 40, 9);
    });
    expect(lines(sheet).some((one) => one.y1 === one.y2 && Math.abs(one.x2 - one.x1 - 100) < 1e-9)).toBe(
      true,
    );
    onPaper(sheet);
  });
});

describe("tiles", () => {
  const holes = [
    [20, 20],
    [184, 60],
    [300, 250],
    [390, 20],
  ] as const;
  const sheets = sheetsOf(template(420, 300, holes), "a4");
  test("every sheet proves its print and stays on the paper", () => {
    expect(sheets.length).toBe(6);
    for (const sheet of sheets) {
      expect(lines(sheet).some((one) => one.y1 === one.y2 && Math.abs(one.x2 - one.x1 - 100) < 1e-9)).toBe(
        true,
      );
      onPaper(sheet);
    }
    expect(new Set(sheets.map((sheet) => sheet.title)).size).toBe(6);
  });
  test("each hole is whole on at least one sheet", () => {
    expect(sheets.reduce((sum, sheet) => sum + circles(sheet, 6.25).length, 0)).toBeGreaterThanOrEqual(
      holes.length,
    );
  });
  test("neighbours share registration marks at the same points of the face", () => {
    const marks = sheets.map((sheet) => circles(sheet, 2));
    for (const list of marks) expect(list.length).toBeGreaterThanOrEqual(2);
    // Sheets 1.1 and 1.2 share a seam: the marks on it are as far apart on both.
    const [a, b] = [marks[0] ?? [], marks[1] ?? []];
    const gaps = (list: typeof a) =>
      list.flatMap((p, i) => list.slice(i + 1).map((q) => Math.hypot(p.cx - q.cx, p.cy - q.cy)));
    expect(gaps(a).some((gap) => gaps(b).some((other) => Math.abs(gap - other) < 1e-9))).toBe(true);
  });
});

describe("registration marks keep clear", () => {
  // A hole where each mark would stand if nothing were there: in the middle of the overlaps of A4 and along them.
  const grid = Array.from({ length: 13 }, (_, k) => 20 + 31.5 * k);
  const holes = grid.flatMap((x) => [22, 64, 106, 148, 190, 232, 274].map((y) => [x, y] as const));
  test.each([
    ["a4", template(420, 300, holes)],
    ["letter", template(420, 300, holes)],
    [
      "a4",
      template(
        420,
        78,
        grid.flatMap((x) => [[x, 16] as const, [x, 58] as const]),
      ),
    ],
  ] as const)("%s: of holes, nuts and words, and two stay on every overlap", (paper, face) => {
    const sheets = sheetsOf(face, paper);
    expect(sheets.length).toBeGreaterThan(1);
    for (const sheet of sheets) {
      const marks = circles(sheet, 2);
      const title = sheet.title;
      const [row = 0, column = 0, rows = 0, columns = 0] = (title.match(/\d+/g) ?? []).map(Number);
      // Seen from the middle of the sheet's face: an overlap at the left, right, lower or upper side.
      const sides = [column > 1, column < columns, row > 1, row < rows].filter(Boolean).length;
      expect(marks.length, title).toBeGreaterThanOrEqual(sides === 1 ? 2 : sides + 1);
      const words = sheet.shapes.filter((shape) => shape.kind === "text" && /^\d+: Ø/.test(shape.text));
      for (const { cx, cy } of marks) {
        for (const nut of circles(sheet, 17.3 / 2))
          expect(Math.hypot(nut.cx - cx, nut.cy - cy), title).toBeGreaterThan(4 + 17.3 / 2);
        for (const { minX, minY, maxX, maxY } of words.map(boundsOf))
          expect(
            Math.hypot(Math.max(0, minX - cx, cx - maxX), Math.max(0, minY - cy, cy - maxY)),
            title,
          ).toBeGreaterThan(4);
        const others = marks.filter((other) => other.cx !== cx || other.cy !== cy);
        for (const other of others) expect(Math.hypot(other.cx - cx, other.cy - cy)).toBeGreaterThan(8);
      }
    }
  });
});
