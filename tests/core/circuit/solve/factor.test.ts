import { describe, expect, test } from "vitest";
import { eliminationOrder } from "../../../../src/core/circuit/solve/elimination-order.js";
import { sparseFactor } from "../../../../src/core/circuit/solve/factor.js";
import { fillPattern } from "../../../../src/core/circuit/solve/fill-pattern.js";
import { seeded } from "../../../laws/generated-network.js";

/** A random unsymmetric matrix with heavy diagonal, its entries off the diagonal, and A · x. */
function randomSystem(seed: number, size: number, entries: number) {
  const random = seeded(seed);
  const rows = Int32Array.from({ length: entries }, () => Math.floor(random() * size));
  const columns = Int32Array.from({ length: entries }, () => Math.floor(random() * size));
  const off = Float64Array.from({ length: entries }, () => random() - 0.5);
  const x = Float64Array.from({ length: size }, () => random());
  const b = x.map((value) => value * (entries + 1));
  off.forEach((value, k) => {
    b[Number(rows[k])] = Number(b[Number(rows[k])]) + value * Number(x[Number(columns[k])]);
  });
  return { rows, columns, off, x, b };
}

describe("factors", () => {
  test.each([
    [1, 1, 0],
    [2, 5, 4],
    [3, 40, 60],
    [4, 40, 400],
    [5, 300, 700],
    [6, 900, 1500],
  ])("seed %i: %i unknowns, %i entries solve back to what they were made from", (seed, size, entries) => {
    const { rows, columns, off, x, b } = randomSystem(seed, size, entries);
    const pattern = fillPattern(size, rows, columns);
    const matrix = sparseFactor(pattern);
    const place = (i: number): number => Number(pattern.place[i]);
    const add = (r: number, c: number, value: number): void => {
      const at = matrix.entry(place(r), place(c));
      matrix.values[at] = Number(matrix.values[at]) + value;
    };
    for (let i = 0; i < size; i++) add(i, i, entries + 1);
    for (const [k, value] of off.entries()) add(Number(rows[k]), Number(columns[k]), value);
    const answer = new Float64Array(size);
    b.forEach((value, i) => {
      answer[place(i)] = value;
    });
    expect(matrix.factor()).toBe(0);
    matrix.solve(answer);
    const error = x.map((value, i) => Math.abs(Number(answer[place(i)]) - value));
    expect(Math.max(...error)).toBeLessThan(1e-12);
  });

  test("b · A⁻¹ · b of a symmetric matrix is what a whole solve gives, and leaves b empty", () => {
    const { rows, columns, off } = randomSystem(7, 60, 90);
    const pattern = fillPattern(60, rows, columns);
    const matrix = sparseFactor(pattern);
    const place = (i: number): number => Number(pattern.place[i]);
    const add = (r: number, c: number, value: number): void => {
      const at = matrix.entry(place(r), place(c));
      matrix.values[at] = Number(matrix.values[at]) + value;
    };
    for (let i = 0; i < 60; i++) add(i, i, 91);
    for (const [k, value] of off.entries()) {
      const [r, c] = [Number(rows[k]), Number(columns[k])];
      if (r === c) continue;
      add(r, c, value);
      add(c, r, value);
    }
    expect(matrix.factor()).toBe(0);
    const b = new Float64Array(60);
    b[place(3)] = 1;
    b[place(41)] = -1;
    const solved = b.slice();
    matrix.solve(solved);
    const whole = b.reduce((sum, value, i) => sum + value * Number(solved[i]), 0);
    expect(Math.abs(matrix.square(b) / whole - 1)).toBeLessThan(1e-12);
    expect(b.every((value) => value === 0)).toBe(true);
  });

  test("a singular matrix is told, not divided by", () => {
    const matrix = sparseFactor(fillPattern(2, Int32Array.of(0), Int32Array.of(1)));
    matrix.values.fill(1);
    expect(matrix.factor()).toBe(-1);
  });
});

describe("order of elimination", () => {
  test.each([10, 1000, 20000])(
    "a chain of %i, a star and a comb keep at most two entries a column",
    (length) => {
      const chain = fillPattern(
        length,
        Int32Array.from({ length: length - 1 }, (_, i) => i),
        Int32Array.from({ length: length - 1 }, (_, i) => i + 1),
      );
      expect(chain.row.length).toBe(length - 1);
      const star = fillPattern(
        length,
        new Int32Array(length - 1),
        Int32Array.from({ length: length - 1 }, (_, i) => i + 1),
      );
      expect(star.row.length).toBe(length - 1);
      const rows: number[] = [];
      const columns: number[] = [];
      for (let i = 0; i < length; i++) {
        rows.push(0, 1 + i);
        columns.push(1 + i, 1 + length + i);
        if (i > 0) {
          rows.push(length + i);
          columns.push(1 + length + i);
        }
      }
      const comb = fillPattern(1 + 2 * length, Int32Array.from(rows), Int32Array.from(columns));
      expect(comb.row.length).toBeLessThanOrEqual(2 * (1 + 2 * length));
    },
  );

  test("a grid fills in about n · log n, not n²", () => {
    const side = 60;
    const rows: number[] = [];
    const columns: number[] = [];
    for (let i = 0; i < side * side; i++) {
      if (i % side < side - 1) {
        rows.push(i);
        columns.push(i + 1);
      }
      if (i + side < side * side) {
        rows.push(i);
        columns.push(i + side);
      }
    }
    const { row, size } = fillPattern(side * side, Int32Array.from(rows), Int32Array.from(columns));
    expect(row.length).toBeLessThan(2 * size * Math.log2(size));
  });

  test("each unknown comes once, and what waits for a region comes after it", () => {
    const start = Int32Array.of(0, 2, 4, 6, 8);
    const neighbour = Int32Array.of(1, 3, 0, 2, 1, 3, 2, 0);
    const waiting = { regionOf: Int32Array.of(-1, 0, 0, -1), waitsFor: Int32Array.of(0, -1, -1, -1) };
    const order = [...eliminationOrder({ start, neighbour }, waiting)];
    expect(order.toSorted()).toEqual([0, 1, 2, 3]);
    expect(order.indexOf(0)).toBeGreaterThan(Math.max(order.indexOf(1), order.indexOf(2)));
  });
});
