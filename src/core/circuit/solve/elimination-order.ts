/** Neighbours of each unknown: those of i are `neighbour[start[i]] … neighbour[start[i + 1] − 1]`, both ways, none twice. */
export interface Graph {
  readonly start: Int32Array;
  readonly neighbour: Int32Array;
}

/** Unknowns that may be eliminated only once every unknown of a region is. One row an unknown; -1 for none. */
export interface Waiting {
  readonly regionOf: Int32Array;
  readonly waitsFor: Int32Array;
}

/**
 * Order of elimination that keeps fill low: approximate minimum degree on a quotient graph (Amestoy, Davis, Duff 1996), without
 * merging of look-alike unknowns. Unknowns with a great many neighbours, such as a bus bar, go last, unlooked at: that keeps the
 * time near linear on tree-like networks with hubs.
 * @param waiting What has to wait whatever its degree; may be left out.
 * @returns the unknowns, first to be eliminated first.
 */
export function eliminationOrder({ start, neighbour }: Graph, waiting?: Waiting): Int32Array {
  const n = start.length - 1;
  const hubDegree = Math.max(16, 10 * Math.sqrt(n));
  const order = new Int32Array(n);
  const isHub = new Uint8Array(n);
  const hubs: number[] = [];
  for (let i = 0; i < n; i++) {
    const waits = waiting !== undefined && waiting.waitsFor[i] !== -1;
    if (waits || (start[i + 1] as number) - (start[i] as number) <= hubDegree) continue;
    isHub[i] = 1;
    hubs.push(i);
  }

  // Each unknown's list holds the unknowns it still touches directly, then the elements (eliminated cliques) it is in.
  const list = new Int32Array(neighbour.length);
  const listStart = new Int32Array(n);
  const variables = new Int32Array(n);
  const elementsIn = new Int32Array(n);
  const degree = new Int32Array(n);
  let fill = 0;
  for (let i = 0; i < n; i++) {
    listStart[i] = fill;
    if (isHub[i] === 1) continue;
    for (let k = start[i] as number; k < (start[i + 1] as number); k++) {
      const j = neighbour[k] as number;
      if (isHub[j] === 0) list[fill++] = j;
    }
    variables[i] = fill - (listStart[i] as number);
    degree[i] = variables[i] as number;
  }

  const bucket = new Int32Array(n + 1).fill(-1);
  const after = new Int32Array(n);
  const before = new Int32Array(n);
  const put = (i: number): void => {
    const d = degree[i] as number;
    const old = bucket[d] as number;
    after[i] = old;
    before[i] = -1;
    if (old !== -1) before[old] = i;
    bucket[d] = i;
  };
  const take = (i: number): void => {
    const b = before[i] as number;
    const a = after[i] as number;
    if (b === -1) bucket[degree[i] as number] = a;
    else after[b] = a;
    if (a !== -1) before[a] = b;
  };

  const isHeld = new Uint8Array(n);
  const heldBy = new Map<number, number[]>();
  const leftIn = new Int32Array(n);
  for (let i = n - 1; i >= 0; i--) {
    const region = waiting === undefined ? -1 : (waiting.regionOf[i] as number);
    if (region !== -1) leftIn[region] = (leftIn[region] as number) + 1;
    const waitsFor = waiting === undefined ? -1 : (waiting.waitsFor[i] as number);
    if (waitsFor !== -1) {
      isHeld[i] = 1;
      const others = heldBy.get(waitsFor);
      if (others === undefined) heldBy.set(waitsFor, [i]);
      else others.push(i);
    } else if (isHub[i] === 0) put(i);
  }
  let ready = n - hubs.length - isHeld.reduce((sum, held) => sum + held, 0);
  let least = 0;
  const release = (region: number): void => {
    for (const i of heldBy.get(region) ?? []) {
      isHeld[i] = 0;
      put(i);
      least = Math.min(least, degree[i] as number);
      ready++;
    }
    heldBy.delete(region);
  };
  for (const region of [...heldBy.keys()]) if (leftIn[region] === 0) release(region);

  let pool = new Int32Array(Math.max(64, 2 * neighbour.length));
  let poolEnd = 0;
  const elementStart = new Int32Array(n);
  const elementSize = new Int32Array(n);
  const isElement = new Uint8Array(n);
  const isGone = new Uint8Array(n);
  const inClique = new Int32Array(n).fill(-1);
  const outsideMark = new Int32Array(n).fill(-1);
  const outside = new Int32Array(n);

  const total = n - hubs.length;
  let k = 0;
  for (; ready > 0; k++) {
    while (bucket[least] === -1) least++;
    const p = bucket[least] as number;
    take(p);
    order[k] = p;
    isGone[p] = 1;
    ready--;

    // The clique that eliminating p leaves behind: what it touches directly, and what its elements hold.
    const cliqueStart = poolEnd;
    const need = poolEnd + (degree[p] as number) + 1;
    if (need > pool.length) {
      const grown = new Int32Array(Math.max(2 * pool.length, need));
      grown.set(pool);
      pool = grown;
    }
    inClique[p] = k;
    const at = listStart[p] as number;
    const direct = variables[p] as number;
    for (let t = at; t < at + direct; t++) {
      const j = list[t] as number;
      if (isGone[j] === 1 || inClique[j] === k) continue;
      inClique[j] = k;
      pool[poolEnd++] = j;
    }
    for (let t = at + direct; t < at + direct + (elementsIn[p] as number); t++) {
      const e = list[t] as number;
      if (isElement[e] === 0) continue;
      isElement[e] = 0;
      const from = elementStart[e] as number;
      for (let s = from; s < from + (elementSize[e] as number); s++) {
        const j = pool[s] as number;
        if (isGone[j] === 1 || inClique[j] === k) continue;
        inClique[j] = k;
        pool[poolEnd++] = j;
      }
    }
    const size = poolEnd - cliqueStart;
    elementStart[p] = cliqueStart;
    elementSize[p] = size;
    isElement[p] = 1;

    // How much of each older element lies outside the new clique.
    for (let s = cliqueStart; s < poolEnd; s++) {
      const i = pool[s] as number;
      const from = (listStart[i] as number) + (variables[i] as number);
      for (let t = from; t < from + (elementsIn[i] as number); t++) {
        const e = list[t] as number;
        if (isElement[e] === 0) continue;
        if (outsideMark[e] !== k) {
          outsideMark[e] = k;
          outside[e] = elementSize[e] as number;
        }
        outside[e] = (outside[e] as number) - 1;
      }
    }
    for (let s = cliqueStart; s < poolEnd; s++) {
      const i = pool[s] as number;
      if (isHeld[i] === 0) take(i);
      const from = listStart[i] as number;
      const firstElement = from + (variables[i] as number);
      const lastElement = firstElement + (elementsIn[i] as number);
      let to = from;
      for (let t = from; t < firstElement; t++) {
        const j = list[t] as number;
        if (isGone[j] === 0 && inClique[j] !== k) list[to++] = j;
      }
      let bound = to - from + size - 1;
      variables[i] = to - from;
      for (let t = firstElement; t < lastElement; t++) {
        const e = list[t] as number;
        if (isElement[e] === 0) continue;
        if (outside[e] === 0) {
          isElement[e] = 0;
          continue;
        }
        bound += outside[e] as number;
        list[to++] = e;
      }
      list[to++] = p;
      elementsIn[i] = to - from - (variables[i] as number);
      degree[i] = Math.min(total - k - 2, (degree[i] as number) + size - 1, bound);
      if (isHeld[i] === 1) continue;
      put(i);
      if ((degree[i] as number) < least) least = degree[i] as number;
    }
    const region = waiting === undefined ? -1 : (waiting.regionOf[p] as number);
    if (region === -1) continue;
    leftIn[region] = (leftIn[region] as number) - 1;
    if (leftIn[region] === 0) release(region);
  }
  for (const hub of hubs) order[k++] = hub;
  for (let i = 0; i < n; i++) if (isHeld[i] === 1) order[k++] = i;
  return order;
}
