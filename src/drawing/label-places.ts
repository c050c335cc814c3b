import { type Bounds, boundsOf } from "./bounds.js";
import { fitText } from "./fonts/wrap.js";
import { box, type TextStyle, text } from "./make.js";
import type { Point, Shape, Text } from "./shapes.js";

export interface Label {
  readonly at: Point;
  readonly words: string;
  readonly style?: TextStyle;
  /** Kept free round the point [mm]. */
  readonly clearMm: number;
}

const usualMm = 3.2;
const turns = [45, 135, 315, 225, 0, 180, 90, 270];

/**
 * Puts each label beside its point where it meets no label put before it and stays within the frame: near first, then farther out. One that finds no
 * room is left out and given back.
 */
export function placeLabels(
  labels: readonly Label[],
  frame: Bounds,
  taken: readonly Bounds[] = [],
): { readonly shapes: readonly Shape[]; readonly left: readonly Label[] } {
  const put: Bounds[] = [...taken];
  const shapes: Shape[] = [];
  const left: Label[] = [];
  for (const label of labels) {
    const found = candidates({ ...label, words: shortened(label) }).find((one) =>
      fits(boundsOf(one), frame, put),
    );
    if (found === undefined) {
      left.push(label);
      continue;
    }
    const bounds = boundsOf(found);
    put.push(bounds);
    // paper behind the words, so that lines of the drawing do not run through them
    shapes.push(
      box(bounds.minX - 0.4, bounds.minY + 0.3, bounds.maxX - bounds.minX + 0.8, bounds.maxY - bounds.minY, {
        fill: "paper",
      }),
      found,
    );
  }
  return { shapes, left };
}

/** A name longer than this is cut: a label is there to find the thing, and its full name stands in a table [mm]. */
const mostMm = 45;

function shortened({ words, style = {} }: Label): string {
  return fitText(words, mostMm, { sizeMm: style.sizeMm ?? usualMm, weight: style.weight ?? "regular" });
}

function candidates({ at, words, style = {}, clearMm }: Label): Text[] {
  const sizeMm = style.sizeMm ?? usualMm;
  return [0, 2.5, 5, 8].flatMap((more) =>
    turns.map((deg) => {
      const reach = clearMm + more;
      const [x, y] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
      const anchor = x > 0.3 ? "start" : x < -0.3 ? "end" : "middle";
      const down = y > 0.3 ? 0 : y < -0.3 ? sizeMm * 0.7 : sizeMm * 0.35;
      return text(at.x + x * reach, at.y + y * reach - down, words, { ...style, sizeMm, anchor });
    }),
  );
}

function fits(here: Bounds, frame: Bounds, put: readonly Bounds[]): boolean {
  const inside =
    here.minX >= frame.minX && here.maxX <= frame.maxX && here.minY >= frame.minY && here.maxY <= frame.maxY;
  return (
    inside &&
    put.every(
      (other) =>
        here.minX >= other.maxX + 0.4 ||
        here.maxX <= other.minX - 0.4 ||
        here.minY >= other.maxY ||
        here.maxY <= other.minY,
    )
  );
}
