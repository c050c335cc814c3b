import type { NodeKind, TreeNode } from "../one-line/tree.js";

/** One thing on the map of the circuits, with its place [mm]; `down` counts from the top. */
export interface Spot {
  /** The same for the same thing after any edit that leaves it where it hangs. */
  readonly id: string;
  readonly node: TreeNode;
  /** Index of the spot it hangs on; −1: a root. */
  readonly parent: number;
  readonly depth: number;
  readonly x: number;
  readonly widthMm: number;
  /** Height of the line that comes in. */
  readonly down: number;
  /** Lower edge of all that hangs on it. */
  readonly bottom: number;
}

export interface CircuitMap {
  readonly shape: MapShape;
  readonly spots: readonly Spot[];
  readonly widthMm: number;
  readonly heightMm: number;
}

/** `wide`: from left to right, for a desk. `narrow`: a line for each thing, set in as it hangs, for a phone. */
export type MapShape = "wide" | "narrow";

/** Room of each kind across; names never change it, so a longer name moves nothing. */
const widthsMm: Readonly<Record<NodeKind, number>> = {
  battery: 48,
  charger: 48,
  converter: 40,
  panel: 34,
  way: 44,
  box: 26,
  gear: 62,
  reference: 48,
};

export const mapMm = {
  run: 54,
  row: 14,
  spare: 11,
  /** More above the line of what has two lines of words over it. */
  head: 9.5,
  /** Between trees that hang on nothing in common. */
  gap: 7,
  /** Set in for each step of a narrow map, at most so many times. */
  inset: 5,
  mostInsets: 7,
  edge: 2,
} as const;

const heads: ReadonlySet<NodeKind> = new Set(["battery", "panel"]);
const sharesRow: ReadonlySet<NodeKind> = new Set(["battery", "way", "box", "converter"]);

/**
 * Lays the trees of the circuits out steadily: in the plan's own order, columns by what stands there and not by its words, each
 * end on a line of its own. What comes in or goes away shifts only what follows, straight up or down, by its own height.
 * @param roomMm Width to fill where the map is narrow.
 */
export function layOutCircuits(nodes: readonly TreeNode[], shape: MapShape, roomMm: number): CircuitMap {
  if (!(roomMm > 0)) throw new RangeError(`room for a map must be > 0 mm, got ${roomMm}`);
  const spots: Spot[] = [];
  const seen = new Map<string, number>();
  let next: number = mapMm.edge;
  for (const [index, node] of nodes.entries()) {
    const parent = spots[node.parent];
    if (!parent && index > 0) next += mapMm.gap;
    const x = parent ? across(node, parent, shape) : mapMm.edge;
    const first = parent !== undefined && node.parent === index - 1;
    const beside = shape === "wide" && first && sharesRow.has(parent.node.kind);
    const leads = nodes[index + 1]?.parent === index;
    const heightMm = shape === "wide" && node.kind === "way" && !leads ? mapMm.spare : mapMm.row;
    const headMm = shape === "wide" && heads.has(node.kind) ? mapMm.head : 0;
    const down = beside ? parent.down : next + headMm + heightMm / 2;
    if (!beside) next += headMm + heightMm;
    const widthMm = shape === "narrow" ? Math.max(roomMm - x - mapMm.edge, 30) : widthsMm[node.kind];
    const chained = node.kind === "gear" && parent?.node.kind === "gear";
    const depth = parent ? parent.depth + (chained ? 0 : 1) : 0;
    spots.push({ id: idOf(node, seen), node, parent: node.parent, depth, x, widthMm, down, bottom: next });
  }
  const bottoms = spots.map(({ bottom }) => bottom);
  for (let index = spots.length - 1; index >= 0; index -= 1) {
    const parent = spots[index]?.parent ?? -1;
    if (parent >= 0) bottoms[parent] = Math.max(bottoms[parent] ?? 0, bottoms[index] ?? 0);
  }
  const placed = spots.map((spot, index) => ({ ...spot, bottom: bottoms[index] ?? spot.bottom }));
  const right = placed.reduce((most, { x, widthMm }) => Math.max(most, x + widthMm), 0);
  return { shape, spots: placed, widthMm: right + mapMm.edge, heightMm: next + mapMm.edge };
}

function across(node: TreeNode, parent: Spot, shape: MapShape): number {
  if (parent.node.kind === "gear") return parent.x;
  if (shape === "narrow") return mapMm.edge + Math.min(parent.depth + 1, mapMm.mostInsets) * mapMm.inset;
  const run = node.run !== undefined || node.kind === "reference" ? mapMm.run : 0;
  return parent.x + widthsMm[parent.node.kind] + run;
}

function idOf({ kind, name, run }: TreeNode, seen: Map<string, number>): string {
  const id = `${kind}\n${name}\n${run?.name ?? ""}`;
  const count = seen.get(id) ?? 0;
  seen.set(id, count + 1);
  return count === 0 ? id : `${id}\n${count}`;
}
