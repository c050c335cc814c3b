import type { Shows } from "../core/plan/model/plan.js";
import type { Sheet } from "../drawing/shapes.js";

/** One printed page: its drawing and the caption it goes by in lists. */
export interface Page {
  readonly sheet: Sheet;
  readonly caption: string;
  /** Titles of the parts of the packet that stand on it. */
  readonly parts: readonly string[];
}

export interface Paper {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Where pieces are laid: inside the margins, under the heading, over the foot [mm]. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const sizes = { letter: [279.4, 215.9], a4: [297, 210] } as const satisfies Record<
  Shows["paper"],
  readonly [number, number]
>;

/** Pages lie on their long side. The left margin leaves room for a clip or holes. */
export function paperOf(paper: Shows["paper"]): Paper {
  const [widthMm, heightMm] = sizes[paper];
  return { widthMm, heightMm, left: 17, right: widthMm - 13, top: heightMm - 30, bottom: 17 };
}
