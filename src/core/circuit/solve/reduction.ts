import { PairTable } from "./pair-table.js";

/** How a step makes one element out of two, or ends one. */
export const step = { series: 0, parallel: 1, deadEnd: 2 } as const;

/**
 * A network of two-ended elements folded up, step by step, until nothing is left. Step s makes element `elements + s`.
 * Series: node `node[s]` goes; `first` runs from `from[s]` to it, `second` from it onward. Parallel: both side by side.
 * Dead end: the last element at `node[s]` goes, `first` running from `from[s]` to it. A sign of −1 says the element itself
 * points the other way.
 */
export interface Reduction {
  readonly elements: number;
  readonly steps: number;
  readonly kind: Uint8Array;
  readonly first: Int32Array;
  readonly firstSign: Int8Array;
  readonly second: Int32Array;
  readonly secondSign: Int8Array;
  readonly node: Int32Array;
  readonly from: Int32Array;
}

/**
 * Folds a network whose legs mirror each other (a pair of trees bridged by loads), and with it every network that series and
 * parallel steps use up: single-leg fuses, returns shared along a chain, batteries side by side. Time and memory grow in
 * proportion to the number of elements; no recursion.
 * @returns undefined where some part is meshed.
 */
export function reduceNetwork(nodeCount: number, tail: Int32Array, head: Int32Array): Reduction | undefined {
  const elements = tail.length;
  // Each step uses up exactly one element, so there are as many steps as elements, loops onto one node apart.
  const kind = new Uint8Array(elements);
  const first = new Int32Array(elements);
  const firstSign = new Int8Array(elements);
  const second = new Int32Array(elements);
  const secondSign = new Int8Array(elements);
  const node = new Int32Array(elements);
  const from = new Int32Array(elements);
  let steps = 0;
  let left = 0;

  // Half 2s lies at the tail of slot s, half 2s + 1 at its head; the halves at one node form a list.
  const end = new Int32Array(2 * elements);
  const next = new Int32Array(2 * elements);
  const previous = new Int32Array(2 * elements);
  const top = new Int32Array(nodeCount).fill(-1);
  const degree = new Int32Array(nodeCount);
  const held = new Int32Array(elements);
  const slotOf = new PairTable(2 * elements);

  const link = (half: number, at: number): void => {
    const old = top[at] as number;
    end[half] = at;
    next[half] = old;
    previous[half] = -1;
    if (old !== -1) previous[old] = half;
    top[at] = half;
    degree[at] = (degree[at] as number) + 1;
  };
  const unlink = (half: number): void => {
    const at = end[half] as number;
    const after = next[half] as number;
    const before = previous[half] as number;
    if (before === -1) top[at] = after;
    else next[before] = after;
    if (after !== -1) previous[after] = before;
    degree[at] = (degree[at] as number) - 1;
  };
  const besides = (slot: number, element: number, elementTail: number): void => {
    kind[steps] = step.parallel;
    first[steps] = held[slot] as number;
    firstSign[steps] = 1;
    second[steps] = element;
    secondSign[steps] = end[2 * slot] === elementTail ? 1 : -1;
    held[slot] = elements + steps++;
    left--;
  };

  for (let element = 0; element < elements; element++) {
    const a = tail[element] as number;
    const b = head[element] as number;
    if (a === b) continue;
    left++;
    const slot = slotOf.get(a, b);
    if (slot !== -1) {
      besides(slot, element, a);
      continue;
    }
    held[element] = element;
    link(2 * element, a);
    link(2 * element + 1, b);
    slotOf.set(a, b, element);
  }

  const waiting = new Int32Array(nodeCount + 2 * elements);
  let count = 0;
  for (let at = nodeCount - 1; at >= 0; at--) if (degree[at] === 1 || degree[at] === 2) waiting[count++] = at;
  while (count > 0) {
    const x = waiting[--count] as number;
    if (degree[x] !== 1 && degree[x] !== 2) continue;
    const half = top[x] as number;
    const slot = half >> 1;
    const a = end[half ^ 1] as number;
    node[steps] = x;
    if (degree[x] === 1) {
      kind[steps] = step.deadEnd;
      from[steps] = a;
      first[steps] = held[slot] as number;
      firstSign[steps] = half & 1 ? 1 : -1;
      steps++;
      left--;
      unlink(half);
      unlink(half ^ 1);
      waiting[count++] = a;
      continue;
    }
    const otherHalf = next[half] as number;
    const b = end[otherHalf ^ 1] as number;
    const along = held[slot] as number;
    const onward = held[otherHalf >> 1] as number;
    const bToX = otherHalf & 1 ? 1 : -1;
    kind[steps] = step.series;
    if (half & 1) {
      from[steps] = a;
      first[steps] = along;
      firstSign[steps] = 1;
      second[steps] = onward;
      secondSign[steps] = bToX === 1 ? -1 : 1;
    } else {
      from[steps] = b;
      first[steps] = onward;
      firstSign[steps] = bToX;
      second[steps] = along;
      secondSign[steps] = 1;
    }
    const made = elements + steps++;
    const madeTail = half & 1 ? a : b;
    left--;
    unlink(half);
    unlink(otherHalf);
    unlink(otherHalf ^ 1);
    const existing = slotOf.get(a, b);
    if (existing === -1) {
      held[slot] = made;
      link(half, b);
      slotOf.set(a, b, slot);
    } else {
      unlink(half ^ 1);
      besides(existing, made, madeTail);
      waiting[count++] = a;
      waiting[count++] = b;
    }
  }
  return left === 0 ? { elements, steps, kind, first, firstSign, second, secondSign, node, from } : undefined;
}
