import { zeroBytes, zeros } from "../columns.js";
import type { ConverterStates } from "./converter-state.js";
import type { OperatingPoint } from "./newton.js";
import type { NetworkNumbers } from "./types.js";

/**
 * What a solve works in, made once for a network: a small boat is solved hundreds of times, and making a column takes longer than filling it.
 * All of it is good until the next solve of that network.
 */
export interface Room {
  readonly states: ConverterStates;
  /** How often each converter has changed its mind. */
  readonly turns: Uint8Array;
  /** 1 for each load that was cut out, and for each that is on. */
  readonly cut: Uint8Array;
  readonly loaded: Uint8Array;
  readonly open: OperatingPoint;
  readonly point: OperatingPoint;
}

export function roomFor({ loads, converters }: NetworkNumbers): Room {
  const loadCount = loads.plus.length;
  const converterCount = converters.inPlus.length;
  const point = (): OperatingPoint => ({
    loadV: zeros(loadCount),
    inV: zeros(converterCount),
    outA: zeros(converterCount),
  });
  return {
    states: zeroBytes(converterCount),
    turns: zeroBytes(converterCount),
    cut: zeroBytes(loadCount),
    loaded: zeroBytes(loadCount),
    open: point(),
    point: point(),
  };
}
