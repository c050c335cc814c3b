import type { TakenReading } from "../core/plan/model/work.js";
import { decimals, marked, noFigure, threeDigits } from "./numbers.js";
import { english } from "./proof/english.js";
import type { ProofWords } from "./proof/proof-words.js";

/** What the meter showed, with its unit: `12.31 V`, `0.4 Ω`, `open`. */
export function shownWords(
  { kind, value }: Pick<TakenReading, "kind" | "value">,
  { proving }: Pick<ProofWords, "proving"> = english,
): string {
  if (Number.isNaN(value)) return noFigure;
  if (kind === "voltage") return `${decimals(value, 2)}\u00a0V`;
  if (kind === "marking") return marked(value, "A");
  if (kind === "current") return `${threeDigits(value)}\u00a0A`;
  return value === Number.POSITIVE_INFINITY ? proving.open : `${threeDigits(value)}\u00a0Ω`;
}
