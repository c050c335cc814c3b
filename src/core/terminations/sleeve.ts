import { type SleeveRow, sleeves } from "../reference/terminations.js";

export interface SleeveWish {
  /** Thickest thing it slips over while wide: barrel, or the joint itself [mm]. */
  readonly thickestMm: number;
  /** Thinnest thing it must grip when shrunk: the insulation of the thinner conductor [mm]. */
  readonly thinnestMm: number;
  /** Length of bare joint or barrel to cover [mm]. */
  readonly jointMm: number;
  /** Adhesive-lined: seals against water. */
  readonly lined: boolean;
}

export type SleeveAnswer =
  | {
      readonly ok: true;
      readonly suppliedMm: number;
      readonly recoveredMm: number;
      readonly lined: boolean;
      /** `3:1`. */
      readonly ratio: string;
      readonly lengthMm: number;
    }
  | {
      readonly ok: false;
      readonly problem: "no-sleeve-fits";
      readonly needsRatio: number;
      readonly bestRatio: number;
    };

/**
 * The smallest sleeve that slips over and still grips, with its length cut before shrinking.
 * @throws RangeError unless 0 < thinnest ≤ thickest.
 */
export function sleeveFor(wish: SleeveWish): SleeveAnswer {
  const { thickestMm, thinnestMm, jointMm, lined } = wish;
  if (!(thinnestMm > 0 && thickestMm >= thinnestMm)) {
    throw new RangeError(`0 < thinnest ≤ thickest required, got ${thinnestMm} and ${thickestMm} mm`);
  }
  if (!(jointMm >= 0)) throw new RangeError(`joint must be ≥ 0 mm long, got ${jointMm}`);
  // A lined sleeve does in the dry too, where no plain one spans the two diameters.
  const rows: readonly SleeveRow[] = lined ? sleeves.lined : [...sleeves.plain, ...sleeves.lined];
  const { slipOver, grip } = sleeves.margin;
  const needs = thickestMm * slipOver;
  const at = rows.findIndex((one) => one.suppliedMm >= needs && one.recoveredMm <= thinnestMm * grip);
  const row = rows[at];
  if (row === undefined) {
    const bestRatio = Math.max(...rows.map((one) => one.suppliedMm / one.recoveredMm));
    return { ok: false, problem: "no-sleeve-fits", needsRatio: needs / (thinnestMm * grip), bestRatio };
  }
  const { perDiameter, minMm, lengthwiseShrink } = sleeves.overlap;
  const covered = jointMm + 2 * Math.max(minMm, perDiameter * thinnestMm);
  return {
    ok: true,
    ...row,
    lined: lined || at >= sleeves.plain.length,
    ratio: `${Math.round((row.suppliedMm / row.recoveredMm) * 10) / 10}:1`,
    lengthMm: Math.ceil(covered / (1 - lengthwiseShrink)),
  };
}
