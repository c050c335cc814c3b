/** An opening in a thin wall, bulkhead or deck: what it lets through does not depend on where it is [mm]. */
export type Opening =
  | { readonly shape: "rectangle"; readonly widthMm: number; readonly heightMm: number }
  | { readonly shape: "circle"; readonly diameterMm: number }
  | { readonly shape: "obround"; readonly lengthMm: number; readonly widthMm: number };

/** Outside measures of what must pass, nuts and plugs included [mm]. */
export interface Body {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface PassAnswer {
  readonly passes: boolean;
  /** The two measures that face the opening, larger first. */
  readonly endMm: readonly [number, number];
  /** Angle in the plane of the opening between the larger measure and the opening's longer side [°]. */
  readonly turnedDeg: number;
}

/**
 * Does a rectangle go inside a rectangle, turned as need be? With p ≥ q and a ≥ b: p ≤ a and q ≤ b, or, where p > a,
 * b ≥ (2·p·q·a + (p² − q²)·√(p² + q² − a²)) / (p² + q²) (J. Wetzel, Mathematics Magazine 73, 2000, after L. Carver, 1957).
 */
export function rectangleInRectangle(p: number, q: number, a: number, b: number): boolean {
  for (const [what, value] of Object.entries({ p, q, a, b })) {
    if (!(value > 0)) throw new RangeError(`${what} must be > 0, got ${value}`);
  }
  const [long, short] = [Math.max(p, q), Math.min(p, q)];
  const [wide, narrow] = [Math.max(a, b), Math.min(a, b)];
  if (long <= wide && short <= narrow) return true;
  if (long <= wide || short > narrow) return false;
  const square = long * long + short * short;
  const root = square - wide * wide;
  return narrow >= (2 * long * short * wide + (long * long - short * short) * Math.sqrt(root)) / square;
}

/** A rectangle in a slot with round ends lies best along it: corners within the end arcs. */
function rectangleInObround(p: number, q: number, length: number, width: number): boolean {
  const [long, short] = [Math.max(p, q), Math.min(p, q)];
  const r = width / 2;
  if (short > width) return false;
  return long / 2 <= (length - width) / 2 + Math.sqrt(r * r - (short / 2) ** 2);
}

/**
 * Whether a body goes through an opening, end first, turned about its own long way as need be. Tilting it about one of the
 * other axes as well never helps through a thin wall: what faces the opening is then t·cos α + u·sin α, which is
 * nowhere below the smaller of t and u.
 * @throws RangeError on measures that are not above zero.
 */
export function passes(body: Body, opening: Opening): PassAnswer {
  const sides = [body.lengthMm, body.widthMm, body.heightMm].sort((a, b) => a - b);
  const [q = 0, p = 0] = sides;
  if (!(q > 0 && p < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`a body needs measures above zero, got ${sides.join(" × ")}`);
  }
  // The two smaller sides in front: any other end is at least as large in both.
  const endMm = [p, q] as const;
  switch (opening.shape) {
    case "circle": {
      if (!(opening.diameterMm > 0))
        throw new RangeError(`diameter must be > 0 mm, got ${opening.diameterMm}`);
      return { passes: Math.hypot(p, q) <= opening.diameterMm, endMm, turnedDeg: 0 };
    }
    case "obround": {
      const { lengthMm, widthMm } = opening;
      if (!(widthMm > 0 && lengthMm >= widthMm)) {
        throw new RangeError(`an obround needs length ≥ width > 0 mm, got ${lengthMm} × ${widthMm}`);
      }
      return { passes: rectangleInObround(p, q, lengthMm, widthMm), endMm, turnedDeg: 0 };
    }
    case "rectangle": {
      const through = rectangleInRectangle(p, q, opening.widthMm, opening.heightMm);
      const wide = Math.max(opening.widthMm, opening.heightMm);
      const turnedDeg = through && p > wide ? diagonalDeg(p, q, wide) : 0;
      return { passes: through, endMm, turnedDeg };
    }
    default:
      return opening satisfies never;
  }
}

/** The turn at which a rectangle longer than the opening just fills its long side: p·cos α + q·sin α = a. */
function diagonalDeg(p: number, q: number, a: number): number {
  const radians = Math.atan2(q, p) + Math.acos(a / Math.hypot(p, q));
  return (radians * 180) / Math.PI;
}
