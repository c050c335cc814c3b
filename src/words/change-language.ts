import type { Level } from "../core/findings/finding.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { Difference } from "../core/work/differences.js";
import type { FigureRef } from "../core/working/figure-ref.js";
import type { ThingChange } from "../core/working/plan-changes.js";
import type { FindingWords } from "./finding-words.js";
import type { StepWords } from "./steps/step-words.js";

/** Sections of a plan that hold things by name. */
export type NamedSection =
  | "batteries"
  | "chargers"
  | "converters"
  | "panels"
  | "boxes"
  | "box catalogue"
  | "gear"
  | "runs"
  | "waypoints"
  | "legs"
  | "references"
  | "faces"
  | "corners"
  | "outings"
  | "projects";

/** What came with a change of plan and what went, as the beginning of a line. */
type ComeAndGone = Readonly<Record<"come" | "gone", string>>;

/** All that is said of a change of plan, in one language. One that leaves something out does not compile. */
export interface ChangeLanguage {
  readonly figures: Readonly<Record<FigureRef["of"], string>>;
  readonly onOuting: (figure: string, outing: string) => string;
  /** Of hours that do not end. */
  readonly never: string;
  /** One thing of a section. */
  readonly sections: Readonly<Record<NamedSection, string>>;
  readonly things: Readonly<Record<Exclude<ThingChange["change"], "changed">, string>>;
  readonly notWritten: string;
  readonly levels: Readonly<Record<Level, { readonly name: string }>>;
  readonly ofFindings: ComeAndGone;
  readonly ofSteps: ComeAndGone;
  readonly moreSteps: Readonly<Record<keyof ComeAndGone, (count: number) => string>>;
  /** A run that is cut to another length. */
  readonly cut: (run: string, before: string, after: string) => string;
  readonly moreCuts: (count: number) => string;
  /** Time of work, as words. */
  readonly workLeft: (before: string, after: string) => string;
  readonly difference: (difference: Difference, shows: Shows) => string;
  readonly findings: FindingWords;
  readonly steps: StepWords;
}
