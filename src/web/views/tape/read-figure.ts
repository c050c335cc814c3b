import { readOffset } from "../../../core/hull/form/offsets.js";
import type { Shows } from "../../../core/plan/model/plan.js";
import { faultOf } from "../../../core/quantity/fault-of.js";
import { readQuantity } from "../../../core/quantity/read.js";
import { writeFeetInches } from "../../../core/quantity/write.js";
import { faultTold, isBare } from "../../parts/quantity-problem.js";
import { type CellProblem, type CellWords, problemOf } from "../lists/check-cell.js";

/** What a number without a unit is taken for. */
export const bareUnits = ["mm", "cm", "m", "in"] as const;
export type BareUnit = (typeof bareUnits)[number];

export const usualUnit = ({ lengths }: Pick<Shows, "lengths">): BareUnit =>
  lengths === "inches" ? "in" : "mm";

export type FigureRead =
  | { readonly is: "figure"; readonly text: string; readonly valueM: number }
  | { readonly is: "none" }
  | { readonly is: "problem"; readonly problem: CellProblem };

/** Signs for a figure that was not measured. */
const nones: ReadonlySet<string> = new Set(["", "-", "–", "—", "none"]);

/** Reads what was typed into a cell of the table: `28 1/4 in`, a bare number in the table's unit, or a loftsman's `2-4-2`. */
export function readFigure(typed: string, bare: BareUnit, words: CellWords): FigureRead {
  const plain = typed.trim();
  if (nones.has(plain.toLowerCase())) return { is: "none" };
  const text = withUnit(plain, bare);
  const read = readQuantity(text, "length");
  if (read.ok) return { is: "figure", text, valueM: read.value.value };
  const { sentence, meant } = faultTold(read.fault, words, words.lengths);
  return { is: "problem", problem: problemOf(plain, sentence, meant?.[0]) };
}

function withUnit(text: string, bare: BareUnit): string {
  const loftsmans = readOffset(text, "feet-inches-eighths");
  if (loftsmans !== undefined) return writeFeetInches(loftsmans, 16);
  if (!isBare(text)) return text;
  const united = `${text} ${bare}`;
  return faultOf(united, "length") === undefined ? united : text;
}
