import type { LaidHull } from "../../../../core/hull/figures.js";
import type { Point } from "../../../../core/hull/vector.js";
import type { CompletePlan } from "../../../../core/plan/completed.js";
import type { GearRole } from "../../../../core/plan/model/gear.js";
import type { Enclosure, SizeM } from "../../../../core/plan/model/layout.js";
import type { Side } from "../../../../core/plan/model/placing.js";
import { drawnSizes } from "../../../../core/reference/drawn-sizes.js";
import { placedIn } from "./on-face.js";

export type ThingKind = keyof typeof drawnSizes.kinds;

/** Something of the plan that stands somewhere, or could. */
export interface BoatThing {
  readonly name: string;
  /** The entry of the plan it is written under, how many pieces that has, and which of them it is. */
  readonly group: string;
  readonly count: number;
  readonly index: number;
  readonly kind: ThingKind;
  readonly role?: GearRole;
  /** Its middle. Undefined: not placed yet. */
  readonly at?: Point;
  /** Along, across and up [m]. */
  readonly sizeM: SizeM;
  /** False: the size is only for the eye. */
  readonly sizeKnown: boolean;
  /** The face it stands on; left out: it stands free. */
  readonly face?: {
    readonly name: string;
    readonly side: Side;
    readonly row: boolean;
    readonly twin?: string;
  };
}

/** Everything of the plan that has a place in the boat, in the plan's order. */
export function thingsOf(plan: CompletePlan, hull: LaidHull): BoatThing[] {
  const { source } = plan;
  return [
    ...source.batteries.map((one) => single("battery", one, one.standsAtM, one.sizeM)),
    ...source.chargers.map((one) => single("charger", one, one.standsAtM)),
    ...source.converters.map((one) => single("converter", one, one.standsAtM)),
    ...source.panels.map((one) => single("panel", one, one.standsAtM, outsideOf(one))),
    ...source.boxes.map((one) => single("box", one, one.standsAtM, outsideOf(one))),
    ...gearThings(plan, hull),
    ...source.waypoints.map((one) => single("waypoint", one, one.atM)),
  ];
}

function gearThings(plan: CompletePlan, hull: LaidHull): BoatThing[] {
  const onFaces = new Map(placedIn(hull).map(({ piece, at }) => [piece.name, at]));
  const counts = new Map(plan.source.gear.map(({ name, count }) => [name, count]));
  const seen = new Map<string, number>();
  return plan.gear.map(({ name, group, placed, role, hole, standsAtM }): BoatThing => {
    const index = seen.get(group) ?? 0;
    seen.set(group, index + 1);
    const at = placed === undefined ? standsAtM : onFaces.get(name);
    const [along, across, up] = drawnSizes.roles[role];
    const wide = hole?.flangeM ?? hole?.sizeM;
    return {
      name,
      group,
      count: counts.get(group) ?? 1,
      index,
      kind: "gear",
      role,
      ...(at && { at }),
      sizeM: wide === undefined ? [along, across, up] : [wide, wide, up],
      sizeKnown: wide !== undefined,
      ...(placed && {
        face: {
          name: placed.on,
          side: placed.side,
          row: placed.where.kind === "row",
          ...(placed.twin !== undefined && { twin: placed.twin }),
        },
      }),
    };
  });
}

function single(kind: ThingKind, { name }: { readonly name: string }, at?: Point, sizeM?: SizeM): BoatThing {
  return {
    name,
    group: name,
    count: 1,
    index: 0,
    kind,
    ...(at && { at }),
    sizeM: sizeM ?? drawnSizes.kinds[kind],
    sizeKnown: sizeM !== undefined,
  };
}

/** Outside of a box: along the boat by its depth, across it, and up. On a floor it lies on its back. */
function outsideOf({ insideM, wallM = 0, mounted }: Enclosure): SizeM | undefined {
  if (insideM === undefined) return undefined;
  const [across, up, deep] = [insideM[0] + 2 * wallM, insideM[1] + 2 * wallM, insideM[2] + 2 * wallM];
  return mounted === "floor" ? [up, across, deep] : [deep, across, up];
}
