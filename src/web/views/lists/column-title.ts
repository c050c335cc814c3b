import type { ScreenWords } from "../../../words/screen/en.js";

/** The heading of a column; a key without one stands for itself. */
export function columnTitle(key: string, { lists }: Pick<ScreenWords, "lists">): string {
  const titles: Readonly<Record<string, string>> = lists.columns;
  return (Object.hasOwn(titles, key) ? titles[key] : undefined) ?? key;
}
