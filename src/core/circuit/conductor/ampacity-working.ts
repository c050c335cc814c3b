import type { Source } from "../../reference/source.js";

export interface AmpacityFactor {
  readonly kind: "engine space" | "bundle" | "insulation in warm air";
  readonly factor: number;
  readonly source: Source;
}

/** Allowed current with its working, so that a face can show where it comes from. */
export interface AmpacityWorking {
  /** Allowed current here [A]; undefined where no table reaches, and then `missing` says what. */
  readonly ampacityA: number | undefined;
  readonly missing?: "size" | "insulation";
  /** Before factors [A]. */
  readonly baseA: number;
  /** Row and column it was read from; the row is the largest size not above the conductor's own. */
  readonly rowKey: string;
  readonly columnC: number;
  readonly factors: readonly AmpacityFactor[];
  readonly source: Source;
}
