import type { ScreenWords } from "../../words/screen/en.js";
import type { StepAbout } from "../state/keep/records.js";

/** What a step of the history did, as a sentence. */
export function aboutSentence(about: StepAbout, { log, edits }: ScreenWords): string {
  switch (about.did) {
    case "made":
      return log.made[about.from](about.name ?? "");
    case "edit":
      return about.edits.map(edits.sentence).join(" ");
    case "text":
      return log.textEdited;
    case "restore":
      return log.restored(about.step);
    default:
      return about satisfies never;
  }
}
