import { failsBeforeMain } from "./conditions/before-main.js";
import type { Guard, GuardRules, NearerDevice } from "./guard.js";
import { choiceFor, figuresAt, ratingWithThicker, TriedGuard } from "./judge.js";
import type { ProtectionFigures } from "./types.js";

/** Guards with the outermost first, so that each stands after all it must let open before itself. */
function outermostFirst(guards: readonly Guard[], byId: ReadonlyMap<string, Guard>): Guard[] {
  const depth = new Map<string, number>();
  for (const guard of guards) {
    const chain: Guard[] = [];
    const seen = new Set<string>();
    let at: Guard | undefined = guard;
    while (at !== undefined && !depth.has(at.id)) {
      if (seen.has(at.id))
        throw new RangeError(`devices must not stand before each other in a ring, got ${at.id} twice`);
      seen.add(at.id);
      chain.push(at);
      at = at.nearer === undefined ? undefined : byId.get(at.nearer.id);
    }
    let next = at === undefined ? 0 : (depth.get(at.id) ?? 0) + 1;
    for (const each of chain.reverse()) depth.set(each.id, next++);
  }
  return guards.toSorted((a, b) => (depth.get(b.id) ?? 0) - (depth.get(a.id) ?? 0));
}

/** Devices with every rating settled. */
interface Settled {
  readonly tried: ReadonlyMap<string, TriedGuard>;
  /** By id: the owner's rating, or the one chosen [A]. */
  readonly ratingA: ReadonlyMap<string, number>;
  /** By id, where none suits: the one that would if the conductors were thicker [A]. */
  readonly thickerA: ReadonlyMap<string, number>;
  readonly nearerOf: (guard: Guard) => NearerDevice | undefined;
}

function settle(guards: readonly Guard[], rules: GuardRules): Settled {
  const byId = new Map(guards.map((guard) => [guard.id, guard]));
  if (byId.size !== guards.length)
    throw new RangeError("every device must have an id of its own, got one twice");
  const settledA = new Map(
    guards.flatMap(({ id, ratingA }) => (ratingA === undefined ? [] : [[id, ratingA] as const])),
  );
  const beyond = new Map<string, TriedGuard[]>();
  const nearerOf = ({ nearer }: Guard): NearerDevice | undefined => {
    if (nearer === undefined) return undefined;
    const ratingA = settledA.get(nearer.id) ?? nearer.ratingA;
    return ratingA === undefined ? nearer : { ...nearer, ratingA };
  };
  const tried = new Map<string, TriedGuard>();
  const thickerA = new Map<string, number>();
  for (const guard of outermostFirst(guards, byId)) {
    const own = new TriedGuard(guard, rules);
    tried.set(guard.id, own);
    if (guard.nearer !== undefined) {
      const siblings = beyond.get(guard.nearer.id);
      if (siblings) siblings.push(own);
      else beyond.set(guard.nearer.id, [own]);
    }
    const openFirst = (mainA: number): boolean =>
      (beyond.get(guard.id) ?? []).every(({ prepared }) => {
        const ratingA = settledA.get(prepared.guard.id);
        return ratingA === undefined || !failsBeforeMain(prepared, ratingA, guard.device, mainA);
      });
    if (guard.ratingA !== undefined) continue;
    const { ratingA, possibleA } = choiceFor(own, nearerOf(guard), openFirst);
    settledA.set(guard.id, ratingA);
    if (possibleA.length > 0 && openFirst(ratingA)) continue;
    const ratings = own.against(nearerOf(guard));
    const any = possibleA.length > 0 ? undefined : ratingWithThicker(ratings, () => true);
    const wider = ratingWithThicker(ratings, openFirst) ?? any;
    if (wider !== undefined) thickerA.set(guard.id, wider);
  }
  return { tried, ratingA: settledA, thickerA, nearerOf };
}

/**
 * Ratings of all devices of a boat: the owner's, or chosen as `judgeGuards` chooses them.
 * @returns By id [A].
 * @throws RangeError as `judgeGuards`.
 */
export function settledRatings(guards: readonly Guard[], rules: GuardRules): ReadonlyMap<string, number> {
  return settle(guards, rules).ratingA;
}

/**
 * Judges all devices of a boat together. Ratings left open are chosen from the outermost device inwards, and a main is chosen so
 * that the devices beyond it open before it wherever a rating allows that. `nearer.ratingA` is filled in from the guard of that id.
 * @returns One result for each guard, in the order given.
 * @throws RangeError if two guards share an id, devices stand before each other in a ring, or as `TriedGuard`.
 */
export function judgeGuards(guards: readonly Guard[], rules: GuardRules): readonly ProtectionFigures[] {
  const { tried, ratingA, thickerA, nearerOf } = settle(guards, rules);
  return guards.flatMap((guard) => {
    const own = tried.get(guard.id);
    const { id } = guard;
    return own === undefined ? [] : [figuresAt(own, nearerOf(guard), ratingA.get(id), thickerA.get(id))];
  });
}
