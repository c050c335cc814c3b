import { heightOver } from "../../../../core/hull/float/waterplane.js";
import { type Point, straightM } from "../../../../core/hull/vector.js";
import type { StillWater } from "../../../state/figures/messages.js";
import { bottomAt, sheerAt } from "./hull-at.js";
import { type BoatScene, type Moves, placeIn } from "./scene.js";

/** Where a place is, as one would measure it [m]. */
export interface Measures {
  /** Forward of the aft end. */
  readonly forwardM: number;
  /** From the centreline; positive to port. */
  readonly toPortM: number;
  /** Up from the base line, from the bottom under it, and down from the sheer beside it. */
  readonly upM: number;
  readonly overBottomM: number;
  readonly underSheerM: number;
  /** Over still water; undefined where how she floats is not worked out. */
  readonly overWaterM?: number;
  /** The nearest other thing, from middle to middle. */
  readonly nearest?: { readonly name: string; readonly distanceM: number };
}

export function measuresOf(
  scene: BoatScene,
  name: string,
  at: Point,
  moves?: Moves,
  water?: StillWater,
): Measures {
  const { drawn } = scene;
  let nearest: Measures["nearest"];
  for (const thing of scene.things) {
    const other = thing.name === name ? undefined : placeIn(scene, moves, thing.name);
    if (other === undefined) continue;
    const distanceM = straightM(at, other);
    if (nearest === undefined || distanceM < nearest.distanceM) nearest = { name: thing.name, distanceM };
  }
  return {
    forwardM: at[0] - drawn.form.fromM,
    toPortM: at[1],
    upM: at[2],
    overBottomM: at[2] - bottomAt(drawn, at[0], at[1]),
    underSheerM: sheerAt(drawn, at[0])[1] - at[2],
    ...(typeof water === "object" && { overWaterM: heightOver(water, at) }),
    ...(nearest && { nearest }),
  };
}
