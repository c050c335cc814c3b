import type { ScreenWords } from "../../words/screen/en.js";

/** A corner as this person calls it: the usual ones by their words, those of the plan by their own name. */
export function cornerName(name: string, { circuits: { corners } }: Pick<ScreenWords, "circuits">): string {
  return new Map(Object.entries<string>(corners)).get(name) ?? name;
}
