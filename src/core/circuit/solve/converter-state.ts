/**
 * `on`: holds its output voltage. `idle`: fed, but something else holds its output higher, so it gives nothing.
 * `off`: its input is under its least voltage.
 */
export const converterState = { on: 0, idle: 1, off: 2 } as const;

/** A `converterState` value a converter. */
export type ConverterStates = Uint8Array;
