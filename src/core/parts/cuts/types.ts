/** Lengths in whole millimetres, money in whole minor units (cents), so that every comparison is exact. */

export interface CutPiece {
  readonly id: string;
  readonly lengthMm: number;
}

/** A length one can cut from: on hand, or new at a price. */
export interface StockLength {
  readonly id: string;
  readonly lengthMm: number;
  readonly source: "offcut" | "spool" | "new";
  /** How many there are; `any` for what the shop has plenty of. */
  readonly count: number | "any";
  /** Of one, for new stock; undefined: not known. */
  readonly priceMinor?: number;
  /** Cut off its old end before anything is measured from it. */
  readonly trimMm?: number;
}

/** Wire the shop cuts off in steps (whole metres, whole feet). */
export interface SoldByLength {
  readonly id: string;
  readonly stepMm: number;
  readonly pricePerStepMinor: number;
  /** Longest unbroken length the shop has. */
  readonly maxMm?: number;
}

/** Everything of one kind of wire: nothing is exchanged between kinds. */
export interface CutRequest {
  /** `16 AWG, 2 cores, red and black`. */
  readonly kind: string;
  readonly pieces: readonly CutPiece[];
  readonly stock: readonly StockLength[];
  readonly soldByLength?: SoldByLength;
  /** Lost at each cut. */
  readonly kerfMm?: number;
  /** A rest shorter than this is scrap. */
  readonly minUsefulMm?: number;
}

export interface CutOptions {
  /** Bound on the search, in steps of work; 1 is about a tenth of a second. Default 10. */
  readonly effort?: number;
}

export interface Cut {
  readonly piece: string;
  readonly lengthMm: number;
  /** Measured from the free end of the length as it lies there, what is trimmed off counted. */
  readonly fromMm: number;
  readonly toMm: number;
}

/** What is cut from one length, longest first. */
export interface CutLength {
  readonly stock: string;
  /** 1, 2 … among alike. */
  readonly copy: number;
  readonly source: StockLength["source"] | "by length";
  readonly lengthMm: number;
  readonly priceMinor: number;
  readonly cuts: readonly Cut[];
  readonly leftMm: number;
  readonly leftIsUseful: boolean;
}

/** The aim: least money, then least length opened. A lower bound of the pair, in that order. */
export interface CutAim {
  readonly priceMinor: number;
  readonly openedMm: number;
}

export type CutProblem =
  | {
      readonly problem: "longer-than-any-length";
      readonly piece: string;
      readonly lengthMm: number;
      readonly longestMm: number;
    }
  | { readonly problem: "not-enough-stock"; readonly neededMm: number; readonly onHandMm: number }
  | { readonly problem: "pieces-do-not-fit-stock"; readonly neededMm: number; readonly onHandMm: number }
  | { readonly problem: "negative-stock"; readonly stock: string; readonly count: number }
  | { readonly problem: "missing-price"; readonly stock: string };

export interface CutPlan {
  readonly kind: string;
  readonly lengths: readonly CutLength[];
  readonly total: CutAim;
  readonly pieceMm: number;
  readonly scrapMm: number;
  /** `proven`: nothing cheaper exists, and nothing as cheap opens less. `bounded`: the best found; `bound` is what no plan goes under. */
  readonly proof: "proven" | "bounded";
  readonly priceProven: boolean;
  readonly bound: CutAim;
  /** Prices that were not known; such stock is taken only where no priced stock could serve. */
  readonly problems: readonly CutProblem[];
}

export type CutAnswer =
  | { readonly ok: true; readonly plan: CutPlan }
  | { readonly ok: false; readonly kind: string; readonly problems: readonly CutProblem[] };
