/** Own non-negative least squares against scipy.optimize.nnls (BSD licence) on seeded questions, to 1e-8 of the solution's size. */
import { spawnSync } from "node:child_process";
import { expect, test } from "vitest";
import { seededNumbers } from "../../src/core/parts/cuts/seeded.js";
import { nonNegativeLeastSquares } from "../../src/core/proving/nnls.js";

const script = `
import sys, json, numpy as np
from scipy.optimize import nnls
out = []
for q in json.load(sys.stdin):
    x, r = nnls(np.array(q["a"]).T, np.array(q["b"]))
    out.append({"x": x.tolist(), "r": float(r)})
json.dump(out, sys.stdout)
`;

test("200 questions, tall and square, scales from 0.001 to 1000", () => {
  const questions = Array.from({ length: 200 }, (_, seed) => {
    const random = seededNumbers(900 + seed);
    const columns = 1 + Math.floor(random() * 15);
    const rows = columns + Math.floor(random() * 20);
    const scale = 10 ** (6 * random() - 3);
    const number = () => scale * (2 * random() - 1);
    const a = Array.from({ length: columns }, () => Array.from({ length: rows }, number));
    return { a, b: Array.from({ length: rows }, number) };
  });
  const run = spawnSync("python3", ["-c", script], { input: JSON.stringify(questions), encoding: "utf8" });
  if (run.status !== 0) throw new Error(`python3 with scipy is required: ${run.stderr}`);
  const answers: { x: number[]; r: number }[] = JSON.parse(run.stdout);
  questions.forEach(({ a, b }, i) => {
    const own = nonNegativeLeastSquares(
      a.map((column) => Float64Array.from(column)),
      Float64Array.from(b),
    );
    const size = Math.max(1, ...(answers[i]?.x ?? []));
    answers[i]?.x.forEach((wanted, k) => {
      expect(Math.abs((own.x[k] ?? Number.NaN) - wanted) / size, `question ${i}`).toBeLessThan(1e-8);
    });
    expect(Math.abs(own.residual - (answers[i]?.r ?? 0))).toBeLessThan(1e-8 * Math.max(1, own.residual));
  });
});

test("refuses columns of unequal length and figures that are not finite", () => {
  expect(() => nonNegativeLeastSquares([new Float64Array(2)], new Float64Array(3))).toThrow(RangeError);
  expect(() => nonNegativeLeastSquares([Float64Array.of(Number.NaN)], Float64Array.of(1))).toThrow(
    RangeError,
  );
});
