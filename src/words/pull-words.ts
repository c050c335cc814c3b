import type { HullFigures } from "../core/hull/figures.js";
import type { Shows } from "../core/plan/model/plan.js";
import { boreWords } from "./hull-words.js";
import { type LayoutWords, layoutInEnglish } from "./layout/english.js";
import { lengthWords } from "./numbers.js";

export interface PullRow {
  readonly cable: string;
  /** Places it is drawn through, first to last. */
  readonly through: string;
  readonly line: string;
  readonly mustPass: string;
  /** The narrowest place on its way and how wide that is; empty where none has a size. */
  readonly tightest: string;
}

/** How each cable comes to its hole, in the order to pull them. */
export function pullRows(
  { pulling }: HullFigures,
  shows: Shows,
  { sided }: LayoutWords = layoutInEnglish,
): PullRow[] {
  const clear = new Map(pulling.passages.map(({ name, clearM }) => [name, clearM]));
  return pulling.order.map(({ name, through, lengthM, endM }): PullRow => {
    const sizes = through.flatMap((place) => {
      const clearM = clear.get(place);
      return clearM === undefined ? [] : [{ place, clearM }];
    });
    const tightest = sizes.toSorted((a, b) => a.clearM - b.clearM)[0];
    return {
      cable: name,
      through: through.map(sided).join(" → "),
      line: lengthWords(lengthM, shows),
      mustPass: boreWords(endM * 1000),
      tightest:
        tightest === undefined ? "" : `${sided(tightest.place)}, ${boreWords(tightest.clearM * 1000)}`,
    };
  });
}
