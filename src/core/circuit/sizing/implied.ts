import type { Topology } from "../topology/types.js";
import type { Flows } from "./flows.js";
import type { Forest } from "./forest.js";
import type { LimitWay } from "./limits.js";

/**
 * Leaves out limits that another one holds with it: further gear on the same way, with no more drop allowed, where all current flows
 * outward. What lies on one pair of points with the same limit is judged by its first. Linear, so that a long chain keeps one limit.
 * @param ways Of one case.
 */
export function withoutImplied(
  { gear }: Topology,
  forest: Forest,
  flows: Flows,
  ways: readonly LimitWay[],
): LimitWay[] {
  const isPlain = (branch: number) => forest.looped[branch] === 0 && !flows.isMixed(branch);
  const plusOf = (way: LimitWay | undefined) => gear[way?.gear ?? -1]?.plus ?? -1;
  const minusOf = (way: LimitWay | undefined) => gear[way?.gear ?? -1]?.minus ?? -1;
  const outer = (way: LimitWay | undefined) => forest.depthOf(plusOf(way)) + forest.depthOf(minusOf(way));
  /** Is the first the better one to judge by? Then it has the tighter limit, lies further out, or comes first. */
  const isBetter = (one: number, other: number): boolean => {
    const [a, b] = [ways[one], ways[other]];
    if (!b) return true;
    const apartV = (a?.maxDropV ?? 0) - b.maxDropV;
    if (apartV !== 0) return apartV < 0;
    const further = outer(a) - outer(b);
    return further !== 0 ? further > 0 : one < other;
  };
  /** By node: the best to judge by of all beyond it, with nothing but plain branches between; −1: none. */
  const best = new Int32Array(forest.order.length).fill(-1);
  const offer = (node: number, way: number) => {
    if (node >= 0 && isBetter(way, best[node] ?? -1)) best[node] = way;
  };
  ways.forEach((way, index) => {
    offer(plusOf(way), index);
  });
  /** Depth of the innermost node that plain branches lead to. */
  const plainFrom = new Int32Array(forest.order.length);
  for (let k = forest.order.length - 1; k >= 0; k -= 1) {
    const node = forest.order[k] ?? 0;
    const branch = forest.parentBranch[node] ?? -1;
    const found = best[node] ?? -1;
    if (branch >= 0 && found >= 0 && isPlain(branch)) offer(forest.parentNode[node] ?? -1, found);
  }
  for (const node of forest.order) {
    const branch = forest.parentBranch[node] ?? -1;
    plainFrom[node] =
      branch >= 0 && isPlain(branch) ? (plainFrom[forest.parentNode[node] ?? 0] ?? 0) : forest.depthOf(node);
  }
  return ways.filter((way, index) => {
    const other = ways[best[plusOf(way)] ?? -1];
    if (!other || other === way || best[plusOf(way)] === index) return true;
    if (other.fromPlus !== way.fromPlus || other.toMinus !== way.toMinus) return true;
    if (!forest.isUnder(plusOf(way), way.fromPlus) || !forest.isUnder(minusOf(way), way.toMinus)) return true;
    const [inner, outerNode] = [minusOf(way), minusOf(other)];
    const holds = forest.isUnder(outerNode, inner) && (plainFrom[outerNode] ?? 0) <= forest.depthOf(inner);
    return !holds;
  });
}
