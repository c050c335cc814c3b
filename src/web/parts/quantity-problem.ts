import type { Shows } from "../../core/plan/model/plan.js";
import type { QuantityFault, QuantityKind } from "../../core/quantity/fault.js";
import { faultOf } from "../../core/quantity/fault-of.js";
import { exampleIn } from "../../core/quantity/kinds.js";
import type { ScreenWords } from "../../words/screen/en.js";
import type { FieldProblem } from "./written-field.js";

type FieldWords = Pick<ScreenWords, "fields">;

/** What is wrong with a text as a quantity of that kind, in the person's language and measures; undefined where it can be read. */
export function quantityProblem(
  text: string,
  kind: QuantityKind,
  words: FieldWords,
  lengths: Shows["lengths"],
): FieldProblem | undefined {
  const fault = text === "work out" ? undefined : faultOf(text, kind);
  return fault && faultTold(fault, words, lengths);
}

/** What is wrong, and what may have been meant. */
export function faultTold(
  fault: QuantityFault,
  { fields }: FieldWords,
  lengths: Shows["lengths"],
): FieldProblem {
  const { code, expected } = fault;
  const wanted = `${fields.kindOf[expected]}, ${fields.example(exampleIn(expected, lengths))}`;
  return { sentence: fields.notUsable[code](wanted), meant: meantBy(fault, lengths) };
}

/** A number without any unit. */
export const isBare = (text: string): boolean => /^[-+]?[\d./ -]+$/.test(text.trim());

/** A bare number as a length may be meant in the small unit or in the large one, as a weight in either: the person says which. */
function meantBy(fault: QuantityFault, lengths: Shows["lengths"]): readonly string[] {
  const { nearest } = fault;
  if (nearest === undefined) return [];
  if (fault.code !== "no unit") return [nearest];
  const bare = fault.found.trim();
  if (!isBare(bare)) return [nearest];
  if (fault.expected === "mass")
    return lengths === "inches" ? [`${bare} lb`, `${bare} kg`] : [`${bare} kg`, `${bare} lb`];
  if (fault.expected !== "length") return [nearest];
  return lengths === "inches" ? [`${bare} in`, `${bare} ft`] : [`${bare} mm`, `${bare} m`];
}
