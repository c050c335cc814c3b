import { jointOhm } from "../circuit/conductor/contacts.js";
import type { RunCable } from "../circuit/conductor/run-cable.js";
import type { CompletePlan } from "../plan/completed.js";
import { type Meeting, meetings } from "./meeting.js";
import { type PlacedEnd, placedEnds } from "./plan-ends.js";
import { type Termination, termination } from "./termination.js";

/** One conductor end with all one needs at the bench. */
export interface EndFigures extends Termination {
  readonly at: PlacedEnd;
  /** Joint it shares with others, by id; undefined: it has a terminal of its own. */
  readonly joint?: string;
  /** Resistance the electrical figures take for it [Ω]. */
  readonly ohm: number;
}

export interface TerminationsFigures {
  readonly ends: readonly EndFigures[];
  /** Joints of two or more conductors: one piece each, however many ends it has. */
  readonly joints: readonly Meeting[];
}

/** How every conductor end is made. @param currentA Greatest current of a conductor by its id; undefined: not known. */
export function planTerminations(
  plan: CompletePlan,
  cables: readonly RunCable[],
  currentA: (conductor: string) => number | undefined,
): TerminationsFigures {
  const ends = placedEnds(plan, cables);
  const joints = meetings(plan, ends);
  const jointOf = new Map(
    joints.flatMap((joint) =>
      joint.sides.flatMap((side, index) =>
        side.flatMap(({ end }) => (end === undefined ? [] : [[end.id, { joint, index }] as const])),
      ),
    ),
  );
  return {
    joints,
    ends: ends.map((at): EndFigures => {
      const shared = jointOf.get(at.id);
      const current = currentA(at.conductor);
      const made = termination({
        id: at.id,
        size: at.size,
        outsideMm: at.outsideMm,
        conductor: at.make,
        kind: at.kind,
        surroundings: at.surroundings,
        ...(shared === undefined ? {} : partners(at, shared.joint, shared.index)),
        ...(at.studM === undefined ? {} : { studMm: at.studM * 1000 }),
        ...(at.tabM === undefined ? {} : { tabMm: at.tabM * 1000 }),
        ...(current === undefined ? {} : { currentA: current }),
      });
      return {
        ...made,
        at,
        ohm: jointOhm(at.kind, at.size.areaMm2),
        ...(shared === undefined ? {} : { joint: shared.joint.id }),
      };
    }),
  };
}

type Partners = Pick<Parameters<typeof termination>[0], "together" | "meets">;

/** What lies in the same barrel, and what in the one across; of a joint without sides, the thickest other conductor. */
function partners(at: PlacedEnd, { sides }: Meeting, index: number): Partners {
  const others = (sides[index] ?? []).filter(({ end }) => end?.id !== at.id);
  const across = sides.length > 1 ? (sides[1 - index] ?? []) : others;
  const [first, ...rest] = across.toSorted((a, b) => b.size.areaMm2 - a.size.areaMm2);
  const meets =
    first === undefined
      ? {}
      : {
          meets: {
            size: first.size,
            outsideMm: first.outsideMm,
            ...(sides.length > 1 ? { together: rest.map(({ size }) => size) } : {}),
          },
        };
  return sides.length > 1 ? { together: others.map(({ size }) => size), ...meets } : meets;
}
