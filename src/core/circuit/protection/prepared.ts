import { type DeviceKind, deviceKinds } from "./devices.js";
import { shortAtDeviceA, shortAtFarEndA } from "./faults.js";
import type { Guard, GuardedConductor, GuardRules } from "./guard.js";
import { adiabaticMaxS, withstandA2s } from "./withstand.js";

/** A conductor with what does not depend on the rating worked out once. */
export interface PreparedConductor {
  readonly conductor: GuardedConductor;
  /** Greatest rating the rule-set allows in front of it [A]. */
  readonly allowedA: number | undefined;
  readonly withstandA2s: number | undefined;
  readonly farShortA: number | undefined;
  /** Longest that a short at its far end may last [s]. */
  readonly maxShortS: number | undefined;
  /** The source is limited to less than it carries: no short can overload it. */
  readonly neverOverloaded: boolean;
}

/** A short at the far end of a conductor, and how long it may last [A], [s]. */
export interface HardShort {
  readonly farShortA: number;
  readonly maxShortS: number;
}

/** The least of some figures and whose it is, and the first thing whose figure is missing. */
export interface Least {
  readonly least: { readonly value: number; readonly of: string } | undefined;
  readonly unknown: string | undefined;
}

/** A guard ready to be tried at many ratings. */
export interface PreparedGuard {
  readonly guard: Guard;
  readonly rules: GuardRules;
  readonly kind: DeviceKind;
  readonly conductors: readonly PreparedConductor[];
  /** Those of them whose short at the far end is the hardest to clear: where these are cleared, all are. */
  readonly hardest: readonly HardShort[];
  readonly nearShortA: number | undefined;
  /** Allowed rating in front of the conductors [A]. */
  readonly allowed: Least;
  /** Makers' greatest fuse in front of the gear [A]. */
  readonly gear: Least;
  /** What the conductors that a short can overload withstand [A²s]. */
  readonly withstand: Least;
}

function leastOf<T>(
  things: readonly T[],
  idOf: (thing: T) => string,
  limitOf: (thing: T) => number | undefined,
): Least {
  let least: { value: number; of: string } | undefined;
  let unknown: string | undefined;
  for (const thing of things) {
    const value = limitOf(thing);
    if (value === undefined) unknown ??= idOf(thing);
    else if (!(value >= 0)) throw new RangeError(`limit of ${idOf(thing)} must be ≥ 0, got ${value}`);
    else if (least === undefined || value < least.value) least = { value, of: idOf(thing) };
  }
  return { least, unknown };
}

/** A device takes no less time for a smaller current: a short that is no smaller and may last as long is no harder. */
function hardestOf(conductors: readonly PreparedConductor[]): HardShort[] {
  const hardest: HardShort[] = [];
  for (const { farShortA, maxShortS, neverOverloaded } of conductors) {
    if (neverOverloaded || farShortA === undefined || maxShortS === undefined) continue;
    const isEasier = (a: HardShort, b: HardShort) => a.farShortA >= b.farShortA && a.maxShortS >= b.maxShortS;
    const own = { farShortA, maxShortS };
    if (hardest.some((other) => isEasier(own, other))) continue;
    let kept = 0;
    for (const other of hardest) if (!isEasier(other, own)) hardest[kept++] = other;
    hardest.length = kept;
    hardest.push(own);
  }
  return hardest;
}

/** @throws RangeError if a current or a start's duration is negative or a conductor's figures are impossible. */
export function prepareGuard(guard: Guard, rules: GuardRules): PreparedGuard {
  if (!(guard.loadA >= 0)) throw new RangeError(`load of ${guard.id} must be ≥ 0 A, got ${guard.loadA}`);
  if (guard.ratingA !== undefined && !(guard.ratingA > 0)) {
    throw new RangeError(`rating of ${guard.id} must be > 0 A, got ${guard.ratingA}`);
  }
  if (typeof guard.start === "object" && !(guard.start.lastsS >= 0)) {
    throw new RangeError(`start at ${guard.id} must last ≥ 0 s, got ${guard.start.lastsS}`);
  }
  const limited = guard.faults.source.kind === "limited";
  const conductors = guard.conductors.map((conductor): PreparedConductor => {
    const { ampacityA, areaMm2, insulationC } = conductor;
    const farShortA = shortAtFarEndA(guard.faults, conductor);
    const mostA2s = insulationC === undefined ? undefined : withstandA2s(areaMm2, insulationC);
    return {
      conductor,
      allowedA: ampacityA === undefined ? undefined : ampacityA * rules.maxProtectionShare.value,
      withstandA2s: mostA2s,
      farShortA,
      maxShortS:
        mostA2s === undefined || farShortA === undefined
          ? undefined
          : Math.min(adiabaticMaxS, mostA2s / farShortA ** 2),
      neverOverloaded:
        limited && ampacityA !== undefined && farShortA !== undefined && farShortA <= ampacityA,
    };
  });
  const idOf = (each: PreparedConductor): string => each.conductor.id;
  return {
    guard,
    rules,
    kind: deviceKinds[guard.device],
    conductors,
    hardest: hardestOf(conductors),
    nearShortA: shortAtDeviceA(guard.faults),
    allowed: leastOf(conductors, idOf, ({ allowedA }) => allowedA),
    gear: leastOf(
      guard.gear,
      ({ id }) => id,
      ({ maxFuseA }) => maxFuseA,
    ),
    withstand: leastOf(
      conductors.filter(({ neverOverloaded }) => !neverOverloaded),
      idOf,
      (each) => each.withstandA2s,
    ),
  };
}
