import { describe, expect, test } from "vitest";
import { solveCuts } from "../../../src/core/parts/cuts/solve-cuts.js";
import type { CutPlan, CutRequest } from "../../../src/core/parts/cuts/types.js";

const planOf = (request: CutRequest): CutPlan => {
  const answer = solveCuts(request);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.plan;
};
const pieces = (...lengthsMm: number[]) => lengthsMm.map((lengthMm, k) => ({ id: `p${k}`, lengthMm }));

function numbers(seed: number): (least: number, most: number) => number {
  let state = seed * 6151 + 3;
  return (least, most) => {
    state = (state * 48_271) % 2_147_483_647;
    return least + Math.floor((state / 2_147_483_647) * (most - least + 1));
  };
}

/** Least scrap, then longest rest, over every way to lay the pieces into all of these lengths. */
function everyWay(
  lengthsMm: readonly number[],
  { pieces: asked, minUsefulMm = 500 }: CutRequest,
): [number, number] {
  const left = [...lengthsMm];
  let best: [number, number] = [Number.POSITIVE_INFINITY, 0];
  const place = (at: number): void => {
    const piece = asked[at];
    if (piece === undefined) {
      const scrap = left.reduce((sum, rest) => sum + (rest < minUsefulMm ? rest : 0), 0);
      const longest = Math.max(0, ...left.filter((rest) => rest >= minUsefulMm));
      if (scrap < best[0] || (scrap === best[0] && longest > best[1])) best = [scrap, longest];
      return;
    }
    for (let b = 0; b < left.length; b += 1) {
      if ((left[b] ?? 0) < piece.lengthMm) continue;
      left[b] = (left[b] ?? 0) - piece.lengthMm;
      place(at + 1);
      left[b] = (left[b] ?? 0) + piece.lengthMm;
    }
  };
  place(0);
  return best;
}

describe("of packings at one price the one that leaves least over for the bin", () => {
  test("two offcuts both opened: the rest stays in one piece", () => {
    // 3000 + 900 and 2500 leave 100 and 500; 3000 and 2500 + 900 leave 1000 and none that is scrap
    const plan = planOf({
      kind: "any",
      pieces: pieces(3000, 2500, 900),
      stock: [
        { id: "a", lengthMm: 4000, source: "offcut", count: 1 },
        { id: "b", lengthMm: 3400, source: "offcut", count: 1 },
      ],
    });
    expect(plan.scrapMm).toBe(0);
    expect(plan.lengths.map(({ leftMm }) => leftMm).toSorted((a, b) => a - b)).toEqual([0, 1000]);
  });

  test.each(Array.from({ length: 60 }, (_, seed) => seed + 1))("seed %i", (seed) => {
    const whole = numbers(seed);
    const request: CutRequest = {
      kind: "any",
      pieces: pieces(...Array.from({ length: whole(3, 7) }, () => whole(3, 30) * 100)),
      stock: [
        { id: "a", lengthMm: whole(20, 50) * 100, source: "offcut", count: 2 },
        { id: "b", lengthMm: whole(20, 50) * 100, source: "offcut", count: 2 },
        { id: "c", lengthMm: 6000, source: "new", count: "any", priceMinor: 900 },
      ],
      minUsefulMm: whole(2, 9) * 100,
    };
    const plan = planOf(request);
    const [scrap, longest] = everyWay(
      plan.lengths.map(({ lengthMm }) => lengthMm),
      request,
    );
    expect(plan.scrapMm).toBe(scrap);
    const useful = plan.lengths.filter(({ leftIsUseful }) => leftIsUseful).map(({ leftMm }) => leftMm);
    expect(Math.max(0, ...useful)).toBe(longest);
  });

  test("what is left over never costs: money and length opened come first", () => {
    // one length of 6 m would leave 600 mm that is of use; two offcuts leave scrap and cost nothing
    const plan = planOf({
      kind: "any",
      pieces: pieces(2700, 2700),
      stock: [
        { id: "a", lengthMm: 2800, source: "offcut", count: 2 },
        { id: "c", lengthMm: 6000, source: "new", count: "any", priceMinor: 900 },
      ],
    });
    expect(plan.total.priceMinor).toBe(0);
    expect(plan.scrapMm).toBe(200);
  });
});
