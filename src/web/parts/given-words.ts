import type { Shows } from "../../core/plan/model/plan.js";
import { lengthWords } from "../../words/numbers.js";
import { quantity } from "../../words/say.js";
import type { ScreenWords } from "../../words/screen/en.js";

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

/** Words of a working that are not the owner's, in this person's language; whatever else stays as it is. */
export function saidText<T>(text: T, { texts }: Pick<ScreenWords["working"], "texts">): T | string {
  return (typeof text === "string" ? new Map(Object.entries<string>(texts)).get(text) : undefined) ?? text;
}
