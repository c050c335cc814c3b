import { mmPerPoint } from "../make.js";

/** Points from millimetres, to a thousandth. */
export function inPoints(mm: number): number {
  if (!Number.isFinite(mm)) throw new RangeError(`a drawing needs finite numbers, got ${mm}`);
  return Math.round((mm / mmPerPoint) * 1000) / 1000;
}
