import { type Hunk, lineHunks } from "./lines.js";

/**
 * Both changes of one text in one, line by line.
 * @returns undefined where they touch the same lines, or lines side by side, in different ways.
 */
export function mergeTexts(base: string, mine: string, theirs: string): string | undefined {
  if (mine === theirs || base === theirs) return mine;
  if (base === mine) return theirs;
  const [lines, linesMine, linesTheirs] = [base.split("\n"), mine.split("\n"), theirs.split("\n")];
  const ours = lineHunks(lines, linesMine).map((hunk) => ({ hunk, from: linesMine }));
  const others = lineHunks(lines, linesTheirs).map((hunk) => ({ hunk, from: linesTheirs }));
  const merged: string[] = [];
  let next = 0;
  let before: { hunk: Hunk; from: readonly string[] } | undefined;
  for (const change of [...ours, ...others].sort(
    (a, b) => a.hunk.fromA - b.hunk.fromA || a.hunk.toA - b.hunk.toA,
  )) {
    if (before && before.from !== change.from && change.hunk.fromA <= before.hunk.toA) {
      if (!alike(before, change)) return undefined;
      continue;
    }
    merged.push(...lines.slice(next, change.hunk.fromA), ...wordsOf(change));
    next = change.hunk.toA;
    before = change;
  }
  return [...merged, ...lines.slice(next)].join("\n");
}

interface Change {
  readonly hunk: Hunk;
  readonly from: readonly string[];
}

const wordsOf = ({ hunk, from }: Change) => from.slice(hunk.fromB, hunk.toB);

function alike(one: Change, other: Change): boolean {
  return (
    one.hunk.fromA === other.hunk.fromA &&
    one.hunk.toA === other.hunk.toA &&
    wordsOf(one).join("\n") === wordsOf(other).join("\n")
  );
}
