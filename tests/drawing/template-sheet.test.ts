import { describe, expect, test } from "vitest";
import type { FaceTemplate } from "../../src/core/box/template.js";
import type { Shape, Sheet } from "../../src/drawing/shapes.js";
import { templateSheets } from "../../src/drawing/template-sheet.js";

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
    const [sheet, ...more] = templateSheets(face, paper);
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
  test("a wide face lies across the sheet", () => {
    const [sheet] = templateSheets(template(250, 100, [[20, 50]]), "letter");
    expect(sheet).toMatchObject({ widthMm: 279.4, heightMm: 215.9 });
  });
});

describe("tiles", () => {
  const holes = [
    [20, 20],
    [184, 60],
    [300, 250],
    [390, 20],
  ] as const;
  const sheets = templateSheets(template(420, 300, holes), "a4");
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
