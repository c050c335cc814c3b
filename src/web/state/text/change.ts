/** One stretch of a text replaced by another. It can be undone, since what was removed is kept too. */
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
  return replaceAt(text, at, removed, added);
}

/** The text before a change. @returns undefined where the text is not the one the change gave. */
export function unmakeChange(text: string, { at, removed, added }: TextChange): string | undefined {
  return replaceAt(text, at, added, removed);
}

function replaceAt(text: string, at: number, from: string, to: string): string | undefined {
  if (!text.startsWith(from, at) || at > text.length) return undefined;
  return text.slice(0, at) + to + text.slice(at + from.length);
}
