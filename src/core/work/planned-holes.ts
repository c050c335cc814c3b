import { holePlaces, piecePlaces } from "../plan/complete/placing.js";
import type { CompletePlan, PiecePlace } from "../plan/completed.js";
import type { HolePlan, Place, Side } from "../plan/model/placing.js";

/** A hole of a face as the plan wants it [m]. */
export interface PlannedHole {
  /** Name of its mark: a piece of gear, or a hole of a face. */
  readonly hole: string;
  readonly on: string;
  readonly side: Side;
  /** Undefined: one of a row, whose place only the form of the boat tells. */
  readonly at?: Place;
  /** Undefined: no size is told. */
  readonly sizeM?: number;
  /** It was there before any work. */
  readonly there: boolean;
}

/** Every hole the plan wants in a face of the boat. */
export function plannedHoles({ source }: CompletePlan): readonly PlannedHole[] {
  return [
    ...source.gear.flatMap((gear) => {
      const { hole } = gear;
      return hole === undefined ? [] : piecePlaces(gear).map((piece) => planned(piece, hole, false));
    }),
    ...source.hull.faces.flatMap(({ name, holes }) =>
      holes.flatMap((hole) => holePlaces(name, hole).map((place) => planned(place, hole.hole, hole.there))),
    ),
  ];
}

function planned({ name, on, side, where }: PiecePlace, hole: HolePlan, there: boolean): PlannedHole {
  return {
    hole: name,
    on,
    side,
    there,
    ...(where.kind === "one" ? { at: where.place } : {}),
    ...(hole.sizeM === undefined ? {} : { sizeM: hole.sizeM }),
  };
}
