/** Symmetric 2 × 2 covariance in a face's (along, up) [m²]. */
export interface Covariance {
  readonly aa: number;
  readonly au: number;
  readonly uu: number;
}

/** Where a mark may really be: one standard deviation each way. */
export interface Ellipse {
  readonly majorM: number;
  readonly minorM: number;
  /** Of the long axis, from along towards up, −90…90 [°]. */
  readonly majorDeg: number;
  /** √(σ_along² + σ_up²): the surveyor's point error. */
  readonly pointErrorM: number;
  /** Half of all marks lie within this circle. */
  readonly halfRadiusM: number;
  /** 19 of 20 marks lie within the ellipse grown by this: √(−2·ln 0.05). */
  readonly growthFor95: number;
}

/** A pull on a mark in (along, up): how the reading changes as the mark moves; and the spread of the reading [m]. */
export interface Ray {
  readonly along: number;
  readonly up: number;
  readonly sigmaM: number;
}

/** Covariance of the place fixed by rays: Q = (Σ r·rᵀ/σ²)⁻¹, or undefined where they do not cross. */
export function crossingCovariance(rays: readonly Ray[]): Covariance | undefined {
  let [aa, au, uu] = [0, 0, 0];
  for (const { along, up, sigmaM } of rays) {
    const weight = 1 / sigmaM ** 2;
    aa += weight * along * along;
    au += weight * along * up;
    uu += weight * up * up;
  }
  const det = aa * uu - au * au;
  if (!(det > 1e-9 * (aa + uu) ** 2)) return undefined;
  return { aa: uu / det, au: -au / det, uu: aa / det };
}

/** Error ellipse: the semi-axes are the roots of the covariance's eigenvalues. */
export function ellipseOf(q: Covariance): Ellipse {
  const middle = (q.aa + q.uu) / 2;
  const spread = Math.hypot((q.aa - q.uu) / 2, q.au);
  const [major, minor] = [middle + spread, Math.max(0, middle - spread)];
  return {
    majorM: Math.sqrt(major),
    minorM: Math.sqrt(minor),
    majorDeg: spread === 0 ? 0 : (Math.atan2(2 * q.au, q.aa - q.uu) * 90) / Math.PI,
    pointErrorM: Math.sqrt(q.aa + q.uu),
    halfRadiusM: halfRadius(Math.sqrt(major), Math.sqrt(minor)),
    growthFor95: Math.sqrt(-2 * Math.log(0.05)),
  };
}

/** Angle under which two rays cross, 0…180° (180: opposite ways). */
export function crossingDeg(a: Ray, b: Ray): number {
  const turn = Math.atan2(a.along * b.up - a.up * b.along, a.along * b.along + a.up * b.up);
  return (Math.abs(turn) * 180) / Math.PI;
}

/** Long axis alone, where the rest is not wanted [m]. */
export function longAxisM(q: Covariance): number {
  return Math.sqrt((q.aa + q.uu) / 2 + Math.hypot((q.aa - q.uu) / 2, q.au));
}

/** Radius r with P(x² + y² < r²) = 1/2 for independent normals of these spreads: halving over the mean round the unit circle. */
function halfRadius(major: number, minor: number): number {
  if (!(major > 0)) return 0;
  const turns = 48;
  const inside = (r: number) => {
    let sum = 0;
    for (let k = 0; k < turns; k++) {
      const t = ((k + 0.5) * Math.PI) / (2 * turns);
      // in units of the spreads the circle is this far away in direction t
      const away2 = r ** 2 / ((major * Math.cos(t)) ** 2 + (minor * Math.sin(t)) ** 2);
      sum += 1 - Math.exp(-away2 / 2);
    }
    return sum / turns;
  };
  let [low, high] = [0, 2 * major];
  for (let turn = 0; turn < 24; turn++) {
    const middle = (low + high) / 2;
    if (inside(middle) < 0.5) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
