import type { Figures } from "../../core/figures-types.js";
import type { Shows } from "../../core/plan/model/plan.js";
import { type DrawnWords, drawnInEnglish } from "../../words/drawn/english.js";
import { textWidthMm } from "../fonts/measure.js";
import { fitText } from "../fonts/wrap.js";
import { line, points, text } from "../make.js";
import type { Shape } from "../shapes.js";
import { type DiagramLabels, diagramLabels } from "./labels.js";
import { bus, frame, Looks, nameTopMm, titled, wayMm } from "./nodes.js";
import { dealRows, type Heights, type SheetTree, type Spot } from "./rows.js";
import { hasEdge, splitTrees, type Tree } from "./split.js";
import { deviceMm, junction, protectionSymbol, switchSymbol } from "./symbols.js";
import { plantTrees } from "./tree.js";

const heights = { row: 12, chained: 10.8, spare: 10.8, panelHead: 11.4, gap: 6 } as const;
const edges = { minEdgeMm: 27, maxEdgeMm: 46 } as const;

/**
 * The one-line diagram, left to right: battery, panel, ways, boxes, gear, each run with its size, length and current.
 * As many sheets as it takes; panels go to sheets of their own where not all fits on one.
 * @returns Shapes of each sheet, inside the room whose lower left corner is (`left`, `bottom`) [mm].
 */
export function oneLineDiagram(
  figures: Figures,
  shows: Shows,
  room: {
    readonly left: number;
    readonly bottom: number;
    readonly widthMm: number;
    readonly heightMm: number;
  },
  words: DrawnWords = drawnInEnglish,
): Shape[][] {
  const labels = diagramLabels(figures, shows, words);
  const looks = new Looks(figures.plan, labels, words);
  const nodes = plantTrees(figures.plan);
  const widths = {
    ...edges,
    of: (node: (typeof nodes)[number]) => looks.widthMm(node),
    roomMm: room.widthMm,
  };
  const fullHeights: Heights = { ...heights, room: room.heightMm };
  const whole = splitTrees(nodes, widths, false);
  const roots = nodes.filter((node) => node.parent < 0).length;
  let sheets = dealRows(whole, fullHeights);
  if (sheets.length > 1 || whole.length > roots)
    sheets = dealRows(splitTrees(nodes, widths, true), fullHeights);
  return sheets.map((sheet) =>
    sheet.flatMap((part) =>
      new SheetDrawing(part, looks, labels, words, room.left, room.bottom + room.heightMm).draw(),
    ),
  );
}

const runName = { sizeMm: points(8.5), weight: "semibold" } as const;
const detail = { sizeMm: points(8.5), weight: "regular" } as const;

class SheetDrawing {
  private readonly tree: Tree;

  constructor(
    private readonly part: SheetTree,
    private readonly looks: Looks,
    private readonly labels: DiagramLabels,
    private readonly words: DrawnWords,
    private readonly left: number,
    private readonly top: number,
  ) {
    this.tree = part.tree;
  }

  draw(): Shape[] {
    const shapes: Shape[] = [];
    for (const [index, spot] of this.part.spots) {
      const { placed } = spot;
      const [x, y] = this.at(spot);
      if (placed.parent >= 0) shapes.push(...this.link(spot));
      shapes.push(
        ...(placed.goesOn ? this.looks.drawPointer(placed.node, x, y) : this.looks.draw(placed.node, x, y)),
      );
      if (placed.node.kind === "panel" && !placed.goesOn) shapes.push(...this.panelFrame(index, spot));
      if (placed.node.kind === "box" && !placed.goesOn) shapes.push(...this.boxFrame(index, spot));
    }
    return shapes;
  }

  private at(spot: Spot): [number, number] {
    return [this.left + spot.placed.x, this.top - spot.down];
  }

  /** The line from the parent, with its run's words where a run it is. */
  private link(spot: Spot): Shape[] {
    const parent = this.part.spots.get(spot.placed.parent);
    const [x, y] = this.at(spot);
    // A chain that began on an earlier sheet comes in from above.
    if (parent === undefined) return this.chainLink(spot, x, y + heights.chained);
    const [parentX, parentY] = this.at(parent);
    const { node } = spot.placed;
    const parentNode = parent.placed.node;
    if (parentNode.kind === "gear") return this.chainLink(spot, parentX, parentY);
    const leaves = this.leaves(spot, parent);
    const shapes: Shape[] = [line(leaves, y, x, y)];
    if (Math.abs(parentY - y) > 0.01)
      shapes.push(line(leaves, parentY, leaves, y), junction(leaves, parentY));
    else if (parentNode.kind === "panel") shapes.push(junction(leaves, y));
    if (!hasEdge(node) || node.run === undefined) return shapes;
    return [...shapes, ...this.runWords(spot, x - this.tree.edgeMm, y)];
  }

  /** Where across the sheet a branch leaves its parent [mm]. */
  private leaves({ placed }: Spot, parent: Spot): number {
    const { node } = parent.placed;
    const [parentX] = this.at(parent);
    if (node.kind === "box") return parentX + 6;
    if (node.kind !== "panel" && node.kind !== "battery") return parentX + this.looks.widthMm(node);
    const head = this.looks.head(node);
    const live =
      placed.node.run?.beforeMaster === true || this.looks.way(placed.node.name)?.alwaysLive === true;
    if (placed.node.run?.beforeMain === true) return parentX + head.beforeMainMm - 1;
    if (live) return parentX + head.beforeMasterMm - (head.beforeMasterMm < head.widthMm ? 0.5 : 0);
    return parentX + this.looks.widthMm(node);
  }

  private runWords({ placed }: Spot, from: number, y: number): Shape[] {
    const { run } = placed.node;
    if (run === undefined) return [];
    const { currentA, make } = this.labels.run(run);
    const roomMm = this.tree.edgeMm - 2.5;
    const currentMm = currentA === "" ? 0 : textWidthMm(currentA, detail.sizeMm, "regular") + 1.5;
    const right = from + this.tree.edgeMm - 1.2;
    const devices = [
      ...(run.protection === undefined ? [] : [protectionSymbol(run.protection.device)]),
      ...(run.switch === undefined ? [] : [switchSymbol]),
    ];
    const first = from + roomMm / 2 + 0.5 - (devices.length * deviceMm) / 2;
    // a device in the run stands higher than its line: the words keep clear of it
    const clearMm = devices.length > 0 ? 0.4 : 0;
    const over = y + 2.1 + clearMm;
    return [
      ...devices.map((symbol, index) => symbol(first + index * deviceMm, y)),
      text(from + 1.6, over, fitText(run.name, roomMm - currentMm, runName), runName),
      text(right, over, currentA, { ...detail, anchor: "end" }),
      text(from + 1.6, y - 4.2 - clearMm, fitText(make, roomMm, detail), { ...detail, colour: "soft" }),
    ];
  }

  /** Gear in a chain: straight down from one to the next, the run's words left of it. */
  private chainLink(spot: Spot, parentX: number, parentY: number): Shape[] {
    const [x, y] = this.at(spot);
    const { run } = spot.placed.node;
    const down = line(parentX + 3.5, parentY - 3.5, parentX + 3.5, y + 3.5);
    if (run === undefined) return [down];
    const { currentA, make } = this.labels.run(run);
    const roomMm = Math.min(this.tree.edgeMm, x - this.left) - 6;
    if (roomMm < 12) return [down];
    const right = x - 1.5;
    const currentMm = currentA === "" ? 0 : textWidthMm(currentA, detail.sizeMm, "regular") + 1.5;
    return [
      down,
      text(right - currentMm, y + 1.7, fitText(run.name, roomMm - currentMm, runName), {
        ...runName,
        anchor: "end",
      }),
      text(right, y + 1.7, currentA, { ...detail, anchor: "end" }),
      text(right, y - 2.1, fitText(make, roomMm, detail), { ...detail, colour: "soft", anchor: "end" }),
    ];
  }

  private childDowns(index: number): number[] {
    const downs: number[] = [];
    for (const { placed, down } of this.part.spots.values()) if (placed.parent === index) downs.push(down);
    return downs;
  }

  private panelFrame(index: number, spot: Spot): Shape[] {
    const { node, x: across } = spot.placed;
    const x = this.left + across;
    const y = this.top - spot.down;
    const lowest = this.top - Math.max(spot.down, ...this.childDowns(index)) - 5.6;
    const widthMm = this.looks.widthMm(node) + wayMm - 1.5;
    const children = this.childDowns(index);
    const busX = x + this.looks.widthMm(node);
    const rail = children.length > 0 ? [bus(busX, y, this.top - Math.max(...children))] : [];
    return [
      frame(x, y + 4.6, widthMm, lowest),
      ...titled(node.name, this.beside(spot), x, y + 5.6, 50),
      ...rail,
    ];
  }

  /** What is said beside the name of a panel or box. */
  private beside({ placed, continued }: Spot): string {
    const { fedBy, continued: goesOn } = this.words.diagram;
    const fed = placed.parent < 0 && placed.node.run !== undefined ? fedBy(placed.node.run.name) : "";
    return continued ? goesOn : fed;
  }

  private boxFrame(index: number, spot: Spot): Shape[] {
    const [x, y] = this.at(spot);
    const downs = this.childDowns(index);
    const lowest = this.top - Math.max(spot.down, ...downs);
    const rail = downs.length > 1 ? [bus(x + 6, y, lowest)] : [junction(x + 6, y)];
    const name = titled(spot.placed.node.name, this.beside(spot), x, y + nameTopMm + 0.8, 34);
    return [frame(x, y + nameTopMm, 12, lowest - 3), line(x, y, x + 6, y), ...rail, ...name];
  }
}
