import type { FaultSource, Faults, GuardedConductor } from "./guard.js";

function throughBattery(emfV: number, ohm: number): number {
  if (!(emfV >= 0)) throw new RangeError(`EMF must be ≥ 0 V, got ${emfV}`);
  if (!(ohm > 0)) throw new RangeError(`resistance of a shorted circuit must be > 0 Ω, got ${ohm}`);
  return emfV / ohm;
}

/** Least resistance behind the posts [Ω]: the stated one, or what the stated short-circuit current means where that is less. */
function strongestOhm(source: FaultSource & { kind: "battery" }): number {
  const { shortCircuitA, maxEmfV, minInternalOhm } = source;
  if (shortCircuitA === undefined) return minInternalOhm;
  if (!(shortCircuitA > 0)) throw new RangeError(`short-circuit current must be > 0 A, got ${shortCircuitA}`);
  return Math.min(minInternalOhm, maxEmfV / shortCircuitA);
}

/**
 * Largest current of a short just behind the device [A]: full battery at its least resistance, copper cold.
 * Protecting electronics of a lithium battery are not counted on: they may fail closed.
 * @returns undefined where a length or the source is not known.
 * @throws RangeError if a resistance or voltage is negative or nothing at all limits the current.
 */
export function shortAtDeviceA(faults: Faults): number | undefined {
  const { source, nearLoopOhm } = faults;
  if (source.kind === "unknown") return undefined;
  if (source.kind === "limited") return source.maxA;
  if (nearLoopOhm === undefined) return undefined;
  return throughBattery(source.maxEmfV, strongestOhm(source) + nearLoopOhm);
}

/**
 * Least current of a short at the far end of one conductor [A]: battery at its reserve, old and cold, copper hot.
 * @returns undefined where a length or the source is not known.
 * @throws RangeError as `shortAtDeviceA`.
 */
export function shortAtFarEndA(faults: Faults, conductor: GuardedConductor): number | undefined {
  const { source } = faults;
  if (source.kind === "unknown") return undefined;
  if (source.kind === "limited") return source.maxA;
  if (conductor.farLoopOhm === undefined) return undefined;
  return throughBattery(source.minEmfV, source.maxInternalOhm + conductor.farLoopOhm);
}
