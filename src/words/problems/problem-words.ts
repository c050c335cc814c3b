import type { EditProblem } from "../../core/plan/edits/problem.js";
import type { Form, ReadCode, ReadProblem } from "../../core/plan/source/problem.js";
import type { QuantityFault, QuantityKind } from "../../core/quantity/fault.js";

/** A problem of a plan as the pieces of its sentence. */
export interface ReadSaid {
  /** As written in the plan, bare and in quotation marks; empty where nothing is. */
  readonly bare: string;
  readonly found: string;
  /** What was found, a list or a section called so. */
  readonly form: string;
  /** What would have been right; empty where that is not known. */
  readonly expected: string;
  /** Is there a key or name that was probably meant? Then what is known need not be told. */
  readonly guessed: boolean;
  /** For `wrong kind`: the kind of quantity it is. */
  readonly kind: string;
  readonly firstLine: number | undefined;
}

/** What would have been right, in one language. */
export interface ExpectedWords {
  /** A kind of quantity with its article. */
  readonly kinds: Readonly<Record<QuantityKind, string>>;
  readonly forms: Readonly<Record<Form, string>>;
  readonly like: (kind: string, example: string) => string;
  readonly limit: Readonly<Record<"at least" | "above" | "at most", (limit: string) => string>>;
  /** The word before the last of several to choose from. */
  readonly or: (last: string) => string;
}

/** Slips in writing YAML that are put in words; by the YAML reader's own code. */
export type YamlSlip =
  | "TAB_AS_INDENT"
  | "BAD_INDENT"
  | "BLOCK_AS_IMPLICIT_KEY"
  | "MULTILINE_IMPLICIT_KEY"
  | "KEY_OVER_1024_CHARS"
  | "BAD_SCALAR_START"
  | "BAD_DQ_ESCAPE"
  | "BAD_ALIAS"
  | "BLOCK_IN_FLOW"
  | "MULTIPLE_ANCHORS"
  | "MULTIPLE_TAGS"
  | "TAG_RESOLVE_FAILED";

/** Slips in writing YAML, in one language. */
export interface YamlWords {
  readonly slips: Readonly<Record<YamlSlip, string>>;
  /** Any other, as the YAML reader puts it; that is English whatever the language. */
  readonly other: (detail: string) => string;
}

/** All that is said of a plan that cannot be read, in one language. A problem that a language leaves out does not compile. */
export interface ReadProblemWords {
  /** A place in a list, counted from 1. */
  readonly item: (no: number) => string;
  /** `line 12, column 9`. */
  readonly where: (line: number, column: number) => string;
  readonly quoted: (text: string) => string;
  readonly form: Readonly<Record<"list" | "section", string>>;
  readonly codes: Readonly<Record<Exclude<ReadCode, "yaml" | "quantity">, (said: ReadSaid) => string>>;
  readonly faults: Readonly<Record<QuantityFault["code"], (said: ReadSaid) => string>>;
  /** What was probably meant; `sure` where it is one of the known. */
  readonly meant: (nearest: string, sure: boolean) => string;
  readonly expected: ExpectedWords;
  readonly yaml: YamlWords;
}

/** All that is said of an edit that was not made, in one language. */
export interface EditProblemWords {
  readonly notDone: (edit: string, reason: string) => string;
  readonly meant: (nearest: string) => string;
  /** `at`: what the edit speaks of. `meant`: a question after it, or nothing. */
  readonly codes: Readonly<
    Record<EditProblem["code"], (said: { readonly at: string; readonly meant: string }) => string>
  >;
}

/** How problems are told. */
export interface ProblemTeller {
  /** `line 12, column 9, gear / bilge pump / draws: …`. */
  readonly line: (problem: ReadProblem) => string;
  /** What is wrong and what would be right, in a sentence or two. */
  readonly sentence: (problem: ReadProblem) => string;
  /** Why an edit was not made: the edit, the reason, and what the plan's reader had to say. */
  readonly edit: (problem: EditProblem) => string;
}
