import type { Shows } from "../../core/plan/model/plan.js";
import { lengthWords } from "../../words/numbers.js";
import { quantity } from "../../words/say.js";

/** A value of a working or comparison with its unit, as this person reads it. */
export function valueWords(
  value: number | string | undefined,
  unit: string | undefined,
  shows: Shows,
): string {
  if (typeof value === "string") return value;
  if (unit === "m" && value !== undefined) return lengthWords(value, shows);
  if (unit === undefined && value !== undefined && Number.isFinite(value))
    return String(Number(value.toPrecision(4)));
  return quantity(value, unit, shows);
}
