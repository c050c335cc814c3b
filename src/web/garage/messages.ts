import type { Edit } from "../../core/plan/edits/edit.js";
import type { Shows } from "../../core/plan/model/plan.js";
import type { ReadProblem } from "../../core/plan/source/problem.js";
import type { Diagnosis } from "../../core/proving/diagnose.js";
import type { FaultReport } from "../../core/proving/faults.js";
import type { SheetSection } from "../../core/proving/sheet/types.js";
import type { WaterCard } from "../../core/proving/water/card.js";
import type { WorkFigures } from "../../core/work/plan-work.js";
import type { Step } from "../../core/work/step.js";
import type { PlanChanges } from "../../core/working/plan-changes.js";
import type { StepDrawing, StepDrawingRoom } from "../../drawing/work/step-drawing.js";
import type { Preferences } from "../state/preferences.js";

/** Work figures as they can be sent from a worker: facts hold a function, and stay behind. */
export interface WorkShown extends Omit<WorkFigures, "facts"> {
  readonly next: { readonly step: Step; readonly waitMin: number } | undefined;
}

/** A ranking as it can be sent: the model behind it stays with the worker. */
export type FaultsShown = Omit<FaultReport, "fits" | "model">;

/** What the readings say, without the models behind it. */
export interface DiagnosisShown extends Omit<Diagnosis, "faults" | "agedFaults"> {
  readonly faults?: FaultsShown;
  readonly agedFaults?: FaultsShown;
}

/** Minutes are since 1970 on the owner's clock. */
export type ForemanQuestion =
  | { readonly ask: "work"; readonly text: string; readonly nowMin: number }
  | {
      readonly ask: "tick";
      readonly text: string;
      readonly nowMin: number;
      readonly step: string;
    }
  | {
      readonly ask: "finish";
      readonly text: string;
      readonly nowMin: number;
      readonly name: string;
      /** The shelf is brought up to date with it. */
      readonly shelf: boolean;
    }
  | { readonly ask: "sheet"; readonly text: string }
  | { readonly ask: "prove"; readonly text: string }
  | { readonly ask: "water"; readonly text: string }
  | {
      readonly ask: "drawings";
      readonly text: string;
      readonly step: Step;
      readonly shows: Shows;
      readonly room: StepDrawingRoom;
      readonly language: Preferences["language"];
    }
  /** What the change from one text to the other does. */
  | { readonly ask: "changes"; readonly before: string; readonly text: string };

export type ForemanOutcome =
  | { readonly is: "work"; readonly work: WorkShown }
  | { readonly is: "edits"; readonly edits: readonly Edit[] }
  | { readonly is: "sheet"; readonly sections: readonly SheetSection[] }
  | { readonly is: "prove"; readonly diagnosis: DiagnosisShown }
  | { readonly is: "water"; readonly card: WaterCard }
  | { readonly is: "drawings"; readonly drawings: readonly StepDrawing[] }
  | { readonly is: "changes"; readonly changes: PlanChanges }
  | { readonly is: "unreadable"; readonly problems: readonly ReadProblem[] }
  | { readonly is: "fault"; readonly detail: string };
