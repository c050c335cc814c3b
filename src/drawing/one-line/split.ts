import type { TreeNode } from "./tree.js";

/** How wide each node is, and how long the runs between them are drawn at the least [mm]. */
export interface Widths {
  readonly of: (node: TreeNode) => number;
  readonly minEdgeMm: number;
  readonly maxEdgeMm: number;
  readonly roomMm: number;
}

/** Room for the words that stand in place of what is drawn further on [mm]. */
const pointerMm = 50;

const canBeCut = ({ kind, parent }: TreeNode) =>
  parent >= 0 && (kind === "box" || kind === "converter" || kind === "panel");
/** What a node takes at the least, be it drawn here or cut off. */
const neededMm = (node: TreeNode, widths: Widths) =>
  Math.max(widths.of(node), canBeCut(node) ? pointerMm : 0);

export interface Placed {
  readonly node: TreeNode;
  /** In this tree; -1: its root. */
  readonly parent: number;
  /** Left edge [mm]. */
  readonly x: number;
  /** Drawn further on as the root of a tree of its own; here only its name stands. */
  readonly goesOn: boolean;
}

/** Nodes with their places across; a pre-order of its own. */
export interface Tree {
  readonly placed: readonly Placed[];
  readonly edgeMm: number;
}

/** Does a run (rather than a line inside its panel) lead to the node? */
export const hasEdge = (node: TreeNode) => node.run !== undefined || node.kind === "reference";

/**
 * Cuts trees too wide for the room, and all trees at their panels where `atPanels` asks for it, so that every part fits across.
 * What is cut off becomes a tree of its own and leaves a node that `goesOn`.
 */
export function splitTrees(nodes: readonly TreeNode[], widths: Widths, atPanels: boolean): Tree[] {
  const leads = (index: number) => nodes[index + 1]?.parent === index;
  const cut = nodes.map(
    (node, index) => atPanels && node.kind === "panel" && node.parent >= 0 && leads(index),
  );
  cutTooWide(nodes, widths, cut);
  const trees: { members: number[]; root: number }[] = [];
  const treeOf: number[] = [];
  for (const [index, node] of nodes.entries()) {
    const own = node.parent < 0 || cut[index] === true;
    const home = node.parent < 0 ? -1 : (treeOf[node.parent] ?? -1);
    if (own) {
      if (home >= 0) trees[home]?.members.push(index);
      treeOf.push(trees.push({ members: [index], root: index }) - 1);
    } else {
      trees[home]?.members.push(index);
      treeOf.push(home);
    }
  }
  return trees.map(({ members, root }) => place(nodes, members, root, widths));
}

/** Marks the nearest box, converter or panel above anything that would stand past the right edge. */
function cutTooWide(nodes: readonly TreeNode[], widths: Widths, cut: boolean[]): void {
  const left: number[] = [];
  for (let index = 0; index < nodes.length; index += 1) {
    const node = nodes[index];
    if (node === undefined) break;
    const x =
      node.parent < 0
        ? 0
        : leftOf(
            node,
            nodes[node.parent],
            cut[node.parent] === true ? 0 : (left[node.parent] ?? 0),
            widths,
            widths.minEdgeMm,
          );
    left[index] = x;
    if (x + neededMm(node, widths) <= widths.roomMm) continue;
    const at = cuttable(nodes, cut, node.parent);
    if (at === undefined) continue;
    cut[at] = true;
    index = at;
  }
}

function cuttable(nodes: readonly TreeNode[], cut: readonly boolean[], from: number): number | undefined {
  for (let at = from; at >= 0; at = nodes[at]?.parent ?? -1) {
    const node = nodes[at];
    if (node === undefined || node.parent < 0 || cut[at] === true) return undefined;
    if (canBeCut(node)) return at;
  }
  return undefined;
}

/** Left edge of a node beside its parent; gear in a chain stands under its parent. */
function leftOf(
  node: TreeNode,
  parent: TreeNode | undefined,
  parentX: number,
  widths: Widths,
  edgeMm: number,
): number {
  if (parent === undefined || parent.kind === "gear") return parentX;
  return parentX + widths.of(parent) + (hasEdge(node) ? edgeMm : 0);
}

function place(nodes: readonly TreeNode[], members: readonly number[], root: number, widths: Widths): Tree {
  const local = new Map(members.map((member, index) => [member, index]));
  const parentOf = (member: number) =>
    member === root ? -1 : (local.get(nodes[member]?.parent ?? -1) ?? -1);
  const edgeMm = widestEdge(nodes, members, parentOf, widths);
  const placed: Placed[] = [];
  for (const [index, member] of members.entries()) {
    const node = nodes[member];
    if (node === undefined) continue;
    const parent = parentOf(member);
    const above = placed[parent];
    const x = above === undefined ? 0 : leftOf(node, above.node, above.x, widths, edgeMm);
    const goesOn = index > 0 && isCutHere(nodes, members, index);
    placed.push({ node, parent, x, goesOn });
  }
  return { placed, edgeMm };
}

/** A member that is the root of another tree: its children are not here though it has some. */
function isCutHere(nodes: readonly TreeNode[], members: readonly number[], index: number): boolean {
  const member = members[index] ?? -1;
  const next = nodes[member + 1];
  return next !== undefined && next.parent === member && members[index + 1] !== member + 1;
}

/** The longest edge that lets every path fit, within the limits. */
function widestEdge(
  nodes: readonly TreeNode[],
  members: readonly number[],
  parentOf: (member: number) => number,
  widths: Widths,
): number {
  let edgeMm = widths.maxEdgeMm;
  const used: { mm: number; edges: number }[] = [];
  for (const member of members) {
    const node = nodes[member];
    if (node === undefined) continue;
    const at = parentOf(member);
    const parent = nodes[members[at] ?? -1];
    const above = used[at] ?? { mm: 0, edges: 0 };
    const beside = parent !== undefined && parent.kind !== "gear";
    const mm = above.mm + (beside ? widths.of(parent) : 0);
    const edges = above.edges + (beside && hasEdge(node) ? 1 : 0);
    used.push({ mm, edges });
    if (edges > 0) edgeMm = Math.min(edgeMm, (widths.roomMm - mm - neededMm(node, widths)) / edges);
  }
  return Math.max(edgeMm, widths.minEdgeMm);
}
