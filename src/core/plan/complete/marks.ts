import { settingOut } from "../../reference/setting-out.js";
import type { CompleteMarks } from "../completed.js";
import type { Plan } from "../model/plan.js";
import { lengthsIn, Notes } from "./notes.js";

/** How marks are set out, with what was left out. Nothing is noted for a plan without faces: nothing is assumed of it. */
export function completeMarks({ hull, shows, craft }: Plan, all: Notes): CompleteMarks {
  const { marks } = hull;
  const notes = hull.faces.length > 0 ? all : new Notes();
  const length = lengthsIn(shows);
  const inches = shows.lengths === "inches";
  const { graduation, tape, tolerance } = settingOut;
  const formNotes = craft.form === undefined ? new Notes() : all;
  const given = craft.form?.kind === "survey" ? craft.form.spreadM : undefined;
  return {
    lies: notes.take(marks.lies, "on the surface", "plan", "tape", "usual-tape"),
    graduationM: notes.take(
      marks.graduationM,
      inches ? graduation.inchM : graduation.metricM,
      "plan",
      "graduation",
      "usual-graduation",
      length,
    ),
    longestM: notes.take(marks.longestM, tape.longestM, "plan", "longest tape", "usual-tape", length),
    side: notes.take(marks.side, "inside", "plan", "marks from", "usual-tape"),
    method: marks.method ?? "best",
    spreadM: notes.take(marks.spreadM, tape.sigmaM, "plan", "spread of a reading", "usual-tape", length),
    toleranceM: notes.take(
      marks.toleranceM,
      tolerance.markM,
      "plan",
      "tolerance of a mark",
      "usual-tape",
      length,
    ),
    formSpreadM: formNotes.take(given, tape.formSigmaM, "plan", "spread of the survey", "usual-tape", length),
  };
}
