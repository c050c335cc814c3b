import type { FaceName } from "../plan/model/layout.js";
import type { WallMaterial } from "../reference/boxes.js";

export type { FaceName } from "../plan/model/layout.js";

/** A box as it hangs or stands. Inside measures [mm]: across, up (or back, on a floor), and from base to lid. */
export interface BoxBody {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly depthMm: number;
  readonly wallMm: number;
  readonly material: WallMaterial;
  /** Lid outwards on a wall, or upwards on a floor. */
  readonly mounted: "wall" | "floor";
  /** Corner posts for the lid's screws: how far each reaches along the sides from the inner corner. */
  readonly bossMm?: number;
  /** From the lid's seat down into the side, where no hole may come: lip, seal groove. */
  readonly lidLipMm?: number;
  /** Faces the owner keeps free. */
  readonly closedFaces?: readonly FaceName[];
}

export type Attitude = "down" | "side" | "up";

/** A rectangle that no hole or nut may touch. */
export interface KeepOut {
  readonly x: number;
  readonly y: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** One drillable side, seen from outside: x along it from the left inner corner, y from the base towards the lid [mm]. */
export interface Face {
  readonly name: FaceName;
  readonly attitude: Attitude;
  readonly lengthMm: number;
  readonly depthMm: number;
  readonly lidLipMm: number;
  readonly keepOuts: readonly KeepOut[];
}

/** Water runs off a downward face, past a sideways one, and stands on an upward one. */
const preference: Readonly<Record<Attitude, number>> = { down: 0, side: 1, up: 2 };

/**
 * The sides of a box, best for entries first. The base (it is screwed down) and the lid are not drilled.
 * @throws RangeError if a measure is not above zero or a boss fills the side.
 */
export function facesOf(box: BoxBody): Face[] {
  const { widthMm, heightMm, depthMm, wallMm, mounted, bossMm = 0, lidLipMm = 0, closedFaces = [] } = box;
  for (const [what, value] of Object.entries({ widthMm, heightMm, depthMm, wallMm })) {
    if (!(value > 0)) throw new RangeError(`box ${what} must be > 0, got ${value}`);
  }
  if (!(bossMm >= 0 && 2 * bossMm < Math.min(widthMm, heightMm))) {
    throw new RangeError(`bosses must be ≥ 0 mm and leave room on each side, got ${bossMm}`);
  }
  if (!(lidLipMm >= 0 && lidLipMm < depthMm)) {
    throw new RangeError(`lid lip must be ≥ 0 and under the depth of ${depthMm} mm, got ${lidLipMm}`);
  }
  const side = (name: FaceName, attitude: Attitude, lengthMm: number): Face => ({
    name,
    attitude,
    lengthMm,
    depthMm,
    lidLipMm,
    keepOuts:
      bossMm === 0
        ? []
        : [
            { x: 0, y: 0, widthMm: bossMm, heightMm: depthMm },
            { x: lengthMm - bossMm, y: 0, widthMm: bossMm, heightMm: depthMm },
          ],
  });
  const faces =
    mounted === "wall"
      ? [
          side("down", "down", widthMm),
          side("left", "side", heightMm),
          side("right", "side", heightMm),
          side("up", "up", widthMm),
        ]
      : [
          side("near", "side", widthMm),
          side("far", "side", widthMm),
          side("left", "side", heightMm),
          side("right", "side", heightMm),
        ];
  return faces
    .filter((face) => !closedFaces.includes(face.name))
    .toSorted((a, b) => preference[a.attitude] - preference[b.attitude] || b.lengthMm - a.lengthMm);
}
