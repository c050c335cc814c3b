import type { Placed, Tree } from "./split.js";

/** A node on one sheet of the diagram; `y` is the height of its line, counted down from the top [mm]. */
export interface Spot {
  readonly placed: Placed;
  readonly down: number;
  /** Began on an earlier sheet. */
  readonly continued: boolean;
}

export interface SheetTree {
  readonly tree: Tree;
  /** By index in the tree; nodes that are not on this sheet are missing. */
  readonly spots: ReadonlyMap<number, Spot>;
}

export interface Heights {
  readonly row: number;
  /** Of gear in a chain, after the first. */
  readonly chained: number;
  /** Of a way that feeds nothing. */
  readonly spare: number;
  readonly panelHead: number;
  /** Between two trees. */
  readonly gap: number;
  readonly room: number;
}

interface Row {
  readonly tree: number;
  readonly index: number;
  readonly heightMm: number;
  /** Gear that hangs on other gear. */
  readonly chained: boolean;
  /** The branch it belongs to; a sheet is not begun inside one where that can be helped. */
  readonly branch: number;
}

/** Deals the trees out over sheets, a row for everything that stands at an end, and draws again what a new sheet hangs on. */
export function dealRows(trees: readonly Tree[], heights: Heights): SheetTree[][] {
  const rows = trees.flatMap((tree, number) => rowsOf(tree, number, heights));
  const sheets: SheetTree[][] = [];
  for (let start = 0; start < rows.length; ) {
    const end = sheetEnd(rows, start, heights, trees);
    sheets.push(sheetOf(rows.slice(start, end), trees, heights, rows[start - 1]));
    start = end;
  }
  return sheets;
}

const isHead = (placed: Placed) => placed.node.kind === "panel" && !placed.goesOn;

function rowsOf(tree: Tree, number: number, heights: Heights): Row[] {
  const hasChild = tree.placed.map(() => false);
  const branches: number[] = [];
  for (const [index, { parent, node }] of tree.placed.entries()) {
    if (parent >= 0) hasChild[parent] = true;
    const starts = parent < 0 || node.kind === "way" || tree.placed[parent]?.node.kind === "panel";
    branches.push(starts ? index : (branches[parent] ?? index));
  }
  return tree.placed.flatMap((placed, index): Row[] => {
    const head = isHead(placed);
    if (!head && placed.node.kind !== "gear" && hasChild[index] === true) return [];
    const spare = placed.node.kind === "way";
    const chained = tree.placed[placed.parent]?.node.kind === "gear";
    const heightMm = head
      ? heights.panelHead
      : spare
        ? heights.spare
        : chained
          ? heights.chained
          : heights.row;
    return [{ tree: number, index, heightMm, chained, branch: branches[index] ?? index }];
  });
}

function sheetEnd(rows: readonly Row[], start: number, heights: Heights, trees: readonly Tree[]): number {
  const first = rows[start];
  let usedMm = first === undefined ? 0 : repeatedHeads(trees[first.tree], first.index) * heights.panelHead;
  let end = start;
  for (; end < rows.length; end += 1) {
    const row = rows[end];
    if (row === undefined) break;
    const gapMm = end > start && rows[end - 1]?.tree !== row.tree ? heights.gap : 0;
    if (end > start && usedMm + gapMm + row.heightMm > heights.room) break;
    usedMm += gapMm + row.heightMm;
  }
  return end >= rows.length ? end : betterEnd(rows, start, end, heights, trees);
}

/** Least share of a sheet that is filled before a break is moved up for the sake of what it would part. */
const leastFilled = 0.45;

/** The last break before `end` that parts no branch, or at least no chain, while the sheet stays filled. */
function betterEnd(
  rows: readonly Row[],
  start: number,
  end: number,
  heights: Heights,
  trees: readonly Tree[],
): number {
  let filledMm = 0;
  let chainEnd: number | undefined;
  let branchEnd: number | undefined;
  for (let at = start; at <= end; at += 1) {
    const row = rows[at];
    const before = rows[at - 1];
    if (filledMm > leastFilled * heights.room && row !== undefined && before !== undefined) {
      const afterHead = isHeadRow(trees[before.tree], before.index);
      const sameBranch = row.tree === before.tree && row.branch === before.branch;
      if (!afterHead && !row.chained) chainEnd = at;
      if (!afterHead && !sameBranch) branchEnd = at;
    }
    filledMm += row?.heightMm ?? 0;
  }
  return branchEnd ?? chainEnd ?? end;
}

const isHeadRow = (tree: Tree | undefined, index: number) => {
  const placed = tree?.placed[index];
  return placed !== undefined && isHead(placed);
};

/** Panels above a row that stand again at the head of its sheet. */
function repeatedHeads(tree: Tree | undefined, index: number): number {
  let heads = 0;
  for (let at = tree?.placed[index]?.parent ?? -1; at >= 0; at = tree?.placed[at]?.parent ?? -1)
    if (isHeadRow(tree, at)) heads += 1;
  return heads;
}

function sheetOf(
  rows: readonly Row[],
  trees: readonly Tree[],
  heights: Heights,
  before: Row | undefined,
): SheetTree[] {
  const sheet: SheetTree[] = [];
  let down = 0;
  for (let from = 0; from < rows.length; ) {
    const number = rows[from]?.tree ?? 0;
    const tree = trees[number];
    const own = rows.slice(from).filter((row) => row.tree === number);
    from += own.length;
    if (tree === undefined) continue;
    if (sheet.length > 0) down += heights.gap;
    const continued = before !== undefined && before.tree === number && sheet.length === 0;
    const heads = continued ? headsAbove(tree, own[0]?.index ?? 0) : [];
    const downs = new Map<number, number>();
    for (const index of heads) {
      downs.set(index, down + heights.panelHead / 2);
      down += heights.panelHead;
    }
    for (const row of own) {
      downs.set(row.index, down + row.heightMm / 2);
      down += row.heightMm;
    }
    sheet.push({
      tree,
      spots: spotsOf(
        tree,
        downs,
        own.map((row) => row.index),
        continued,
      ),
    });
  }
  return sheet;
}

function headsAbove(tree: Tree, index: number): number[] {
  const heads: number[] = [];
  for (let at = tree.placed[index]?.parent ?? -1; at >= 0; at = tree.placed[at]?.parent ?? -1)
    if (isHeadRow(tree, at)) heads.unshift(at);
  return heads;
}

/** Gives whatever has no row of its own here the height of its first child. */
function spotsOf(
  tree: Tree,
  downs: Map<number, number>,
  own: readonly number[],
  continued: boolean,
): Map<number, Spot> {
  const first = own[0] ?? 0;
  for (const index of own) {
    const down = downs.get(index) ?? 0;
    // Gear has a row of its own always: where a chain began on an earlier sheet it is not drawn again.
    for (
      let at = tree.placed[index]?.parent ?? -1;
      at >= 0 && !downs.has(at);
      at = tree.placed[at]?.parent ?? -1
    )
      if (tree.placed[at]?.node.kind !== "gear") downs.set(at, down);
  }
  const spots = new Map<number, Spot>();
  for (const index of [...downs.keys()].sort((a, b) => a - b)) {
    const placed = tree.placed[index];
    const down = downs.get(index);
    if (placed !== undefined && down !== undefined)
      spots.set(index, { placed, down, continued: continued && index < first });
  }
  return spots;
}
