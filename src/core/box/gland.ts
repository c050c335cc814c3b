import { type GlandFit, glandFits, hexagon, roundSeal } from "../reference/glands.js";

/** A cable that goes through a wall. A flat one (twin side by side) has a second, smaller measure. */
export interface Cable {
  readonly id: string;
  readonly diameterMm: number;
  readonly flatMm?: number;
}

export interface GlandWish {
  readonly series: "metric" | "pg";
  readonly wallMm: number;
  /** Ranges of the glands the owner buys, where they differ from the usual. */
  readonly fits?: readonly GlandFit[];
}

export type GlandProblem =
  | {
      readonly problem: "no-gland-fits";
      readonly cable: string;
      readonly diameterMm: number;
      readonly smallestMm: number;
      readonly largestMm: number;
      /** Ranges that leave a gap around this cable, as the nearest below and above it. */
      readonly below?: string;
      readonly above?: string;
    }
  | {
      readonly problem: "cable-not-round";
      readonly cable: string;
      readonly diameterMm: number;
      readonly flatMm: number;
    }
  | {
      readonly problem: "wall-too-thick";
      readonly cable: string;
      readonly size: string;
      readonly wallMm: number;
      readonly maxWallMm: number;
    };

export interface GlandChoice {
  readonly cable: string;
  readonly fit: GlandFit;
  readonly nutCornersMm: number;
  /** Thread and lock nut inside the wall. */
  readonly insideMm: number;
  /** Others of the series that take it too, smallest first. */
  readonly alsoFit: readonly string[];
}

export type GlandAnswer =
  | { readonly ok: true; readonly gland: GlandChoice }
  | { readonly ok: false; readonly problem: GlandProblem };

/** Across the corners of a hexagon nut: 2/√3 times its flats [mm]. */
export function nutCornersMm(flatsMm: number): number {
  if (!(flatsMm > 0)) throw new RangeError(`flats must be > 0 mm, got ${flatsMm}`);
  return flatsMm * hexagon.cornersPerFlats;
}

/**
 * The smallest gland of a series whose seal takes the cable. Its range is the maker's: the table's is a usual one.
 * @throws RangeError if a diameter or wall is not above zero.
 */
export function chooseGland(cable: Cable, wish: GlandWish): GlandAnswer {
  const { id, diameterMm, flatMm } = cable;
  if (!(diameterMm > 0)) throw new RangeError(`diameter of cable ${id} must be > 0 mm, got ${diameterMm}`);
  if (!(wish.wallMm > 0)) throw new RangeError(`wall must be > 0 mm, got ${wish.wallMm}`);
  if (flatMm !== undefined && !(flatMm > 0 && flatMm <= diameterMm)) {
    throw new RangeError(`flat of cable ${id} must be > 0 and ≤ ${diameterMm} mm, got ${flatMm}`);
  }
  if (flatMm !== undefined && flatMm < roundSeal.leastFlatShare * diameterMm) {
    return { ok: false, problem: { problem: "cable-not-round", cable: id, diameterMm, flatMm } };
  }
  const series = (wish.fits ?? glandFits.rows)
    .filter((fit) => fit.series === wish.series)
    .toSorted((a, b) => a.threadOuterMm - b.threadOuterMm);
  if (series.length === 0) throw new RangeError(`no glands of the series ${wish.series} are given`);
  const take = series.filter((fit) => diameterMm >= fit.minCableMm && diameterMm <= fit.maxCableMm);
  const [fit, ...others] = take;
  if (fit === undefined) {
    const below = series.findLast((one) => one.maxCableMm < diameterMm);
    const above = series.find((one) => one.minCableMm > diameterMm);
    return {
      ok: false,
      problem: {
        problem: "no-gland-fits",
        cable: id,
        diameterMm,
        smallestMm: Math.min(...series.map((one) => one.minCableMm)),
        largestMm: Math.max(...series.map((one) => one.maxCableMm)),
        ...(below === undefined ? {} : { below: below.size }),
        ...(above === undefined ? {} : { above: above.size }),
      },
    };
  }
  const maxWallMm = fit.threadLengthMm - glandFits.lockNutMm;
  if (wish.wallMm > maxWallMm) {
    return {
      ok: false,
      problem: { problem: "wall-too-thick", cable: id, size: fit.size, wallMm: wish.wallMm, maxWallMm },
    };
  }
  return {
    ok: true,
    gland: {
      cable: id,
      fit,
      nutCornersMm: nutCornersMm(fit.spannerMm),
      insideMm: fit.threadLengthMm - wish.wallMm,
      alsoFit: others.map((one) => one.size),
    },
  };
}
