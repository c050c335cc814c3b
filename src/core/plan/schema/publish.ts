import { Definitions, type JsonSchema } from "./json.js";
import { planKeys } from "./plan.js";

/**
 * The JSON Schema (draft 2020-12) of a plan, for editors and other programs. It knows forms, keys and words;
 * what names refer to, and limits of quantities, only the reader checks.
 */
export function planJsonSchema(): JsonSchema {
  const definitions = new Definitions();
  const plan = planKeys.json(definitions);
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "Skiffloom plan",
    description:
      "The electrics of one small open boat. Quantities are text with a unit. Written by scripts/schema.js.",
    ...plan,
    $defs: definitions.all(),
  };
}
