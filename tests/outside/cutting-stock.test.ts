import { readFileSync } from "node:fs";
import highs from "highs";
import { beforeAll, describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { solveCuts } from "../../src/core/parts/cuts/solve-cuts.js";
import type { CutPlan, CutRequest } from "../../src/core/parts/cuts/types.js";
import { readPlan } from "../../src/core/plan/read.js";
import { milpText, type SolveMilp } from "./milp.js";

/** Identical stock at one price each: the textbook's question 'how many'. */
function rolls(
  lengthMm: number,
  demand: readonly (readonly [lengthMm: number, count: number])[],
): CutRequest {
  return {
    kind: "textbook",
    pieces: demand.flatMap(([length, count], i) =>
      Array.from({ length: count }, (_, k) => ({ id: `${i}-${k}`, lengthMm: length })),
    ),
    stock: [{ id: "roll", lengthMm, source: "new", count: "any", priceMinor: 1 }],
  };
}

function planOf(request: CutRequest): CutPlan {
  const answer = solveCuts(request);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.plan;
}

describe("published instances with known optima", () => {
  // Published: encyclopedia article "Cutting stock problem": 5600 mm masters, 13 widths, optimum 73, waste 0.401 %.
  test("paper machine, 219 rolls of 13 widths: 73 masters", () => {
    const plan = planOf(
      rolls(5600, [
        [1380, 22],
        [1520, 25],
        [1560, 12],
        [1710, 14],
        [1820, 18],
        [1880, 18],
        [1930, 20],
        [2000, 10],
        [2050, 12],
        [2100, 14],
        [2140, 16],
        [2150, 18],
        [2200, 20],
      ]),
    );
    expect(plan.lengths).toHaveLength(73);
    expect(plan.proof).toBe("proven");
    expect(plan.pieceMm).toBe(407_160);
    expect(1 - plan.pieceMm / plan.total.openedMm).toBeCloseTo(0.00401, 5);
  });

  // V. Chvátal, Linear Programming (1983), chapter 13: raws of 100 in, optimum 453 (relaxed 452.25). Recalled, status memory.
  test("raws of 100 in, finals of 45, 36, 31 and 14 in: 453 raws", () => {
    const plan = planOf(
      rolls(1000, [
        [450, 97],
        [360, 610],
        [310, 395],
        [140, 211],
      ]),
    );
    expect(plan.total.priceMinor).toBe(453);
    expect(plan.proof).toBe("proven");
  });

  // W. Winston, Operations Research, cutting-stock example: 17-ft boards, 25 of 3 ft, 20 of 5 ft, 15 of 9 ft. The instance
  // is recalled (status memory); its optimum is computed: 310 ft of pieces need 18.2 boards, and 19 do.
  test("boards of 17 ft", () => {
    const plan = planOf(
      rolls(17, [
        [9, 15],
        [5, 20],
        [3, 25],
      ]),
    );
    expect(plan.total.priceMinor).toBe(19);
    expect(plan.proof).toBe("proven");
  });
});

describe("triplets after Falkenauer: by construction exactly three pieces fill each bin", () => {
  test.each([20, 40])("%i bins", (bins) => {
    let state = bins;
    const next = (): number => {
      state = (state * 48_271) % 2_147_483_647;
      return state / 2_147_483_647;
    };
    const demand: [number, number][] = [];
    for (let k = 0; k < bins; k += 1) {
      const first = 380 + Math.floor(next() * 110);
      const second = 250 + Math.floor(next() * ((1000 - first) / 2 - 250));
      demand.push([first, 1], [second, 1], [1000 - first - second, 1]);
    }
    const plan = planOf(rolls(1000, demand));
    expect(plan.bound.priceMinor).toBe(bins);
    expect(plan.total.priceMinor).toBeLessThanOrEqual(bins + 1);
    if (plan.proof === "proven") expect(plan.total.priceMinor).toBe(bins);
  });
});

describe("against a solver of mixed-integer programs (HiGHS)", () => {
  let solve: SolveMilp;
  beforeAll(async () => {
    // The package's types are those of its CommonJS form, where the loader is `default`; the module form is the loader itself.
    const loader: unknown = highs;
    const load = typeof loader === "function" ? (loader as typeof highs.default) : highs.default;
    const solver = await load();
    solve = (problem) => {
      const answer = solver.solve(milpText(problem), { mip_rel_gap: 0, mip_abs_gap: 0, output_flag: false });
      if (answer.Status === "Infeasible") return { status: "none", values: [], objective: Number.NaN };
      const values = problem.columns.map((_, i) => {
        const column = answer.Columns[`x${i}`];
        return column !== undefined && "Primal" in column ? (column.Primal ?? 0) : 0;
      });
      return {
        status: answer.Status === "Optimal" ? "optimal" : "unknown",
        values,
        objective: answer.ObjectiveValue,
      };
    };
  });

  test.each(Array.from({ length: 25 }, (_, seed) => seed + 1))("mixed stock, seed %i", (seed) => {
    let state = seed * 7919;
    const whole = (least: number, most: number): number => {
      state = (state * 48_271) % 2_147_483_647;
      return least + Math.floor((state / 2_147_483_647) * (most - least + 1));
    };
    const request: CutRequest = {
      kind: "mixed",
      pieces: Array.from({ length: whole(4, 9) }, (_, k) => ({ id: `p${k}`, lengthMm: whole(3, 40) * 100 })),
      stock: [
        { id: "offcut a", lengthMm: whole(5, 60) * 100, source: "offcut", count: 1 },
        { id: "offcut b", lengthMm: whole(5, 60) * 100, source: "offcut", count: 2 },
        { id: "short spool", lengthMm: 5000, source: "new", count: "any", priceMinor: whole(400, 600) },
        { id: "long spool", lengthMm: 10_000, source: "new", count: "any", priceMinor: whole(800, 1000) },
      ],
      ...(seed % 3 === 0
        ? { soldByLength: { id: "off the reel", stepMm: 1000, pricePerStepMinor: whole(90, 130) } }
        : {}),
    };
    const own = planOf(request);
    expect(own.proof).toBe("proven");
    const money = witness(request, solve);
    expect(own.total.priceMinor).toBe(money);
  });

  // The pieces of the utility example, with the wire its comment offers: in fifths of a millimetre, as a foot is 304.8 mm.
  test("the cut list of the utility example costs what the solver proves", () => {
    const read = readPlan(readFileSync(new URL("../../examples/utility.yaml", import.meta.url), "utf8"));
    if (!read.ok) throw new Error(JSON.stringify(read.problems[0]));
    const kinds = workOutWhole(read.plan).layout.cuts.kinds;
    const kind = kinds.find((one) => one.kind === "18 AWG, 2 cores");
    expect(kind?.plan?.proof).toBe("proven");
    const request: CutRequest = {
      kind: "18 AWG, 2 cores",
      pieces: (kind?.pieces ?? []).map(({ piece, lengthMm }) => ({ id: piece, lengthMm: lengthMm * 5 })),
      stock: [
        // an inch of the old end goes first
        { id: "offcut a", lengthMm: Math.floor(11 * 1524) - 127, source: "offcut", count: 1 },
        { id: "offcut b", lengthMm: Math.floor(6.5 * 1524) - 127, source: "offcut", count: 2 },
        { id: "spool", lengthMm: 100 * 1524, source: "new", count: "any", priceMinor: 4600 },
      ],
      soldByLength: { id: "off the reel", stepMm: 1524, pricePerStepMinor: 55 },
    };
    expect(request.pieces.length).toBeGreaterThan(12);
    expect(kind?.plan?.total.priceMinor).toBe(witness(request, solve));
  }, 60_000);
});

/** Least money by a direct statement of the question, made without the project's own model. */
function witness(request: CutRequest, solve: SolveMilp): number {
  const n = request.pieces.length;
  const bins = request.stock.flatMap((stock) =>
    Array.from({ length: stock.count === "any" ? n : stock.count }, () => ({
      lengthMm: stock.lengthMm,
      price: stock.priceMinor ?? 0,
    })),
  );
  const width = n + 1;
  const column = (bin: number, piece: number): number => bin * width + piece;
  const sold = request.soldByLength;
  const sheet = bins.flatMap((bin) =>
    Array.from({ length: width }, (_, k) => ({
      cost: k === n ? bin.price : 0,
      lower: 0,
      upper: 1,
      integer: true,
    })),
  );
  const soldAt = sheet.length;
  if (sold !== undefined) {
    for (let k = 0; k <= n; k += 1) {
      sheet.push({
        cost: k === n ? sold.pricePerStepMinor : 0,
        lower: 0,
        upper: k === n ? 1000 : 1,
        integer: true,
      });
    }
  }
  const rows = [
    ...bins.map((bin, b) => ({
      lower: Number.NEGATIVE_INFINITY,
      upper: 0,
      terms: [
        ...request.pieces.map((piece, p) => [column(b, p), piece.lengthMm] as const),
        [column(b, n), -bin.lengthMm] as const,
      ],
    })),
    ...request.pieces.map((_, p) => ({
      lower: 1,
      upper: 1,
      terms: [
        ...bins.map((_bin, b) => [column(b, p), 1] as const),
        ...(sold === undefined ? [] : [[soldAt + p, 1] as const]),
      ],
    })),
  ];
  if (sold !== undefined) {
    rows.push({
      lower: Number.NEGATIVE_INFINITY,
      upper: 0,
      terms: [
        ...request.pieces.map((piece, p) => [soldAt + p, piece.lengthMm] as const),
        [soldAt + n, -sold.stepMm] as const,
      ],
    });
  }
  const answer = solve({ columns: sheet, rows });
  if (answer.status !== "optimal") throw new Error(`witness: ${answer.status}`);
  return Math.round(answer.objective);
}
