import type { OtherNames } from "../../core/parts/tables/columns.js";
import { tablesInEnglish } from "./english.js";
import { tablesInSpanish } from "./spanish.js";

/** Headings and words of tables in every language there is: a table is read back whatever language it was written in. */
export const tablesInAnyLanguage: OtherNames = new Map(
  [tablesInEnglish, tablesInSpanish].flatMap(({ headings, words: { offcut, spool } }) =>
    [...Object.entries(headings), ["offcut", offcut] as const, ["spool", spool] as const].map(
      ([name, said]) => [said, name] as const,
    ),
  ),
);
