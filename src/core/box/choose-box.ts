import type { BoxBody } from "./face.js";
import { type BoxAnswer, type BoxLayout, type BoxProblem, type BoxRequest, layOutBox } from "./layout.js";

export interface CatalogueBox {
  readonly id: string;
  readonly body: BoxBody;
  readonly priceMinor?: number;
}

export interface ChosenBox {
  readonly id: string;
  readonly volumeMm3: number;
  readonly priceMinor?: number;
  readonly layout: BoxLayout;
}

export interface BoxChoice {
  readonly smallest?: ChosenBox;
  /** Of those that fit and have a price. */
  readonly cheapest?: ChosenBox;
  /** The largest box that is smaller than the smallest that fits, and why it does not do. */
  readonly nextSmaller?: { readonly id: string; readonly problems: readonly BoxProblem[] };
  /** Fit, but have no price: the cheapest might be among them. */
  readonly withoutPrice: readonly string[];
  /** Every box that does not do, smallest first. */
  readonly refused: readonly { readonly id: string; readonly problems: readonly BoxProblem[] }[];
}

/** What a box takes up, walls included [mm³]. */
function outsideVolumeMm3(body: BoxBody): number {
  const wall = 2 * body.wallMm;
  return (body.widthMm + wall) * (body.heightMm + wall) * (body.depthMm + wall);
}

/** Lays out every box of the catalogue: the smallest and the cheapest that take it all, and why the next smaller does not. */
export function chooseBox(catalogue: readonly CatalogueBox[], request: BoxRequest): BoxChoice {
  const tried = catalogue
    .map((box) => ({ box, volumeMm3: outsideVolumeMm3(box.body), answer: layOutBox(box.body, request) }))
    .toSorted((a, b) => a.volumeMm3 - b.volumeMm3);
  const fitting = tried.flatMap(({ box, volumeMm3, answer }): ChosenBox[] =>
    answer.ok
      ? [
          {
            id: box.id,
            volumeMm3,
            layout: answer.layout,
            ...(box.priceMinor === undefined ? {} : { priceMinor: box.priceMinor }),
          },
        ]
      : [],
  );
  const [smallest] = fitting;
  const cheapest = fitting
    .filter((box) => box.priceMinor !== undefined)
    .toSorted((a, b) => (a.priceMinor ?? 0) - (b.priceMinor ?? 0))[0];
  const refused = tried.flatMap(({ box, answer }) =>
    answer.ok ? [] : [{ id: box.id, problems: problemsOf(answer) }],
  );
  const nextSmaller = tried.findLast(
    (one) => !one.answer.ok && one.volumeMm3 < (smallest?.volumeMm3 ?? Number.POSITIVE_INFINITY),
  );
  return {
    ...(smallest === undefined ? {} : { smallest }),
    ...(cheapest === undefined ? {} : { cheapest }),
    ...(nextSmaller === undefined
      ? {}
      : { nextSmaller: { id: nextSmaller.box.id, problems: problemsOf(nextSmaller.answer) } }),
    withoutPrice: fitting.filter((box) => box.priceMinor === undefined).map((box) => box.id),
    refused,
  };
}

const problemsOf = (answer: BoxAnswer): readonly BoxProblem[] => (answer.ok ? [] : answer.problems);
