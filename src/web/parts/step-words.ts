import type { Edit } from "../../core/plan/edits/edit.js";
import type { ScreenWords } from "../../words/screen/en.js";
import type { StepAbout } from "../state/keep/records.js";

/** What a step of the history did, as a sentence. */
export function aboutSentence(about: StepAbout, { log, edits }: Pick<ScreenWords, "edits" | "log">): string {
  switch (about.did) {
    case "made":
      return log.made[about.from](about.name ?? "");
    case "edit":
      return gathered(about.edits).map(edits.sentence).join(" ");
    case "text":
      return log.textEdited;
    case "restore":
      return log.restored(about.step);
    default:
      return about satisfies never;
  }
}

/** Edits that say the same of several things, one after the other, as one that names them all. */
function gathered(all: readonly Edit[]): Edit[] {
  const told: Edit[] = [];
  for (const edit of all) {
    const last = told.at(-1);
    const alike =
      edit.edit === "set field" &&
      last?.edit === "set field" &&
      last.field === edit.field &&
      last.to === edit.to;
    if (alike) told[told.length - 1] = { ...last, at: `${last.at}, ${edit.at}` };
    else told.push(edit);
  }
  return told;
}
