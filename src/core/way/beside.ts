/** A run with the legs it lies on and its conductors that carry current. */
export interface LoadedRun {
  readonly id: string;
  readonly legs: readonly string[];
  readonly loadedConductors: number;
}

/** For each run the most loaded conductors of other runs beside it on any leg: what a derating table asks for. */
export function loadedBeside(runs: readonly LoadedRun[]): ReadonlyMap<string, number> {
  const onLeg = new Map<string, number>();
  for (const { id, legs, loadedConductors } of runs) {
    if (!(Number.isInteger(loadedConductors) && loadedConductors >= 0))
      throw new RangeError(`loaded conductors of ${id} must be a whole number ≥ 0, got ${loadedConductors}`);
    for (const leg of new Set(legs)) onLeg.set(leg, (onLeg.get(leg) ?? 0) + loadedConductors);
  }
  return new Map(
    runs.map(({ id, legs, loadedConductors }) => [
      id,
      Math.max(0, ...legs.map((leg) => (onLeg.get(leg) ?? 0) - loadedConductors)),
    ]),
  );
}
