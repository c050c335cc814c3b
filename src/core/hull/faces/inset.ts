import { type Point, plus, times } from "../vector.js";
import { type CurvedFace, frameAt } from "./face.js";
import { patchThrough } from "./patch.js";

/**
 * A lining: the strip moved inwards, square to itself, by the same distance everywhere. Its u is that of the skin it lies behind, which
 * is the station but for what the skin leans forward or aft.
 * @param insetM Distance from the skin [m].
 * @throws RangeError if the distance is negative.
 */
export function insetFace(skin: CurvedFace, insetM: number): CurvedFace {
  if (!(insetM >= 0)) throw new RangeError(`inset must be ≥ 0 m, got ${insetM}`);
  const { uKnots, vKnots } = skin.patch;
  const rows = vKnots.map((v) =>
    uKnots.map((u): Point => {
      const { point, normal } = frameAt(skin, [u, v]);
      // the inner side looks towards the centreline
      const inward = normal[1] * point[1] < 0 ? insetM : -insetM;
      return plus(point, times(normal, inward));
    }),
  );
  return { kind: "curved", patch: patchThrough(uKnots, vKnots, rows) };
}
