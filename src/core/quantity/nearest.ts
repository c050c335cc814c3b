import { looks } from "./look-alike.js";

const maxLength = 64;

/** Least number of letters changed, added, dropped or swapped with a neighbour to get from one text to the other. */
function editDistance(a: string, b: string): number {
  const from = a.slice(0, maxLength);
  const to = b.slice(0, maxLength);
  let before: number[] = [];
  let row = Array.from({ length: to.length + 1 }, (_, j) => j);
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const same = from[i - 1] === to[j - 1] ? 0 : 1;
      let cost = Math.min((row[j - 1] ?? 0) + same, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1);
      if (i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1])
        cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      next.push(cost);
    }
    before = row;
    row = next;
  }
  return row[to.length] ?? 0;
}

/** The known name most like the one written, or undefined where none is close. Capitals, blanks and hyphens count little. */
export function nearestOf(written: string, known: Iterable<string>): string | undefined {
  const wanted = loose(written);
  const reach = Math.max(1, Math.floor(wanted.length / 3));
  let best: string | undefined;
  let least = reach + 1;
  for (const name of known) {
    const candidate = loose(name);
    if (Math.abs(candidate.length - wanted.length) >= least) continue;
    const distance = editDistance(wanted, candidate);
    if (distance < least) {
      best = name;
      least = distance;
      if (distance === 0) break;
    }
  }
  return best;
}

function loose(text: string): string {
  return looks(text)
    .slice(0, maxLength)
    .toLowerCase()
    .replace(/[-_\s]+/g, " ")
    .trim();
}
