import { boundsOf } from "../../../drawing/bounds.js";
import type { Shape } from "../../../drawing/shapes.js";
import { ShapeView } from "../../parts/shape-view.js";

/** Width of the drawings, by which their words are sized, and air above and below them [mm]. */
export const widthMm = 96;
const airMm = 2.5;

const picture = { role: "img" } as const;

/** A drawing of this view, as high as what is drawn. */
export function Drawing({ shapes, label }: { shapes: readonly Shape[]; label: string }) {
  const bounds = shapes.map(boundsOf);
  const low = Math.min(...bounds.map(({ minY }) => minY)) - airMm;
  const high = Math.max(...bounds.map(({ maxY }) => maxY)) + airMm;
  return (
    <svg
      {...picture}
      className="tape-drawing"
      aria-label={label}
      viewBox={`0 ${-high} ${widthMm} ${high - low}`}
    >
      <ShapeView shapes={shapes} />
    </svg>
  );
}
