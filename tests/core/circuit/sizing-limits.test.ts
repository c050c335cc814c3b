import { expect, test } from "vitest";
import { type LimitInput, LimitReader } from "../../../src/core/circuit/sizing/limits.js";

const lengthM = [4, 3] as const;
const candidateOhmPerM = [0.02, 0.01, 0.003] as const;
/** Of joints and devices in each branch: on the largest conductor, and on the smallest [Ω]. */
const fixedOhm = [0.004, 0.002] as const;
const fixedMostOhm = [0.008, 0.005] as const;

/** A way of two branches, out and back, each with a conductor of its own. Only what the reader looks at is there. */
const input = {
  plan: { circuits: new Map([["way", { nominalV: 12 }]]) },
  topology: {
    gear: [{ id: "lamp", circuit: "way", plus: 1, minus: 2 }],
    branches: lengthM.map((length, at) => ({
      parts: [{ kind: "conductor", sizeGroup: `run ${at}`, lengthM: length }],
    })),
  },
  forest: {
    walk: (from: number, _to: number, pass: (branch: number, up: boolean) => void) =>
      from === 0 ? pass(0, true) : pass(1, false),
  },
  groups: lengthM.map((_, at) => ({
    id: `run ${at}`,
    candidates: candidateOhmPerM.map((ohmPerM) => ({ ohmPerM })),
  })),
  fixedOhm: Float64Array.from(fixedOhm),
  fixedMostOhm: Float64Array.from(fixedMostOhm),
} as unknown as LimitInput;

const way = { case: 0, gear: 0, fromPlus: 0, toMinus: 3, maxDropV: 0.36 };

// Kirchhoff: a shared negative that carries current against the way takes off the drop what its resistance makes of it
test.each([
  [5, 5],
  [5, -1],
  [5, -0.5],
  [1, -4],
])("%d A out and %d A back: the sum is never more than the true drop, whatever the sizes", (outA, backA) => {
  const limit = new LimitReader(input).limit(way, (branch) => (branch === 0 ? outA : backA));
  const sumV = (ohmPerM: readonly number[]) =>
    limit.fixedDropV +
    limit.terms.reduce((sum, { group, ampereM }) => sum + ampereM * (ohmPerM[group] ?? 0), 0);
  let told = 0;
  // joints on any conductor lie between those on the largest and on the smallest
  for (const out of candidateOhmPerM)
    for (const back of candidateOhmPerM)
      for (const joints of [fixedOhm, fixedMostOhm]) {
        const trueV = outA * (out * lengthM[0] + joints[0]) + backA * (back * lengthM[1] + joints[1]);
        const boundV = sumV([out, back]);
        expect(boundV).toBeLessThanOrEqual(Math.max(0, trueV) + 1e-12);
        told = Math.max(told, boundV);
      }
  // a bound of nothing would be no bound: it says something wherever the current out outweighs the one against it
  if (outA > 1) expect(told).toBeGreaterThan(0.05);
});
