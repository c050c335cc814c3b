import { describe, expect, test } from "vitest";
import { cheapestPacks, type Pack } from "../../../src/core/parts/packs.js";
import { type PackPrice, partsList } from "../../../src/core/parts/parts-list.js";

/** Least price, then least left over, then fewest packs, over every number of every pack. */
function bruteForce(needed: number, packs: readonly Pack[]): readonly number[] {
  let best = [Number.POSITIVE_INFINITY, 0, 0];
  const try_ = (at: number, count: number, price: number, number: number): void => {
    const pack = packs[at];
    if (pack === undefined) {
      if (count < needed) return;
      const now = [price, count - needed, number];
      const worse = now.findIndex((value, i) => value !== best[i]);
      if (worse >= 0 && (now[worse] ?? 0) < (best[worse] ?? 0)) best = now;
      return;
    }
    for (let times = 0; times <= Math.ceil(needed / pack.count); times += 1) {
      try_(at + 1, count + times * pack.count, price + times * pack.priceMinor, number + times);
    }
  };
  try_(0, 0, 0, 0);
  return best;
}

describe("cheapest packs against every way there is", () => {
  test.each(Array.from({ length: 80 }, (_, seed) => seed + 1))("seed %i", (seed) => {
    let state = seed * 7919;
    const whole = (least: number, most: number): number => {
      state = (state * 48_271) % 2_147_483_647;
      return least + Math.floor((state / 2_147_483_647) * (most - least + 1));
    };
    const packs = Array.from({ length: whole(1, 3) }, (_, k) => ({
      id: `k${k}`,
      count: whole(1, 12),
      priceMinor: whole(1, 20),
    }));
    const needed = whole(1, 30);
    const choice = cheapestPacks(needed, packs);
    const number = choice?.packs.reduce((sum, pack) => sum + pack.times, 0);
    expect([choice?.priceMinor, choice?.leftOver, number]).toEqual(bruteForce(needed, packs));
  });
});

test("a bag of ten beats seven singles", () => {
  const packs = [
    { id: "single", count: 1, priceMinor: 60 },
    { id: "bag of 10", count: 10, priceMinor: 400 },
  ];
  expect(cheapestPacks(7, packs)).toEqual({
    packs: [{ id: "bag of 10", times: 1 }],
    bought: 10,
    leftOver: 3,
    priceMinor: 400,
  });
  expect(cheapestPacks(6, packs)?.packs).toEqual([{ id: "single", times: 6 }]);
  expect(cheapestPacks(0, packs)).toEqual({ packs: [], bought: 0, leftOver: 0, priceMinor: 0 });
  expect(cheapestPacks(3, [])).toBeUndefined();
});

test.each([-1, 1.5, Number.NaN, 2_000_000])("a need of %d is refused", (needed) => {
  expect(() => cheapestPacks(needed, [])).toThrow(RangeError);
});

describe("the list", () => {
  const ring = { kind: "terminal", item: "red ring M5" } as const;
  const eur = (minor: number) => ({ currency: "EUR", minor });
  const prices: PackPrice[] = [
    { item: "red ring M5", pack: "single", count: 1, price: eur(60) },
    { item: "red ring M5", pack: "bag of 10", count: 10, price: eur(400) },
  ];
  const list = (stock: number, more: readonly PackPrice[] = []) =>
    partsList(
      [
        { ...ring, count: 6, for: "helm" },
        { ...ring, count: 4, for: "fore box" },
      ],
      [{ item: "red ring M5", count: stock }],
      [...prices, ...more],
    );

  test("needs are summed, spares added, stock taken off, the rest left over", () => {
    const { lines, total, problems } = list(3);
    expect(lines).toEqual([
      {
        kind: "terminal",
        item: "red ring M5",
        needed: 10,
        spares: 2,
        fromStock: 3,
        toBuy: 9,
        packs: [{ pack: "bag of 10", times: 1 }],
        leftOver: 1,
        price: eur(400),
        for: ["helm", "fore box"],
      },
    ]);
    expect(total).toEqual(eur(400));
    expect(problems).toEqual([]);
  });
  // common practice, no source: one crimp in ten goes wrong, and there is no part of one
  test("a tenth of 25 rings is three spares", () => {
    const { lines } = partsList([{ ...ring, count: 25, for: "helm" }], [], prices);
    expect(lines[0]).toMatchObject({ needed: 25, spares: 3, toBuy: 28 });
  });
  test("enough on hand buys nothing", () => {
    const { lines, total } = list(20);
    expect(lines[0]).toMatchObject({ toBuy: 0, packs: [], leftOver: 8 });
    expect(total).toBeUndefined();
  });
  test("a stock of minus two, two currencies, a missing price", () => {
    expect(list(-2).problems).toContainEqual({ problem: "negative-stock", item: "red ring M5", count: -2 });
    const mixed = list(0, [{ item: "tape", pack: "roll", count: 1, price: { currency: "USD", minor: 5 } }]);
    expect(mixed.problems).toContainEqual({ problem: "two-currencies", currencies: ["EUR", "USD"] });
    expect(mixed.total).toBeUndefined();
    const bare = partsList(
      [{ kind: "gland", item: "M12 gland", count: 4, for: "fore box" }],
      [],
      [{ item: "M12 gland", pack: "bag of 5", count: 5 }],
    );
    expect(bare).toMatchObject({
      withoutPrice: ["M12 gland"],
      problems: [{ problem: "missing-price", item: "M12 gland" }],
      lines: [{ packs: [{ pack: "bag of 5", times: 1 }] }],
    });
    expect(partsList([{ kind: "gland", item: "M63 gland", count: 1, for: "x" }], [], []).problems).toEqual([
      { problem: "not-sold", item: "M63 gland" },
    ]);
  });
});
