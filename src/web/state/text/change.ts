/** One stretch of a text replaced by another. What was removed is kept too, to notice a text it was not made on. */
export interface TextChange {
  /** Place of the first sign that differs, counted from 0. */
  readonly at: number;
  readonly removed: string;
  readonly added: string;
}

/** The least stretch that makes one text of the other. */
export function changeBetween(before: string, after: string): TextChange {
  const shorter = Math.min(before.length, after.length);
  let at = 0;
  while (at < shorter && before[at] === after[at]) at += 1;
  let same = 0;
  while (same < shorter - at && before[before.length - 1 - same] === after[after.length - 1 - same])
    same += 1;
  return {
    at,
    removed: before.slice(at, before.length - same),
    added: after.slice(at, after.length - same),
  };
}

/** @returns undefined where the text is not the one the change was made on. */
export function makeChange(text: string, { at, removed, added }: TextChange): string | undefined {
  if (!text.startsWith(removed, at) || at > text.length) return undefined;
  return text.slice(0, at) + added + text.slice(at + removed.length);
}
