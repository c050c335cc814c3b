import type { Source } from "../reference/source.js";
import type { Facts } from "./facts.js";
import type { Finding, Level } from "./finding.js";

/** Chapters of the list of rules, in the order a reader meets them. */
export const themes = [
  "supply",
  "voltage",
  "conductors",
  "protection",
  "joints",
  "batteries",
  "charging",
  "layout",
  "boxes",
  "ways",
  "parts",
  "form",
  "marks",
  "holes",
  "float",
  "work",
  "readings",
] as const;
export type Theme = (typeof themes)[number];

/** One rule: its id is the name of its file, of its test and of its page. */
export interface Rule<Id extends string = string> {
  readonly id: Id;
  readonly theme: Theme;
  /** The gravest level it gives. */
  readonly level: Level;
  /** Where it comes from, by rule-set; never empty. */
  readonly sources: { readonly us: readonly Source[]; readonly iso: readonly Source[] };
  readonly check: (facts: Facts) => readonly Finding[];
}

/** Keeps the id as a literal type, so that the words for it cannot be forgotten. */
export function rule<const Id extends string>(given: Rule<Id>): Rule<Id> {
  return given;
}
