import { wholes } from "../columns.js";
import type { Topology } from "../topology/types.js";

/**
 * The metal of a circuit walked once: a tree for each part that hangs together through branches. Currents in a tree are sums of what the
 * loads take; in a loop of metal they are not, so loops are marked.
 */
export class Forest {
  /** By node; −1 at a root. */
  readonly parentNode: Int32Array;
  readonly parentBranch: Int32Array;
  /** Parents before children. */
  readonly order: Int32Array;
  /** Root of each node's tree. */
  readonly rootOf: Int32Array;
  /** 1 for each branch that lies in a loop, closed by metal or through batteries and converters side by side. */
  readonly looped: Uint8Array;
  readonly hasLoops: boolean;
  private readonly depth: Int32Array;
  /** Nodes under n are those with `enter[n] ≤ enter < leave[n]`. */
  private readonly enter: Int32Array;
  private readonly leave: Int32Array;

  constructor(topology: Topology) {
    const count = topology.nodes.length;
    this.parentNode = new Int32Array(count).fill(-1);
    this.parentBranch = new Int32Array(count).fill(-1);
    this.order = new Int32Array(count);
    this.rootOf = new Int32Array(count).fill(-1);
    this.depth = new Int32Array(count);
    this.enter = new Int32Array(count);
    this.leave = new Int32Array(count);
    this.spread(topology);
    this.number();
    this.looped = new Uint8Array(topology.branches.length);
    this.hasLoops = this.markLoops(topology);
  }

  /** Branches between a node and its root. */
  depthOf(node: number): number {
    return this.depth[node] ?? 0;
  }

  /** Is `node` the other one or beyond it? */
  isUnder(node: number, other: number): boolean {
    const at = this.enter[node] ?? -1;
    return (
      this.rootOf[node] === this.rootOf[other] &&
      at >= (this.enter[other] ?? 0) &&
      at < (this.leave[other] ?? 0)
    );
  }

  /** Last node that the ways from both nodes to the root have in common; −1 where no metal joins them. */
  meeting(a: number, b: number): number {
    if (this.rootOf[a] !== this.rootOf[b]) return -1;
    let at = a;
    while (!this.isUnder(b, at)) at = this.parentNode[at] ?? -1;
    return at;
  }

  /**
   * Passes the branches on the way between two nodes; `up`: from a branch's outer end to its inner one.
   * @returns false where no metal joins them; then nothing was visited.
   */
  walk(from: number, to: number, visit: (branch: number, up: boolean) => void): boolean {
    const top = this.meeting(from, to);
    if (top < 0) return false;
    for (let at = from; at !== top; at = this.parentNode[at] ?? top) visit(this.parentBranch[at] ?? -1, true);
    for (let at = to; at !== top; at = this.parentNode[at] ?? top) visit(this.parentBranch[at] ?? -1, false);
    return true;
  }

  /** Breadth first from the supplies' terminals, so that what hangs on them lies beyond them. */
  private spread({ nodes, branches, sources, converters }: Topology): void {
    const count = nodes.length;
    const first = new Int32Array(count + 1);
    for (const { from, to } of branches) {
      first[from + 1] = (first[from + 1] ?? 0) + 1;
      first[to + 1] = (first[to + 1] ?? 0) + 1;
    }
    for (let node = 0; node < count; node += 1) first[node + 1] = (first[node + 1] ?? 0) + (first[node] ?? 0);
    const fill = first.slice();
    const at = new Int32Array(2 * branches.length);
    branches.forEach(({ from, to }, index) => {
      for (const node of [from, to]) {
        at[fill[node] ?? 0] = index;
        fill[node] = (fill[node] ?? 0) + 1;
      }
    });
    let end = 0;
    let next = 0;
    const reach = (node: number, parent: number, branch: number, root: number) => {
      this.parentNode[node] = parent;
      this.parentBranch[node] = branch;
      this.rootOf[node] = root;
      this.depth[node] = parent < 0 ? 0 : (this.depth[parent] ?? 0) + 1;
      this.order[end] = node;
      end += 1;
    };
    const start = (root: number) => {
      if (this.rootOf[root] !== -1) return;
      reach(root, -1, -1, root);
      for (; next < end; next += 1) {
        const node = this.order[next] ?? 0;
        for (let slot = first[node] ?? 0; slot < (first[node + 1] ?? 0); slot += 1) {
          const index = at[slot] ?? 0;
          const branch = branches[index];
          const far = branch?.from === node ? branch.to : (branch?.from ?? node);
          if (this.rootOf[far] === -1) reach(far, node, index, root);
        }
      }
    };
    for (const { plus, minus } of sources) {
      start(plus);
      start(minus);
    }
    for (const { outPlus, outMinus } of converters) {
      start(outPlus);
      start(outMinus);
    }
    for (let node = 0; node < count; node += 1) start(node);
  }

  private number(): void {
    const count = this.order.length;
    const size = new Int32Array(count).fill(1);
    for (let k = count - 1; k >= 0; k -= 1) {
      const node = this.order[k] ?? 0;
      const parent = this.parentNode[node] ?? -1;
      if (parent >= 0) size[parent] = (size[parent] ?? 0) + (size[node] ?? 0);
    }
    const next = new Int32Array(count);
    let roots = 0;
    for (const node of this.order) {
      const parent = this.parentNode[node] ?? -1;
      const enter = parent < 0 ? roots : (next[parent] ?? 0);
      if (parent < 0) roots += size[node] ?? 1;
      else next[parent] = enter + (size[node] ?? 1);
      this.enter[node] = enter;
      this.leave[node] = enter + (size[node] ?? 1);
      next[node] = enter + 1;
    }
  }

  private markLoops({ branches, sources, converters }: Topology): boolean {
    /** What is marked is folded into one node, so that each branch is passed once. */
    const folded = wholes(this.order, (_, node) => node);
    const markUp = (node: number, until: number): void => {
      let at = find(folded, node);
      while (at !== until && this.parentNode[at] !== -1) {
        this.looped[this.parentBranch[at] ?? 0] = 1;
        folded[at] = this.parentNode[at] ?? at;
        at = find(folded, at);
      }
    };
    let found = false;
    branches.forEach(({ from, to }, index) => {
      if (this.parentBranch[from] === index || this.parentBranch[to] === index) return;
      found = true;
      this.looped[index] = 1;
      const [a, b] = [find(folded, from), find(folded, to)];
      const top = find(folded, this.meeting(a, b));
      markUp(a, top);
      markUp(b, top);
    });
    // supplies join trees too; where two are joined already, current can go round through the supply
    const joined = wholes(this.order, (_, node) => node);
    const join = (plus: number, minus: number) => {
      const [a, b] = [find(joined, this.rootOf[plus] ?? 0), find(joined, this.rootOf[minus] ?? 0)];
      if (a !== b) {
        joined[a] = b;
        return;
      }
      found = true;
      markUp(plus, -1);
      markUp(minus, -1);
    };
    for (const { plus, minus } of sources) join(plus, minus);
    for (const { outPlus, outMinus } of converters) join(outPlus, outMinus);
    return found;
  }
}

function find(parent: Int32Array, node: number): number {
  let at = node;
  for (;;) {
    const up = parent[at] ?? at;
    if (up === at) return at;
    parent[at] = parent[up] ?? up;
    at = up;
  }
}
