import type { Source, Status } from "./source.js";

/** Current allowed by size and by temperature rating of the insulation. `amps[i]` belongs to `ratingsC[i]`; rows rise in size. */
export interface AmpacityTable {
  readonly source: Source;
  /** Air the table is for [°C]. */
  readonly airC: number;
  readonly ratingsC: readonly number[];
  readonly rows: readonly { readonly key: string; readonly amps: readonly number[] }[];
  readonly [figure: string]: unknown;
}

export interface EngineSpaceTable {
  readonly source: Source;
  readonly airC: number;
  readonly rows: readonly { readonly ratingC: number; readonly factor: number; readonly status: Status }[];
  readonly [figure: string]: unknown;
}

/** Rows rise in number of loaded conductors; below the first row the factor is 1. */
export interface BundlingTable {
  readonly source: Source;
  /** Nominal voltage from which the rule-set asks for it. */
  readonly fromNominalV: number;
  readonly rows: readonly { readonly conductorsFrom: number; readonly factor: number }[];
  readonly [figure: string]: unknown;
}
