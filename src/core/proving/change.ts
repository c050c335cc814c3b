/** A resistance that no meter tells from a break [Ω]. */
export const brokenOhm = 1e10;

/** Two points that a fault may join, or a pair of wires it may swap: possible branches that the sound boat does not have. */
export interface Shadow {
  readonly from: number;
  readonly to: number;
  /** Branch whose own wire it would be; absent: it is no wire. */
  readonly wire?: number;
}

/**
 * What is different from the sound boat, as changes of numbers. Rows are those of the bench; rows of shadows count on behind its
 * branches.
 */
export interface Change {
  /** Added to a branch [Ω]. */
  readonly extraOhm?: ReadonlyMap<number, number>;
  /** Put in the place of a branch's or shadow's own [Ω]. */
  readonly ohm?: ReadonlyMap<number, number>;
  readonly emfV?: ReadonlyMap<number, number>;
  readonly sourceExtraOhm?: ReadonlyMap<number, number>;
  /** Factor on what a load takes; 0: it is dead. */
  readonly load?: ReadonlyMap<number, number>;
  /** What is printed on a device, by branch [A]. */
  readonly markedA?: ReadonlyMap<number, number>;
}

export const noChange: Change = {};

/** Both at once. Where both set the same number the second one's stands; what is added is added up. */
export function together(a: Change, b: Change): Change {
  const added = (x?: ReadonlyMap<number, number>, y?: ReadonlyMap<number, number>) => {
    const sum = new Map(x);
    for (const [row, value] of y ?? []) sum.set(row, (sum.get(row) ?? 0) + value);
    return sum;
  };
  return {
    extraOhm: added(a.extraOhm, b.extraOhm),
    emfV: added(a.emfV, b.emfV),
    sourceExtraOhm: added(a.sourceExtraOhm, b.sourceExtraOhm),
    ohm: new Map([...(a.ohm ?? []), ...(b.ohm ?? [])]),
    load: new Map([...(a.load ?? []), ...(b.load ?? [])]),
    markedA: new Map([...(a.markedA ?? []), ...(b.markedA ?? [])]),
  };
}
