import type { ConductorSize } from "../plan/model/common.js";
import { barrelColours, barrelDepths, barrelTotals, jointTools } from "../reference/terminations.js";
import { gaugeNumber } from "./gauge.js";

export type Colour = (typeof barrelColours.rows)[number]["colour"];

/** What a conductor, or several in one barrel, is crimped into. */
export type Barrel =
  | {
      readonly kind: "insulated";
      readonly colour: Colour;
      readonly stripMm: number;
      readonly folded: boolean;
    }
  | { readonly kind: "lug"; readonly sizeKey: string; readonly stripMm: number };

export type BarrelProblem =
  | { readonly problem: "too-thin-for-barrel"; readonly areaMm2: number; readonly minAreaMm2: number }
  | { readonly problem: "too-thick-for-barrel"; readonly areaMm2: number; readonly maxAreaMm2: number };

export type BarrelAnswer =
  | { readonly ok: true; readonly barrel: Barrel }
  | { readonly ok: false; readonly problem: BarrelProblem };

/** Copper each colour takes in all [mm²]. */
const totals = barrelTotals.rows.map(({ colour, minCircularMils, maxCircularMils }) => ({
  colour,
  min: minCircularMils * barrelTotals.mm2PerCircularMil,
  max: maxCircularMils * barrelTotals.mm2PerCircularMil,
}));
const minAreaMm2 = Math.min(...totals.map(({ min }) => min));
const maxAreaMm2 = Math.max(...totals.map(({ max }) => max));

/**
 * The barrel for one conductor by its size, or for several together by the sum of their areas. A single conductor too thin
 * for red is folded back once, if that fills it.
 * @param across What the other end of a butt takes: where one colour does for both ends, it is that one.
 */
export function barrelFor(
  sizes: readonly ConductorSize[],
  across: readonly ConductorSize[] = [],
): BarrelAnswer {
  const [first, ...others] = sizes;
  if (first === undefined) throw new RangeError("a barrel needs at least one conductor, got none");
  for (const size of sizes) {
    if (!(size.areaMm2 > 0)) throw new RangeError(`area of ${size.key} must be > 0 mm², got ${size.areaMm2}`);
  }
  const theirs = across.length === 0 ? [] : coloursThatTake(across);
  const both = coloursThatTake(sizes).findLast((colour) => theirs.includes(colour));
  if (both !== undefined) return insulated(both, false);
  const areaMm2 = areaOf(sizes);
  if (others.length === 0) {
    const colour = colourOf(first);
    if (colour !== undefined) return insulated(colour, false);
    if (areaMm2 > jointTools.lugAboveMm2) return lug(first);
    if (areaMm2 < minAreaMm2) {
      const folded = byTotal(2 * areaMm2);
      if (folded.ok && folded.barrel.kind === "insulated") return insulated(folded.barrel.colour, true);
    }
  }
  return byTotal(areaMm2);
}

const areaOf = (sizes: readonly ConductorSize[]): number =>
  sizes.reduce((sum, size) => sum + size.areaMm2, 0);

/** Every colour that takes a conductor by its printed size, or several by their total; smaller ones first. */
function coloursThatTake(sizes: readonly ConductorSize[]): Colour[] {
  const [first, second] = sizes;
  if (first !== undefined && second === undefined) return printedColours(first);
  const areaMm2 = areaOf(sizes);
  return totals.filter(({ min, max }) => areaMm2 >= min && areaMm2 <= max).map(({ colour }) => colour);
}

function printedColours(size: ConductorSize): Colour[] {
  const takes = (row: (typeof barrelColours.rows)[number]): boolean => {
    if (size.series === "metric") return size.areaMm2 >= row.minAreaMm2 && size.areaMm2 <= row.maxAreaMm2;
    const gauge = gaugeNumber(size.key);
    return gauge <= row.smallestGauge && gauge >= row.largestGauge;
  };
  return barrelColours.rows.filter(takes).map(({ colour }) => colour);
}

/** Where two colours print a gauge the larger one, where two print an area the first. */
const colourOf = (size: ConductorSize): Colour | undefined =>
  size.series === "metric" ? printedColours(size)[0] : printedColours(size).at(-1);

/** Where two colours take a total, the larger, as they do for a single 16 AWG: everything goes in without cutting strands. */
function byTotal(areaMm2: number): BarrelAnswer {
  const row = totals.findLast((one) => areaMm2 >= one.min && areaMm2 <= one.max);
  if (row !== undefined) return insulated(row.colour, false);
  if (areaMm2 < minAreaMm2)
    return { ok: false, problem: { problem: "too-thin-for-barrel", areaMm2, minAreaMm2 } };
  return { ok: false, problem: { problem: "too-thick-for-barrel", areaMm2, maxAreaMm2 } };
}

function insulated(colour: Colour, folded: boolean): BarrelAnswer {
  const depth = barrelDepths.insulated[colour] + barrelDepths.showsMm;
  return { ok: true, barrel: { kind: "insulated", colour, stripMm: folded ? 2 * depth : depth, folded } };
}

function lug(size: ConductorSize): BarrelAnswer {
  const row = barrelDepths.lugs.find((one) => size.areaMm2 <= one.toAreaMm2);
  if (row === undefined) {
    const maxAreaMm2 = barrelDepths.lugs.at(-1)?.toAreaMm2 ?? 0;
    return { ok: false, problem: { problem: "too-thick-for-barrel", areaMm2: size.areaMm2, maxAreaMm2 } };
  }
  return {
    ok: true,
    barrel: { kind: "lug", sizeKey: size.key, stripMm: row.depthMm + barrelDepths.showsMm },
  };
}
