import type { Edit } from "../../core/plan/edits/edit.js";
import type { AssumedWords } from "../assumptions.js";
import type { CautionWords } from "../cautions.js";
import type { RecordWords } from "../difference-words.js";
import type { DrawnWords } from "../drawn/english.js";
import type { FindingWords } from "../finding-words.js";
import type { HullWords } from "../hull/english.js";
import type { LabelWords } from "../labels.js";
import type { LayoutWords } from "../layout/english.js";
import type { ProofWords } from "../proof/proof-words.js";
import type { SourceWords } from "../source-words.js";
import type { StepWords } from "../steps/step-words.js";
import type { TableWords } from "../tables/english.js";
import type { electrics } from "./en/electrics.js";
import type { findings } from "./en/findings.js";
import type { frame } from "./en/frame.js";
import type { hull } from "./en/hull.js";
import type { layout } from "./en/layout.js";
import type { work } from "./en/work.js";
import type { PaperLanguage } from "./languages.js";

/** Everything that is said on paper, in one language. One that leaves something out does not compile. */
export interface PaperWords {
  readonly language: PaperLanguage;
  /** The sheets themselves, by subject: titles, headings, explanations. */
  readonly frame: typeof frame;
  readonly electrics: typeof electrics;
  readonly findings: typeof findings;
  readonly hull: typeof hull;
  readonly layout: typeof layout;
  readonly work: typeof work;
  /** Tables for a spreadsheet. */
  readonly tables: TableWords;
  /** What is said of things wherever they stand, on paper and on the page. */
  readonly of: {
    readonly assumed: AssumedWords;
    readonly cautions: CautionWords;
    readonly drawn: DrawnWords;
    readonly edit: (edit: Edit) => string;
    readonly findings: FindingWords;
    readonly hull: HullWords;
    readonly labels: LabelWords;
    readonly layout: LayoutWords;
    readonly proof: ProofWords;
    readonly record: RecordWords;
    readonly sources: SourceWords;
    readonly steps: StepWords;
  };
}
