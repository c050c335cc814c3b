import type { LayoutFigures } from "../../core/parts/layout-types.js";
import type { Shows } from "../../core/plan/model/plan.js";
import type { ReadProblem } from "../../core/plan/source/problem.js";
import type { FileList, FileWanted, MadeFile } from "../../packet/files/make-file.js";
import type { PaperLanguage } from "../../words/paper/languages.js";

/** What the page asks of its press: what there is to print of a plan, one file of it, or all that is cut, drilled and bought. */
export interface PrintRequest {
  readonly no: number;
  readonly text: string;
  readonly paper: Shows["paper"];
  /** Lengths and conductor sizes as this person reads them; the paper is given apart. */
  readonly shows: Shows;
  /** Language of what is printed. */
  readonly language: PaperLanguage;
  readonly wanted: FileWanted | { readonly file: "list" } | { readonly file: "layout" };
}

export type PrintOutcome =
  | { readonly is: "list"; readonly list: FileList }
  | { readonly is: "file"; readonly made: MadeFile }
  | { readonly is: "layout"; readonly layout: LayoutFigures }
  | { readonly is: "unreadable"; readonly problems: readonly ReadProblem[] }
  | { readonly is: "fault"; readonly detail: string };

export interface PrintAnswer {
  readonly no: number;
  readonly outcome: PrintOutcome;
}
