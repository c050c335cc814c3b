import { describe, expect, test } from "vitest";
import { solveCuts } from "../../../src/core/parts/cuts/solve-cuts.js";
import type { CutPlan, CutRequest } from "../../../src/core/parts/cuts/types.js";

function numbers(seed: number): (least: number, most: number) => number {
  let state = seed * 7919 + 1;
  return (least, most) => {
    state = (state * 48_271) % 2_147_483_647;
    return least + Math.floor((state / 2_147_483_647) * (most - least + 1));
  };
}

/** Least (money, opened) over every way to part the pieces into lengths, by trying them all. */
function bruteForce(request: CutRequest): readonly [number, number] | undefined {
  const bins = request.stock.flatMap((stock) =>
    Array.from({ length: stock.count === "any" ? request.pieces.length : stock.count }, () => stock),
  );
  let best: readonly [number, number] | undefined;
  const left = bins.map((bin) => bin.lengthMm);
  const place = (at: number): void => {
    const piece = request.pieces[at];
    if (piece === undefined) {
      const used = bins.filter((bin, b) => left[b] !== bin.lengthMm);
      const money = used.reduce((sum, bin) => sum + (bin.source === "new" ? (bin.priceMinor ?? 0) : 0), 0);
      const opened = used.reduce((sum, bin) => sum + bin.lengthMm, 0);
      if (best === undefined || money < best[0] || (money === best[0] && opened < best[1]))
        best = [money, opened];
      return;
    }
    const seen = new Set<string>();
    for (let b = 0; b < bins.length; b += 1) {
      const key = `${bins[b]?.id} ${left[b]}`;
      if (seen.has(key) || (left[b] ?? 0) < piece.lengthMm) continue;
      seen.add(key);
      left[b] = (left[b] ?? 0) - piece.lengthMm;
      place(at + 1);
      left[b] = (left[b] ?? 0) + piece.lengthMm;
    }
  };
  place(0);
  return best;
}

/** What every cut list obeys. */
function obeysLaws(request: CutRequest, plan: CutPlan): void {
  const cut = plan.lengths.flatMap((length) => length.cuts.map((one) => one.piece)).sort();
  expect(cut).toEqual(request.pieces.map((piece) => piece.id).sort());
  for (const length of plan.lengths) {
    let at = 0;
    let last = Number.POSITIVE_INFINITY;
    for (const one of length.cuts) {
      expect(one.fromMm).toBeGreaterThanOrEqual(at);
      expect(one.toMm - one.fromMm).toBe(one.lengthMm);
      expect(one.lengthMm).toBeLessThanOrEqual(last);
      at = one.toMm;
      last = one.lengthMm;
    }
    expect(at).toBeLessThanOrEqual(length.lengthMm);
  }
  for (const stock of request.stock) {
    if (stock.count === "any") continue;
    expect(plan.lengths.filter((length) => length.stock === stock.id).length).toBeLessThanOrEqual(
      stock.count,
    );
  }
  expect(plan.bound.priceMinor).toBeLessThanOrEqual(plan.total.priceMinor);
}

describe("against every way there is", () => {
  test.each(Array.from({ length: 60 }, (_, seed) => seed + 1))("seed %i", (seed) => {
    const whole = numbers(seed);
    const request: CutRequest = {
      kind: "any",
      pieces: Array.from({ length: whole(1, 6) }, (_, k) => ({ id: `p${k}`, lengthMm: whole(1, 30) * 100 })),
      stock: [
        { id: "a", lengthMm: whole(3, 50) * 100, source: "offcut", count: whole(0, 2) },
        { id: "b", lengthMm: whole(3, 50) * 100, source: "spool", count: 1 },
        {
          id: "c",
          lengthMm: whole(20, 45) * 100,
          source: "new",
          count: seed % 2 === 0 ? "any" : whole(0, 3),
          priceMinor: whole(0, 9),
        },
      ],
    };
    const expected = bruteForce(request);
    const answer = solveCuts(request);
    expect(answer.ok).toBe(expected !== undefined);
    if (!answer.ok || expected === undefined) return;
    expect([answer.plan.total.priceMinor, answer.plan.total.openedMm]).toEqual(expected);
    expect(answer.plan.proof).toBe("proven");
    obeysLaws(request, answer.plan);
  });
});

test("300 pieces over 20 spools on hand, proven", () => {
  const whole = numbers(3);
  const request: CutRequest = {
    kind: "16 AWG, 2 cores",
    pieces: Array.from({ length: 300 }, (_, k) => ({ id: `p${k}`, lengthMm: whole(30, 600) * 10 })),
    stock: Array.from(
      { length: 20 },
      (_, k) => ({ id: `s${k}`, lengthMm: 40_000 + whole(0, 1500) * 10, source: "spool", count: 1 }) as const,
    ),
  };
  const answer = solveCuts(request);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  obeysLaws(request, answer.plan);
  expect(answer.plan.proof).toBe("proven");
});

describe("wire sold by the metre", () => {
  const pieces = [1300, 1300, 1300].map((lengthMm, k) => ({ id: `p${k}`, lengthMm }));
  test("one length for all, rounded up once", () => {
    const answer = solveCuts({
      kind: "w",
      pieces,
      stock: [],
      soldByLength: { id: "reel", stepMm: 1000, pricePerStepMinor: 190 },
    });
    expect(answer).toMatchObject({
      ok: true,
      plan: { total: { priceMinor: 760, openedMm: 4000 }, proof: "proven" },
    });
  });
  test("an offcut on hand saves a step", () => {
    const stock = [{ id: "rest", lengthMm: 1500, source: "offcut", count: 1 }] as const;
    const answer = solveCuts({
      kind: "w",
      pieces,
      stock,
      soldByLength: { id: "reel", stepMm: 1000, pricePerStepMinor: 190 },
    });
    expect(answer).toMatchObject({ ok: true, plan: { total: { priceMinor: 570 }, proof: "proven" } });
  });
});

test("a kerf at each cut", () => {
  const pieces = [500, 500].map((lengthMm, k) => ({ id: `p${k}`, lengthMm }));
  const stock = [{ id: "s", lengthMm: 1000, source: "spool", count: 1 }] as const;
  expect(solveCuts({ kind: "w", pieces, stock }).ok).toBe(true);
  expect(solveCuts({ kind: "w", pieces, stock, kerfMm: 2 })).toMatchObject({
    ok: false,
    problems: [{ problem: "pieces-do-not-fit-stock" }],
  });
});

test("money goes before length opened, however long the cheaper length is", () => {
  const pieces = [{ id: "tail", lengthMm: 100 }];
  const stock = [
    { id: "long", lengthMm: 10_000, source: "new", count: "any", priceMinor: 1 },
    { id: "short", lengthMm: 150, source: "new", count: "any", priceMinor: 2 },
  ] as const;
  expect(solveCuts({ kind: "w", pieces, stock })).toMatchObject({
    ok: true,
    plan: { lengths: [{ stock: "long" }], total: { priceMinor: 1 } },
  });
});

test("a rest is what is left behind the last cut: the kerf that is lost there makes it scrap", () => {
  const pieces = [1000, 1000, 300].map((lengthMm, k) => ({ id: `p${k}`, lengthMm }));
  const stock = [1900, 1502].map(
    (lengthMm) => ({ id: `${lengthMm}`, lengthMm, source: "offcut", count: 1 }) as const,
  );
  // the short piece from 1900 would leave 1502 − 1000 − 4 = 498 of the other: scrap, by the width of a cut
  const answer = solveCuts({ kind: "w", pieces, stock, kerfMm: 4, minUsefulMm: 500 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  const left = answer.plan.lengths.map(({ stock: of, leftMm, leftIsUseful }) => [of, leftMm, leftIsUseful]);
  expect(left.toSorted()).toEqual([
    ["1502", 194, false],
    ["1900", 896, true],
  ]);
});

describe("the old end of what is on hand", () => {
  const pieces = [{ id: "bow lead", lengthMm: 3000 }];
  const reel = { id: "reel", stepMm: 1000, pricePerStepMinor: 190 };
  const offcut = (lengthMm: number) =>
    ({ id: "rest", lengthMm, source: "offcut", count: 1, trimMm: 30 }) as const;
  test("an offcut as long as the piece does not do", () => {
    const answer = solveCuts({ kind: "w", pieces, stock: [offcut(3000)], soldByLength: reel });
    expect(answer).toMatchObject({ ok: true, plan: { lengths: [{ source: "by length" }] } });
    expect(solveCuts({ kind: "w", pieces, stock: [offcut(3029)] })).toMatchObject({
      ok: false,
      problems: [{ problem: "longer-than-any-length", longestMm: 2999 }, { problem: "not-enough-stock" }],
    });
  });
  test("cuts are measured after it, and it is not left over", () => {
    const answer = solveCuts({ kind: "w", pieces, stock: [offcut(3630)], soldByLength: reel });
    expect(answer).toMatchObject({
      ok: true,
      plan: {
        lengths: [{ stock: "rest", lengthMm: 3630, cuts: [{ fromMm: 30, toMm: 3030 }], leftMm: 600 }],
      },
    });
  });
});

describe("bad stock is named", () => {
  const piece = { id: "bow lead", lengthMm: 9000 };
  test("longer than any length", () => {
    const stock = [{ id: "s", lengthMm: 5000, source: "new", count: "any", priceMinor: 5 }] as const;
    expect(solveCuts({ kind: "w", pieces: [piece], stock })).toEqual({
      ok: false,
      kind: "w",
      problems: [{ problem: "longer-than-any-length", piece: "bow lead", lengthMm: 9000, longestMm: 5000 }],
    });
  });
  test("a stock of minus two", () => {
    const stock = [{ id: "s", lengthMm: 20_000, source: "spool", count: -2 }] as const;
    const answer = solveCuts({ kind: "w", pieces: [piece], stock });
    expect(answer).toMatchObject({
      ok: false,
      problems: [{ problem: "negative-stock", stock: "s", count: -2 }, {}, {}],
    });
  });
  test("a price that is not known is said, and priced stock goes first", () => {
    const stock = [
      { id: "unpriced", lengthMm: 10_000, source: "new", count: "any" },
      { id: "priced", lengthMm: 10_000, source: "new", count: "any", priceMinor: 900 },
    ] as const;
    const answer = solveCuts({ kind: "w", pieces: [piece], stock });
    expect(answer).toMatchObject({
      ok: true,
      plan: { lengths: [{ stock: "priced" }], problems: [{ problem: "missing-price", stock: "unpriced" }] },
    });
  });
  test.each([0, -1, 2.5, Number.NaN])("a piece of %d mm is refused", (lengthMm) => {
    expect(() => solveCuts({ kind: "w", pieces: [{ id: "p", lengthMm }], stock: [] })).toThrow(RangeError);
  });
});
