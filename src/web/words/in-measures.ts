import { useMemo } from "react";
import { useMeasured } from "../app/context.js";

/** Words with the measures that examples among them are to be in. */
export function useInMeasures<Words extends object>(words: Words) {
  const lengths = useMeasured();
  return useMemo(() => ({ ...words, lengths }), [words, lengths]);
}
