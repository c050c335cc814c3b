import type { StepAbout } from "../../state/keep/records.js";
import { putOnShelf } from "../../state/put-on-shelf.js";
import { holdUnkept } from "../../state/unkept.js";

/** Puts a text on the shelf, or holds it in this tab where the browser keeps nothing. @returns the plan's id. */
export async function openText(text: string, about: StepAbout): Promise<string> {
  const name = about.did === "made" ? (about.name ?? "") : "";
  const record = await putOnShelf(text, about, name);
  return record?.id ?? holdUnkept({ name, text, about });
}
