import type { NetworkNumbers } from "./types.js";

/**
 * What the Newton iteration asks of a method (radial or sparse): solve the network once with every load replaced by a
 * straight line. Arrays are the caller's to fill and to read, one row a load or a converter, and are reused between solves.
 */
export interface LinearNetwork {
  readonly method: "radial" | "sparse";
  /** Takes in the resistances and EMFs of a network joined alike, lays every line flat and forgets what was solved before. */
  begin(network: NetworkNumbers): void;
  /** In: load i takes `loadS · V + loadA` [S], [A]. */
  readonly loadS: Float64Array;
  readonly loadA: Float64Array;
  /** In: the input of converter i takes `inS · V + inShare · outA + inA`. */
  readonly inS: Float64Array;
  readonly inShare: Float64Array;
  readonly inA: Float64Array;
  /** Out: voltage across each load and converter input, and current out of each converter. */
  readonly loadV: Float64Array;
  readonly inV: Float64Array;
  readonly outA: Float64Array;
  /**
   * Solves with the lines now in the arrays.
   * @returns false where the linearised network is not stable: it lies past the point of greatest power.
   */
  solve(): boolean;
  /** Forgets the last solves; after one that went astray the next would else start from there. */
  restart(): void;
  /** Node voltages against the reference of each island, branch voltages and source voltages of the last solve [V]. */
  writeVoltages(nodeV: Float64Array, branchV: Float64Array, sourceV: Float64Array): void;
}
