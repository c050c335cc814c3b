import type { standing } from "../../core/work/differences.js";
import type { PaperWords } from "../../words/paper/paper-words.js";

export type BuiltWords = PaperWords["work"]["built"];
/** What stands on record as built. */
export type Built = ReturnType<typeof standing>;

/** How it is known, and when it was said. */
export const how = (
  one: { readonly measured: boolean; readonly when?: string } | undefined,
  { measured, asSaid }: BuiltWords,
): string =>
  one === undefined
    ? ""
    : [one.measured ? measured : asSaid, one.when ?? ""].filter((word) => word !== "").join(", ");
