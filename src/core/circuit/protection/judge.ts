import { chooseRating, type RatingChoice, type TriedRating } from "./choose.js";
import { beforeMain, failsBeforeMain } from "./conditions/before-main.js";
import { carriesLoad } from "./conditions/carries-load.js";
import { clearsFarShort } from "./conditions/clears-far-short.js";
import { gearLimit } from "./conditions/gear-limit.js";
import { interrupts } from "./conditions/interrupts.js";
import { nearSource } from "./conditions/near-source.js";
import type { OwnCondition } from "./conditions/own-condition.js";
import { protectsWeakest } from "./conditions/protects-weakest.js";
import { ridesStart } from "./conditions/rides-start.js";
import { withstandsShort } from "./conditions/withstands-short.js";
import type { Guard, GuardRules, NearerDevice } from "./guard.js";
import { type PreparedGuard, prepareGuard } from "./prepared.js";
import {
  type ConditionResult,
  type Harm,
  mendedByCopper,
  type ProtectionCondition,
  type ProtectionFigures,
} from "./types.js";

const ownConditions: readonly OwnCondition[] = [
  carriesLoad,
  ridesStart,
  protectsWeakest,
  gearLimit,
  clearsFarShort,
  withstandsShort,
];

/** Every condition that applies, at one rating, in the order of `protectionConditions`. */
function conditionsAt(
  prepared: PreparedGuard,
  ratingA: number,
  nearer: NearerDevice | undefined,
): readonly ConditionResult[] {
  return [
    ...ownConditions.map(({ result }) => result(prepared, ratingA)),
    interrupts(prepared),
    nearSource(prepared),
    beforeMain(prepared, ratingA, nearer),
  ].filter((result) => result !== undefined);
}

/** A guard with every standard rating of its kind tried, each once, and only if asked for: a rating that stands already need not be. */
export class TriedGuard {
  readonly prepared: PreparedGuard;
  #alone: readonly TriedRating[] | undefined;
  #against: { readonly nearer: NearerDevice; readonly tried: readonly TriedRating[] } | undefined;

  /** @throws RangeError on impossible figures (negative load, length, resistance; areas and ratings not above zero). */
  constructor(guard: Guard, rules: GuardRules) {
    this.prepared = prepareGuard(guard, rules);
  }

  /** Every rating with what it breaks of the conditions a rating can mend, and of what the device nearer the source asks. */
  against(nearer: NearerDevice | undefined): readonly TriedRating[] {
    this.#alone ??= this.prepared.kind.ratingsA.map((ratingA) => this.#tried(ratingA));
    const nearerA = nearer?.ratingA;
    if (nearer === undefined || nearerA === undefined) return this.#alone;
    const known = this.#against;
    if (known?.nearer.ratingA === nearerA && known.nearer.device === nearer.device) return known.tried;
    const tried = this.#alone.map((each): TriedRating => {
      const fails = failsBeforeMain(this.prepared, each.ratingA, nearer.device, nearerA);
      return fails ? { ...each, fails: [...each.fails, "before-main"] } : each;
    });
    this.#against = { nearer, tried };
    return tried;
  }

  #tried(ratingA: number): TriedRating {
    const fails: ProtectionCondition[] = [];
    for (const own of ownConditions) if (own.fails(this.prepared, ratingA)) fails.push(own.condition);
    return { ratingA, fails };
  }
}

/** Chooses the smallest standard rating that breaks nothing; see `chooseRating`. */
export function choiceFor(
  guard: TriedGuard,
  nearer: NearerDevice | undefined,
  prefers?: (ratingA: number) => boolean,
): RatingChoice {
  return chooseRating(guard.against(nearer), prefers);
}

/**
 * The figures of one device at the owner's rating, at one settled on, or at the smallest standard rating that breaks no condition.
 * Where none does, the rating is the smallest that breaks `before-main` alone, else the largest that harms no conductor and no gear, and `conflict` names the two conditions
 * that exclude each other (absent where one condition alone excludes every standard rating).
 * @param thickerA The rating it would have with thicker conductors, where it has none that suits with these [A].
 */
export function figuresAt(
  tried: TriedGuard,
  nearer: NearerDevice | undefined,
  settledA?: number,
  thickerA?: number,
): ProtectionFigures {
  const { prepared } = tried;
  const { guard, allowed, conductors, nearShortA } = prepared;
  const ratings = tried.against(nearer);
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
    ...(guard.spare === true && { spare: true }),
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
    ...(thickerA !== undefined && {
      withThicker: { ratingA: thickerA, harms: harmsOf(conditionsAt(prepared, thickerA, nearer)) },
    }),
    ...(nextSmaller && { nextSmaller }),
  };
}

/**
 * The smallest rating that breaks nothing but what thicker conductors mend.
 * @param accepts What else is asked of it.
 */
export function ratingWithThicker(
  ratings: readonly TriedRating[],
  accepts: (ratingA: number) => boolean,
): number | undefined {
  return ratings.find(
    ({ ratingA, fails }) => fails.every((condition) => mendedByCopper.has(condition)) && accepts(ratingA),
  )?.ratingA;
}

/** What a device at a rating does not spare and thicker copper would: of each condition the conductor that stands it least. */
export const harmsOf = (conditions: readonly ConditionResult[]): Harm[] =>
  conditions.flatMap(({ condition, state, binds }) =>
    state === "fails" && binds !== undefined && mendedByCopper.has(condition)
      ? [{ condition, branch: binds }]
      : [],
  );
