/** Lines `fromA … toA` of one text stand where the other has `fromB … toB`; ends not included. */
export interface Hunk {
  readonly fromA: number;
  readonly toA: number;
  readonly fromB: number;
  readonly toB: number;
}

/** Beyond so many edits the middle is given as one hunk: it is another text, and a finer answer helps nobody. */
const maxEdits = 600;

/** Where two lists of lines differ, by the shortest edit script (Myers, An O(ND) difference algorithm, 1986). */
export function lineHunks(a: readonly string[], b: readonly string[]): Hunk[] {
  let head = 0;
  while (head < a.length && head < b.length && a[head] === b[head]) head += 1;
  let tail = 0;
  while (
    tail < a.length - head &&
    tail < b.length - head &&
    a[a.length - 1 - tail] === b[b.length - 1 - tail]
  )
    tail += 1;
  const middleA = a.slice(head, a.length - tail);
  const middleB = b.slice(head, b.length - tail);
  if (middleA.length === 0 && middleB.length === 0) return [];
  const whole: Hunk = { fromA: 0, toA: middleA.length, fromB: 0, toB: middleB.length };
  const hunks =
    middleA.length === 0 || middleB.length === 0 ? [whole] : (shortest(middleA, middleB) ?? [whole]);
  return hunks.map(({ fromA, toA, fromB, toB }) => ({
    fromA: fromA + head,
    toA: toA + head,
    fromB: fromB + head,
    toB: toB + head,
  }));
}

function shortest(a: readonly string[], b: readonly string[]): Hunk[] | undefined {
  const most = Math.min(a.length + b.length, maxEdits);
  const furthest = new Map<number, number>([[1, 0]]);
  const reached: Map<number, number>[] = [];
  for (let edits = 0; edits <= most; edits += 1) {
    reached.push(new Map(furthest));
    for (let diagonal = -edits; diagonal <= edits; diagonal += 2) {
      let x = stepDown(furthest, diagonal, edits)
        ? (furthest.get(diagonal + 1) ?? 0)
        : (furthest.get(diagonal - 1) ?? 0) + 1;
      let y = x - diagonal;
      while (x < a.length && y < b.length && a[x] === b[y]) {
        x += 1;
        y += 1;
      }
      furthest.set(diagonal, x);
      if (x >= a.length && y >= b.length) return walkBack(reached, edits, a.length, b.length);
    }
  }
  return undefined;
}

function stepDown(furthest: ReadonlyMap<number, number>, diagonal: number, edits: number): boolean {
  if (diagonal === -edits) return true;
  return diagonal !== edits && (furthest.get(diagonal - 1) ?? 0) < (furthest.get(diagonal + 1) ?? 0);
}

function walkBack(reached: readonly Map<number, number>[], last: number, endX: number, endY: number): Hunk[] {
  const hunks: Hunk[] = [];
  let x = endX;
  let y = endY;
  for (let edits = last; edits > 0; edits -= 1) {
    const furthest = reached[edits] ?? new Map<number, number>();
    const diagonal = x - y;
    const down = stepDown(furthest, diagonal, edits);
    const from = down ? diagonal + 1 : diagonal - 1;
    const fromX = furthest.get(from) ?? 0;
    const fromY = fromX - from;
    const step: Hunk = {
      fromA: fromX,
      toA: down ? fromX : fromX + 1,
      fromB: fromY,
      toB: down ? fromY + 1 : fromY,
    };
    const later = hunks[0];
    if (later && later.fromA === step.toA && later.fromB === step.toB)
      hunks[0] = { fromA: step.fromA, toA: later.toA, fromB: step.fromB, toB: later.toB };
    else hunks.unshift(step);
    x = fromX;
    y = fromY;
  }
  return hunks;
}
