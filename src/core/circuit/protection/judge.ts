import { chooseRating, type RatingChoice, type TriedRating } from "./choose.js";
import { beforeMain } from "./conditions/before-main.js";
import { carriesLoad } from "./conditions/carries-load.js";
import { clearsFarShort } from "./conditions/clears-far-short.js";
import { gearLimit } from "./conditions/gear-limit.js";
import { interrupts } from "./conditions/interrupts.js";
import { nearSource } from "./conditions/near-source.js";
import { protectsWeakest } from "./conditions/protects-weakest.js";
import { ridesStart } from "./conditions/rides-start.js";
import { withstandsShort } from "./conditions/withstands-short.js";
import type { Guard, GuardRules, NearerDevice } from "./guard.js";
import { type PreparedGuard, prepareGuard } from "./prepared.js";
import type { ConditionResult, ProtectionCondition, ProtectionFigures } from "./types.js";

/** The conditions that depend on the device's own rating alone; those that do not apply are undefined. */
const ownConditions = [carriesLoad, ridesStart, protectsWeakest, gearLimit, clearsFarShort, withstandsShort];

/** Every condition that applies, at one rating, in the order of `protectionConditions`. */
function conditionsAt(
  prepared: PreparedGuard,
  ratingA: number,
  nearer: NearerDevice | undefined,
): readonly ConditionResult[] {
  return [
    ...ownConditions.map((judge) => judge(prepared, ratingA)),
    interrupts(prepared),
    nearSource(prepared),
    beforeMain(prepared, ratingA, nearer),
  ].filter((result) => result !== undefined);
}

/** A guard with every standard rating of its kind tried against the conditions that do not look at other devices. */
export interface TriedGuard {
  readonly prepared: PreparedGuard;
  readonly tried: readonly TriedRating[];
}

/** @throws RangeError on impossible figures (negative load, length, resistance; areas and ratings not above zero). */
export function tryRatings(guard: Guard, rules: GuardRules): TriedGuard {
  const prepared = prepareGuard(guard, rules);
  const tried = prepared.kind.ratingsA.map((ratingA): TriedRating => {
    const fails: ProtectionCondition[] = [];
    for (const judge of ownConditions) {
      const result = judge(prepared, ratingA);
      if (result?.state === "fails") fails.push(result.condition);
    }
    return { ratingA, fails };
  });
  return { prepared, tried };
}

/** Adds what the device nearer the source asks of each rating. */
function withNearer(
  { prepared, tried }: TriedGuard,
  nearer: NearerDevice | undefined,
): readonly TriedRating[] {
  if (nearer?.ratingA === undefined) return tried;
  return tried.map((each): TriedRating => {
    const fails = beforeMain(prepared, each.ratingA, nearer)?.state === "fails";
    return fails ? { ...each, fails: [...each.fails, "before-main"] } : each;
  });
}

/** Chooses the smallest standard rating that breaks nothing; see `chooseRating`. */
export function choiceFor(
  guard: TriedGuard,
  nearer: NearerDevice | undefined,
  prefers?: (ratingA: number) => boolean,
): RatingChoice {
  return chooseRating(withNearer(guard, nearer), prefers);
}

/** The figures of one device at a rating already settled on. */
export function figuresAt(
  { prepared, tried }: TriedGuard,
  nearer: NearerDevice | undefined,
  settledA?: number,
): ProtectionFigures {
  const { guard, allowed, conductors, nearShortA } = prepared;
  const ratings = withNearer({ prepared, tried }, nearer);
  const choice = chooseRating(ratings);
  const ratingA = guard.ratingA ?? settledA ?? choice.ratingA;
  const conditions = conditionsAt(prepared, ratingA, nearer);
  const weakest = conductors.find(({ conductor }) => conductor.id === allowed.least?.of);
  const farA = conductors.reduce((least, { farShortA = Infinity }) => Math.min(least, farShortA), Infinity);
  const clears = conditions.find(({ condition }) => condition === "clears-far-short");
  const nextSmaller = ratings.findLast((each) => each.ratingA < ratingA);
  return {
    id: guard.id,
    of: guard.of,
    device: guard.device,
    ratingA,
    fixedByOwner: guard.ratingA !== undefined,
    loadA: guard.loadA,
    startA: typeof guard.start === "string" ? guard.loadA : guard.start.currentA,
    ...(weakest?.allowedA !== undefined && {
      weakest: { id: weakest.conductor.id, sizeKey: weakest.conductor.sizeKey, allowedA: weakest.allowedA },
    }),
    ...(nearShortA !== undefined && { shortAtDeviceA: nearShortA }),
    ...(farA < Infinity && { shortAtFarEndA: farA }),
    ...(clears?.figure !== undefined && { clearsWithinS: clears.figure }),
    conditions,
    possibleA: choice.possibleA,
    ...(choice.conflict && { conflict: choice.conflict }),
    ...(nextSmaller && { nextSmaller }),
  };
}

/**
 * Judges the owner's rating, or chooses the smallest standard rating that breaks no condition.
 * Where none does, the rating is the smallest that breaks `before-main` alone, else the largest that harms no conductor and no gear, and `conflict` names the two conditions
 * that exclude each other (absent where one condition alone excludes every standard rating).
 * @throws RangeError as `tryRatings`.
 */
export function judgeGuard(guard: Guard, rules: GuardRules): ProtectionFigures {
  return figuresAt(tryRatings(guard, rules), guard.nearer);
}
