/**
 * `on`: holds its output voltage. `idle`: fed, but something else holds its output higher, so it gives nothing.
 * `off`: its input is under its least voltage.
 */
export const converterState = { on: 0, idle: 1, off: 2 } as const;

/** A `converterState` value a converter. */
export type ConverterStates = Uint8Array;

/** Backward current of a converter under which it counts as at rest, as a share of 1 A. */
export const atRestA = 1e-9;

/** A converter gives more than it can only beyond rounding, as a share of its limit. */
export const overShare = 1e-9;
