import type { QuantityKind } from "../../core/quantity/fault.js";
import { useMeasured } from "../app/context.js";
import { useWordsOfFields } from "../words/fields.js";
import { quantityProblem } from "./quantity-problem.js";
import { WrittenField, type WrittenFieldProps } from "./written-field.js";

/** A field for a quantity written as people write it (`3/4 in`, `16 AWG`). What can't be read is said beside it, and nothing is taken over. */
export function QuantityField({ kind, ...rest }: WrittenFieldProps & { readonly kind: QuantityKind }) {
  const words = useWordsOfFields();
  const lengths = useMeasured();
  return <WrittenField {...rest} check={(text) => quantityProblem(text, kind, words, lengths)} />;
}
