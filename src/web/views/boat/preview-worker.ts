import { workOut } from "../../../core/figures.js";
import type { Figures } from "../../../core/figures-types.js";
import { applyEdits } from "../../../core/plan/edits/apply.js";
import type { Edit } from "../../../core/plan/edits/edit.js";

export interface PreviewRequest {
  readonly no: number;
  readonly text: string;
  readonly edits: readonly Edit[];
}

/** Without figures: the edits can't be made, and why will be said when they are. */
export interface PreviewAnswer {
  readonly no: number;
  readonly figures?: Figures;
}

self.addEventListener("message", ({ data }: MessageEvent<PreviewRequest>) => {
  const { no, text, edits } = data;
  const edited = applyEdits(text, edits);
  const answer: PreviewAnswer = edited.ok ? { no, figures: workOut(edited.plan).figures } : { no };
  self.postMessage(answer);
});
