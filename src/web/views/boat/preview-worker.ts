import { type Held, heldOf } from "../../../core/held-figures.js";
import { workOutWhole } from "../../../core/layout-figures.js";
import { applyEdits } from "../../../core/plan/edits/apply.js";
import type { Edit } from "../../../core/plan/edits/edit.js";
import { readPlan } from "../../../core/plan/read.js";
import { sameValue } from "../../state/same-value.js";

export interface PreviewRequest {
  readonly no: number;
  readonly text: string;
  readonly edits: readonly Edit[];
  /** What the page holds: what was answered last, the figures of the text as it stands, or neither of them. */
  readonly holds: "last answer" | "plan" | "neither";
}

/**
 * What is held, settled for the edits made: of it only what is not as the page holds it, since taking it in costs a part of a frame.
 * Without it: the edits can't be made, and why will be said when they are.
 */
export interface PreviewAnswer {
  readonly no: number;
  readonly settled?: Partial<Held>;
}

let last: Held | undefined;
let standing: { readonly text: string; readonly held: Held | undefined } | undefined;

self.addEventListener("message", ({ data }: MessageEvent<PreviewRequest>) => {
  self.postMessage(answerTo(data));
});

function answerTo({ no, text, edits, holds }: PreviewRequest): PreviewAnswer {
  const edited = applyEdits(text, edits);
  if (!edited.ok) return { no };
  const before = holds === "last answer" ? last : holds === "plan" ? heldAsItStands(text) : undefined;
  last = heldOf(workOutWhole(edited.plan).figures);
  return { no, settled: before ? differing(before, last) : last };
}

function heldAsItStands(text: string): Held | undefined {
  if (standing?.text !== text) {
    const read = readPlan(text);
    standing = { text, held: read.ok ? heldOf(workOutWhole(read.plan).figures) : undefined };
  }
  return standing.held;
}

function differing(from: Held, to: Held): Partial<Held> {
  return {
    ...(sameValue(from.sizes, to.sizes) ? {} : { sizes: to.sizes }),
    ...(sameValue(from.protection, to.protection) ? {} : { protection: to.protection }),
    ...(sameValue(from.paths, to.paths) ? {} : { paths: to.paths }),
    ...(sameValue(from.outings, to.outings) ? {} : { outings: to.outings }),
    ...(sameValue(from.charging, to.charging) ? {} : { charging: to.charging }),
    ...(to.readings === undefined || sameValue(from.readings, to.readings) ? {} : { readings: to.readings }),
    ...(sameValue(from.findings, to.findings) ? {} : { findings: to.findings }),
  };
}
