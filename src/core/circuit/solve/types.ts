/**
 * The question and the answer of the solver: plain numbers, no plan. Index i of a table is the caller's thing i.
 * Units: V, A, Ω, W. Currents are positive from `from` to `to`, and from `plus` to `minus` through a load.
 */

export const loadLaw = { power: 0, current: 1, resistance: 2 } as const;

export interface LoadTable {
  readonly plus: Int32Array;
  readonly minus: Int32Array;
  /** A `loadLaw` value each. */
  readonly law: Uint8Array;
  /** W, A or Ω by law. A load that is off has power 0, current 0 or resistance Infinity. */
  readonly value: Float64Array;
  /** Voltage below which it stops working [V]; 0 where there is none. */
  readonly minV: Float64Array;
}

/** An EMF behind a resistance (> 0). A battery, or the shore side of a charger. */
export interface SourceTable {
  readonly plus: Int32Array;
  readonly minus: Int32Array;
  readonly emfV: Float64Array;
  readonly ohm: Float64Array;
}

/**
 * Holds outputV at its output and takes (outputV · outputA) / efficiency + standby at its input. It gives and never takes:
 * where something else holds its output higher, it idles at 0 A. Non-isolated ones share inMinus = outMinus.
 */
export interface ConverterTable {
  readonly inPlus: Int32Array;
  readonly inMinus: Int32Array;
  readonly outPlus: Int32Array;
  readonly outMinus: Int32Array;
  readonly outputV: Float64Array;
  readonly maxOutputA: Float64Array;
  readonly efficiency: Float64Array;
  readonly standbyW: Float64Array;
  readonly minInputV: Float64Array;
}

export interface NetworkNumbers {
  readonly nodeCount: number;
  /** Resistances, all > 0. */
  readonly branches: { readonly from: Int32Array; readonly to: Int32Array; readonly ohm: Float64Array };
  readonly sources: SourceTable;
  readonly loads: LoadTable;
  readonly converters: ConverterTable;
}

export interface SolveOptions {
  /** Turn off what falls under its least voltage (lowest first) until the rest holds. Default false: keep everything on. */
  readonly cutOut?: boolean;
  /** Which method to use; default picks radial where the network allows it. */
  readonly method?: "radial" | "sparse";
}

export interface Solution {
  /** `collapsed`: no voltages exist at which all constant-power loads get their power; the arrays then hold the last state that exists. */
  readonly status: "solved" | "collapsed";
  readonly method: "radial" | "sparse";
  /** Node voltages against node 0 of their island's reference (the first source's minus, else any) [V]. */
  readonly nodeV: Float64Array;
  readonly branchA: Float64Array;
  /** Out of the plus terminal [A]. */
  readonly sourceA: Float64Array;
  readonly loadA: Float64Array;
  readonly loadV: Float64Array;
  readonly converterInA: Float64Array;
  readonly converterOutA: Float64Array;
  /** Loads that are on and whose voltage is under their least, or that get none at all, before anything was cut out. */
  readonly underVoltage: readonly number[];
  /** Loads (index) that were cut out, in order. Empty unless asked for. */
  readonly cutOut: readonly number[];
  /** Converters (index) off because their input is under its least voltage, and those asked for more than they can give. */
  readonly convertersOff: readonly number[];
  readonly convertersOver: readonly number[];
  /** Where collapsed: share of all constant power that could still be carried (0…1), and the load at which it first fails. */
  readonly carriedShare?: number;
  readonly weakestLoad?: number;
  /** Set instead of `weakestLoad` where it first fails at the input of a converter (index). */
  readonly weakestConverter?: number;
  readonly iterations: number;
}
/** Signature of `solveNetwork` in `solve.ts`: throws RangeError on a malformed question (NaN, index out of range, ohm ≤ 0). */
export type SolveNetwork = (network: NetworkNumbers, options?: SolveOptions) => Solution;
