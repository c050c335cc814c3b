import { compassLimits, straightConductorField } from "../reference/supports.js";

/** A conductor pair near a compass. */
export interface PairNearCompass {
  readonly id: string;
  readonly currentA: number;
  /** From the middle of the pair to the compass [m]. */
  readonly distanceM: number;
  /** Between the centres of the two cores [m]. */
  readonly spacingM?: number;
  /** Twisted: the fields of neighbouring turns cancel. */
  readonly twisted?: boolean;
}

export interface CompassFigures {
  /** Worst sum of all pairs, as if each pointed the same way [µT]. */
  readonly fieldMicroT: number;
  /** Greatest deviation it can cause: sin δ = B / H [°]; undefined: the pairs overpower the earth's field. */
  readonly deviationDeg?: number;
  readonly limitDeg: number;
  readonly state: "holds" | "fails";
  /** Most disturbing first. */
  readonly pairs: readonly { readonly id: string; readonly fieldMicroT: number; readonly enoughM: number }[];
}

/**
 * Field of an untwisted pair at its worst [µT]: B = 0.2 · I · (1/(r − s/2) − 1/(r + s/2)), the cores in line with the
 * compass. Twisted pairs count nothing.
 * @throws RangeError unless the compass is outside the pair and the current ≥ 0.
 */
export function pairFieldMicroT(pair: PairNearCompass): number {
  const { id, currentA, distanceM, twisted = false } = pair;
  const half = (pair.spacingM ?? compassLimits.coreSpacingM) / 2;
  if (!(currentA >= 0)) throw new RangeError(`current of ${id} must be ≥ 0 A, got ${currentA}`);
  if (!(half > 0 && distanceM > half)) {
    throw new RangeError(`${id} needs a spacing > 0 and a distance over ${half} m, got ${distanceM}`);
  }
  if (twisted) return 0;
  return straightConductorField.microTMPerA * currentA * (1 / (distanceM - half) - 1 / (distanceM + half));
}

/** What pairs do to a compass, at worst, and how far off each alone would be harmless. */
export function compassFigures(
  pairs: readonly PairNearCompass[],
  horizontalFieldMicroT: number = compassLimits.horizontalFieldMicroT,
): CompassFigures {
  if (!(horizontalFieldMicroT > 0))
    throw new RangeError(`the earth's field must be > 0 µT, got ${horizontalFieldMicroT}`);
  const limitDeg = compassLimits.maxDeviationDeg;
  const allowedMicroT = horizontalFieldMicroT * Math.sin((limitDeg * Math.PI) / 180);
  const each = pairs
    .map((pair) => ({
      id: pair.id,
      fieldMicroT: pairFieldMicroT(pair),
      enoughM: enoughM(pair, allowedMicroT),
    }))
    .toSorted((a, b) => b.fieldMicroT - a.fieldMicroT);
  const fieldMicroT = each.reduce((sum, pair) => sum + pair.fieldMicroT, 0);
  const share = fieldMicroT / horizontalFieldMicroT;
  return {
    fieldMicroT,
    ...(share < 1 ? { deviationDeg: (Math.asin(share) * 180) / Math.PI } : {}),
    limitDeg,
    state: fieldMicroT <= allowedMicroT ? "holds" : "fails",
    pairs: each,
  };
}

/** Distance at which the pair's field is just the allowed one: r² = (s/2)² + 0.2 · I · s / B [m]. */
function enoughM(pair: PairNearCompass, allowedMicroT: number): number {
  if (pair.twisted === true) return 0;
  const spacing = pair.spacingM ?? compassLimits.coreSpacingM;
  return Math.sqrt(
    (spacing / 2) ** 2 + (straightConductorField.microTMPerA * pair.currentA * spacing) / allowedMicroT,
  );
}
