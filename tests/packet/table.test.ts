import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { boundsOf } from "../../src/drawing/bounds.js";
import { textWidthMm } from "../../src/drawing/fonts/measure.js";
import { box } from "../../src/drawing/make.js";
import { svgSheet } from "../../src/drawing/writers/svg.js";
import { flow } from "../../src/packet/flow.js";
import { paperOf } from "../../src/packet/page.js";
import { type Piece, together } from "../../src/packet/piece.js";
import { groupedTable, table } from "../../src/packet/table.js";
import { expectPicture } from "../drawing/picture.js";
import { overlaps } from "./pages.js";

const paper = paperOf("a4");
const heightMm = paper.top - paper.bottom;
const columns = [
  { heading: "Lamp", share: 3 },
  { heading: "Draws, W", share: 1, align: "right" },
  { heading: "Colours", share: 2 },
  { heading: "Remark", share: 4 },
] as const;
const row = (index: number, remark: string) => ({
  cells: [
    { words: [{ text: `lamp ${index}`, weight: "semibold" as const }] },
    (index * 1.25).toFixed(2),
    {
      words: [
        { text: "red (out)", swatch: "red" as const },
        { text: "black (return)", swatch: "black" as const },
      ],
    },
    remark,
  ],
});
const sheet = (shapes: ReturnType<typeof flow>[number]) => ({
  title: "table",
  widthMm: paper.widthMm,
  heightMm: paper.heightMm,
  shapes,
});

describe("a table", () => {
  const rows = Array.from({ length: 40 }, (_, index) =>
    row(index, "soldered and sleeved, ".repeat(index % 9)),
  );
  const pages = flow(table(columns, rows, 200), paper);

  test("as saved", () => expectPicture("table.svg", svgSheet(sheet(pages[0] ?? []))));

  test("repeats its headings on every page and keeps every row, whole and in order", () => {
    expect(pages.length).toBeGreaterThan(1);
    const seen: string[] = [];
    for (const shapes of pages) {
      const words = shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : []));
      expect(words.filter((one) => one === "Remark")).toHaveLength(1);
      seen.push(...words.filter((one) => /^lamp \d+$/.test(one)));
      expect(words.filter((one) => one === "red (out)")).toHaveLength(
        words.filter((one) => one === "black (return)").length,
      );
      expect(overlaps(sheet(shapes))).toEqual([]);
    }
    expect(seen).toEqual(rows.map((_, index) => `lamp ${index}`));
  });

  test("numbers end on one line", () => {
    const ends = pages
      .flat()
      .flatMap((shape) => (shape.kind === "text" && /^\d+\.\d\d$/.test(shape.text) ? [shape.x] : []));
    expect(ends).toHaveLength(40);
    expect(new Set(ends).size).toBe(1);
  });

  test("numbers of unlike figures stand by their decimal point, in groups too; words among them stay at the edge", () => {
    const two = [
      { heading: "Lamp", share: 1 },
      { heading: "Draws", share: 1, align: "right" },
    ] as const;
    const draws = ["1.25\u00a0W", "40\u00a0W", "0.5\u00a0W", "none yet"];
    const rows = draws.map((one) => ({ cells: ["lamp", one] }));
    for (const pieces of [
      table(two, rows, 200),
      groupedTable(
        two,
        [
          { name: "fore", rows: rows.slice(0, 2) },
          { name: "aft", rows: rows.slice(2) },
        ],
        200,
        "",
      ),
    ]) {
      const drawn = flow(pieces, paper).flat();
      const place = (words: string) => {
        const found = drawn.find((shape) => shape.kind === "text" && shape.text === words);
        if (found?.kind !== "text") throw new Error(`${words} is not drawn`);
        return found.x - textWidthMm(words.replace(/^\d+/, ""), found.sizeMm, found.weight);
      };
      expect(place("40\u00a0W")).toBeCloseTo(place("1.25\u00a0W"), 6);
      expect(place("0.5\u00a0W")).toBeCloseTo(place("1.25\u00a0W"), 6);
      const ends = drawn.flatMap((shape) =>
        shape.kind === "text" && shape.anchor === "end" ? [shape.x] : [],
      );
      expect(drawn.find((shape) => shape.kind === "text" && shape.text === "none yet")).toMatchObject({
        x: Math.max(...ends),
      });
    }
  });

  test("whatever its length, no row of it stands alone on a page", () => {
    for (let count = 2; count <= 80; count += 1) {
      const sheets = flow(
        table(
          columns,
          Array.from({ length: count }, (_, index) => row(index, "")),
          200,
        ),
        paper,
      );
      for (const shapes of sheets) {
        const lamps = shapes.filter((shape) => shape.kind === "text" && /^lamp \d+$/.test(shape.text));
        expect(lamps.length).toBeGreaterThanOrEqual(2);
      }
    }
  });

  test("nor does a group of one row at the end of a table of groups", () => {
    const columnsOfOne = [{ heading: "Lamp", share: 1 }] as const;
    for (let count = 1; count <= 40; count += 1) {
      const groups = Array.from({ length: count }, (_, index) => ({
        name: `place ${index}`,
        rows: [{ cells: [`lamp ${index}`] }],
      }));
      const sheets = flow(groupedTable(columnsOfOne, groups, 200, " (continued)"), paper);
      const last = sheets.at(-1)?.filter((shape) => shape.kind === "text" && shape.text.startsWith("lamp "));
      expect(last?.length, `${count}`).toBeGreaterThanOrEqual(Math.min(2, count));
    }
  });

  test("a square to tick and a field to write in stand in their columns, one a row, none over another", () => {
    const hand = [
      { heading: "", share: 6, hand: "tick" },
      { heading: "Test", share: 40 },
      { heading: "Reads", share: 20, hand: "write" },
    ] as const;
    const rows = ["one", "two", "three"].map((one) => ({ cells: ["", one, ""] }));
    const written = flow(table(hand, [{ cells: ["", "one", "12.1 V"] }], 132), paper).flat();
    // the square alone: where a reading stands there is nothing to write
    expect(written.filter(({ kind }) => kind === "polyline")).toHaveLength(1);
    const boxes = flow(table(hand, rows, 132), paper)
      .flat()
      .filter(({ kind }) => kind === "polyline")
      .map(boundsOf);
    const at = (left: number, right: number) =>
      boxes
        .filter(({ minX, maxX }) => minX >= paper.left + left && maxX <= paper.left + right)
        .toSorted((a, b) => b.maxY - a.maxY);
    for (const column of [at(0, 12), at(92, 132)]) {
      expect(column).toHaveLength(3);
      for (const [index, one] of column.entries())
        expect(one.maxY).toBeLessThan(column[index - 1]?.minY ?? Number.POSITIVE_INFINITY);
    }
  });

  test("a row of the wrong length is the caller's mistake", () =>
    expect(() => table(columns, [{ cells: ["one"] }], 200)).toThrow(RangeError));
});

describe("flow", () => {
  const piece = (size: number, keepWithNext: boolean): Piece => ({
    heightMm: size,
    keepWithNext,
    draw: (x, top) => [box(x, top - size, 10, size)],
  });

  test("keeps order, cuts nothing, parts nothing that belongs together", () => {
    const sizes = fc.array(fc.tuple(fc.double({ min: 1, max: heightMm / 3, noNaN: true }), fc.boolean()), {
      minLength: 1,
      maxLength: 40,
    });
    fc.assert(
      fc.property(sizes, fc.integer({ min: 1, max: 3 }), (list, columnCount) => {
        // At most two headings in a row, as on a page.
        const pieces = list.map(([size, keep], index) => piece(size, keep && index % 3 !== 2));
        const pages = flow(pieces, paper, columnCount);
        const boxes = pages.flatMap((shapes, page) => shapes.map((shape) => ({ page, ...boundsOf(shape) })));
        expect(boxes).toHaveLength(pieces.length);
        for (const [index, { page, minX, minY, maxY }] of boxes.entries()) {
          expect(minY).toBeGreaterThanOrEqual(paper.bottom - 1e-6);
          expect(maxY).toBeLessThanOrEqual(paper.top + 1e-6);
          expect(maxY - minY).toBeCloseTo(list[index]?.[0] ?? 0, 9);
          const before = boxes[index - 1];
          if (before === undefined) continue;
          const together = before.page === page && before.minX === minX;
          if (together) expect(maxY).toBeCloseTo(before.minY, 9);
          else expect(maxY).toBeCloseTo(paper.top, 9);
          if (pieces[index - 1]?.keepWithNext) expect(together).toBe(true);
        }
      }),
      { numRuns: 200, seed: 7 },
    );
  });

  test("what is read in one go is not parted, if it is low enough; else it flows", () => {
    const before = piece(heightMm - 30, false);
    const pagesOf = (count: number) =>
      flow([before, ...together(Array.from({ length: count }, () => piece(10, false)))], paper).map(
        (shapes) => shapes.length,
      );
    expect(pagesOf(3)).toEqual([4]);
    expect(pagesOf(4)).toEqual([1, 4]);
    expect(pagesOf(8)).toEqual([1, 8]);
    expect(pagesOf(9)).toEqual([4, 6]);
  });

  test("refuses what no page holds", () =>
    expect(() => flow([piece(heightMm + 1, false)], paper)).toThrow(RangeError));
});
