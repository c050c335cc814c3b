import { joints } from "../reference/joints.js";
import { tapLimits } from "../reference/terminations.js";

export type TapAnswer =
  | { readonly ok: true; readonly colour: string; readonly maxA: number }
  | {
      readonly ok: false;
      readonly problem: "tap-does-not-take";
      readonly throughMm2: number;
      readonly tapMm2: number;
      readonly takes: readonly {
        readonly colour: string;
        readonly throughMm2: readonly [number, number];
        readonly tapMm2: readonly [number, number];
      }[];
    }
  | {
      readonly ok: false;
      readonly problem: "tap-over-current";
      readonly currentA: number;
      readonly maxA: number;
    };

/**
 * A tap clipped on a through conductor: does it take both, and the current drawn off?
 * @throws RangeError if an area is not above zero or the current below zero.
 */
export function checkTap(throughMm2: number, tapMm2: number, currentA: number): TapAnswer {
  if (!(throughMm2 > 0 && tapMm2 > 0))
    throw new RangeError(`areas must be > 0 mm², got ${throughMm2} and ${tapMm2}`);
  if (!(currentA >= 0)) throw new RangeError(`current must be ≥ 0 A, got ${currentA}`);
  const takes = tapLimits.rows.filter(
    (row) =>
      throughMm2 >= row.minThroughMm2 &&
      throughMm2 <= row.maxThroughMm2 &&
      tapMm2 >= row.minTapMm2 &&
      tapMm2 <= row.maxTapMm2,
  );
  const row = takes[0];
  const { maxA } = joints.tap;
  if (row === undefined) {
    return {
      ok: false,
      problem: "tap-does-not-take",
      throughMm2,
      tapMm2,
      takes: tapLimits.rows.map((row) => ({
        colour: row.colour,
        throughMm2: [row.minThroughMm2, row.maxThroughMm2],
        tapMm2: [row.minTapMm2, row.maxTapMm2],
      })),
    };
  }
  if (currentA > maxA) return { ok: false, problem: "tap-over-current", currentA, maxA };
  return { ok: true, colour: row.colour, maxA };
}
