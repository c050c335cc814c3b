/** A piece of wire with the places of its two ends, as the plan names them. */
export interface LabelledPiece {
  readonly piece: string;
  readonly run: string;
  readonly from: string;
  readonly to: string;
  /** `16 AWG, 2 cores`. */
  readonly kind: string;
  readonly colours: readonly string[];
  readonly lengthMm: number;
}

/** A flag to print: which end this is, and where the other one goes. */
export interface WireLabel {
  readonly piece: string;
  readonly run: string;
  readonly end: "start" | "end";
  readonly here: string;
  readonly there: string;
  readonly kind: string;
  readonly colours: readonly string[];
  readonly lengthMm: number;
}

/** Two labels a piece, put on before it is cut off the spool: the free end first. */
export function wireLabels(pieces: readonly LabelledPiece[]): WireLabel[] {
  return pieces.flatMap(({ from, to, ...rest }): WireLabel[] => [
    { ...rest, end: "start", here: from, there: to },
    { ...rest, end: "end", here: to, there: from },
  ]);
}
