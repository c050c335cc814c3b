import type { Shows } from "../../core/plan/model/plan.js";
import type { QuantityFault, QuantityKind } from "../../core/quantity/fault.js";
import { faultOf } from "../../core/quantity/fault-of.js";
import { exampleIn } from "../../core/quantity/kinds.js";
import type { ScreenWords } from "../../words/screen/en.js";
import { useMeasured } from "../app/context.js";
import { useWordsOfFields } from "../words/fields.js";
import { type FieldProblem, WrittenField, type WrittenFieldProps } from "./written-field.js";

/** A field for a quantity written as people write it (`3/4 in`, `16 AWG`). What can't be read is said beside it, and nothing is taken over. */
export function QuantityField({ kind, ...rest }: WrittenFieldProps & { readonly kind: QuantityKind }) {
  const words = useWordsOfFields();
  const lengths = useMeasured();
  return <WrittenField {...rest} check={(text) => quantityProblem(text, kind, words, lengths)} />;
}

/** What is wrong with a text as a quantity of that kind, in the person's language; undefined where it can be read. */
export function quantityProblem(
  text: string,
  kind: QuantityKind,
  { fields }: Pick<ScreenWords, "fields">,
  lengths: Shows["lengths"],
): FieldProblem | undefined {
  const fault = faultOf(text, kind);
  if (fault === undefined || text === "work out") return undefined;
  return {
    sentence: fields.notUsable[fault.code](
      `${fields.kindOf[kind]}, ${fields.example(exampleIn(kind, lengths))}`,
    ),
    meant: meantBy(fault, lengths),
  };
}

/** A bare number as a length may be meant in the small unit or in the large one, as a weight in either: the person says which. */
function meantBy(fault: QuantityFault, lengths: Shows["lengths"]): readonly string[] {
  const { nearest } = fault;
  if (nearest === undefined) return [];
  if (fault.code !== "no unit") return [nearest];
  const bare = fault.found.trim();
  if (!/^[-+]?[\d./ -]+$/.test(bare)) return [nearest];
  if (fault.expected === "mass")
    return lengths === "inches" ? [`${bare} lb`, `${bare} kg`] : [`${bare} kg`, `${bare} lb`];
  if (fault.expected !== "length") return [nearest];
  return lengths === "inches" ? [`${bare} in`, `${bare} ft`] : [`${bare} mm`, `${bare} m`];
}
