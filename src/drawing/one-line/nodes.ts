import type { CompletePanel, CompletePlan, CompleteWay } from "../../core/plan/completed.js";
import type { DrawnWords } from "../../words/drawn/english.js";
import { textWidthMm } from "../fonts/measure.js";
import { fitText } from "../fonts/wrap.js";
import { box, line, points, strokes, text } from "../make.js";
import type { Shape } from "../shapes.js";
import type { DiagramLabels } from "./labels.js";
import {
  batteryMm,
  batterySymbol,
  converterMm,
  converterSymbol,
  deviceMm,
  gearMm,
  gearSymbol,
  protectionSymbol,
  switchSymbol,
} from "./symbols.js";
import type { TreeNode } from "./tree.js";

const name = { sizeMm: points(9.5), weight: "semibold" } as const;
const detail = { sizeMm: points(8.5), weight: "regular", colour: "soft" } as const;
const trimmed = (words: string, roomMm: number, type: typeof name | typeof detail) =>
  fitText(words, roomMm, type);

export const nameTopMm = 3.9;
const gearTextMm = 46;
export const wayMm = 2 * deviceMm + 10;

/** Devices in the feed of a battery or panel, in order, with where each ends. */
export interface Head {
  readonly widthMm: number;
  /** Where a branch taken before the main device, before the master switch, and after both leaves [mm from the left]. */
  readonly beforeMainMm: number;
  readonly beforeMasterMm: number;
}

function headOf(startMm: number, thing: Pick<CompletePanel, "main" | "master"> | undefined): Head {
  const main = thing?.main !== undefined && thing.main !== "none" ? deviceMm : 0;
  const master = thing?.master === undefined ? 0 : deviceMm;
  return { beforeMainMm: startMm, beforeMasterMm: startMm + main, widthMm: startMm + main + master };
}

/** How each node of a plan is drawn, and where its branches leave. */
export class Looks {
  private readonly batteries;
  private readonly panels;
  private readonly ways = new Map<string, CompleteWay>();
  private readonly gear;
  private readonly converters;
  private readonly chargers;

  constructor(
    plan: CompletePlan,
    private readonly labels: DiagramLabels,
    private readonly words: DrawnWords,
  ) {
    const byName = <T extends { readonly name: string }>(things: readonly T[]) =>
      new Map(things.map((thing) => [thing.name, thing]));
    this.batteries = byName(plan.batteries);
    this.panels = byName(plan.panels);
    for (const panel of plan.panels)
      for (const way of panel.ways) this.ways.set(`${panel.name} / ${way.name}`, way);
    this.gear = byName(plan.gear);
    this.converters = byName(plan.converters);
    this.chargers = byName(plan.chargers);
  }

  way(id: string): CompleteWay | undefined {
    return this.ways.get(id);
  }

  head(node: TreeNode): Head {
    if (node.kind === "battery") return headOf(batteryMm + 2, this.batteries.get(node.name));
    return headOf(5, this.panels.get(node.name));
  }

  widthMm(node: TreeNode): number {
    switch (node.kind) {
      case "battery":
        return this.head(node).widthMm + 2;
      case "panel":
        return this.head(node).widthMm + 3;
      case "way":
        return wayMm;
      case "box":
        return 12;
      case "converter":
        return converterMm + 4;
      case "gear":
        return gearMm + 2 + gearTextMm;
      case "charger":
      case "reference":
        return 44;
      default:
        return node.kind satisfies never;
    }
  }

  draw(node: TreeNode, x: number, y: number): Shape[] {
    switch (node.kind) {
      case "battery":
        return this.battery(node, x, y);
      case "panel":
        return this.panelHead(node, x, y);
      case "way":
        return this.wayLine(node, x, y);
      case "box":
        // Frame and name are drawn by the sheet, which knows how far down it reaches.
        return [];
      case "converter": {
        const outV = this.converters.get(node.name)?.outputV;
        return [
          converterSymbol(x, y, "=", "="),
          line(x + converterMm, y, x + converterMm + 4, y),
          ...titled(
            node.name,
            outV === undefined ? "" : this.words.diagram.output(`${outV}\u00a0V`),
            x,
            y + 5,
            30,
          ),
        ];
      }
      case "gear": {
        const left = x + gearMm + 2;
        const role = this.gear.get(node.name)?.role ?? "other";
        const words = text(left, y + 0.7, trimmed(node.name, gearTextMm, name), name);
        return [
          gearSymbol(x, y, role),
          words,
          text(left, y - 3.1, trimmed(this.labels.gear(node.name), gearTextMm, detail), detail),
        ];
      }
      case "charger": {
        const charger = this.chargers.get(node.name);
        const sign = charger?.kind === "mains" ? "~" : "";
        const words = text(x + converterMm + 2, y + 0.7, trimmed(node.name, 30, name), name);
        const under = text(
          x + converterMm + 2,
          y - 3.1,
          trimmed(charger === undefined ? "" : this.words.diagram.chargers[charger.kind], 30, detail),
          detail,
        );
        return [converterSymbol(x, y, sign, "="), words, under];
      }
      case "reference":
        return [
          ...arrow(x, y),
          text(x + 3, y - 1.1, trimmed(this.referred(node), 40, detail), { ...detail, colour: "ink" }),
        ];
      default:
        return node.kind satisfies never;
    }
  }

  /** The end of a node whose own tree stands further on. */
  drawPointer(node: TreeNode, x: number, y: number): Shape[] {
    const words = this.words.diagram.byItself(node.name);
    return [...arrow(x, y), text(x + 3, y - 1.1, trimmed(words, 44, name), name)];
  }

  private referred({ name: to, refers }: TreeNode): string {
    return refers === undefined ? to : this.words.diagram.refers[refers.as](refers.to);
  }

  private battery(node: TreeNode, x: number, y: number): Shape[] {
    const battery = this.batteries.get(node.name);
    return [
      batterySymbol(x, y),
      line(x + batteryMm, y, x + batteryMm + 2, y),
      ...titled(node.name, this.labels.battery(node.name), x, y + 5.4, 40),
      ...this.devices(node.name, battery, x + batteryMm + 2, y),
      line(x + this.head(node).widthMm, y, x + this.widthMm(node), y),
    ];
  }

  /** Name of the panel, its feed and what stands in it; the frame around all its ways is drawn by the sheet. */
  private panelHead(node: TreeNode, x: number, y: number): Shape[] {
    const panel = this.panels.get(node.name);
    return [
      line(x, y, x + 5, y),
      ...this.devices(node.name, panel, x + 5, y),
      line(x + this.head(node).widthMm, y, x + this.widthMm(node), y),
    ];
  }

  private devices(
    id: string,
    thing: Pick<CompletePanel, "main" | "master"> | undefined,
    x: number,
    y: number,
  ): Shape[] {
    const shapes: Shape[] = [];
    let at = x;
    if (thing?.main !== undefined && thing.main !== "none") {
      shapes.push(protectionSymbol(thing.main.device)(at, y), this.rating(`${id} / main`, at, y));
      at += deviceMm;
    }
    if (thing?.master !== undefined) shapes.push(switchSymbol(at, y));
    return shapes;
  }

  private rating(id: string, x: number, y: number): Shape {
    return text(x + deviceMm / 2, y - 4.3, this.labels.rating(id) ?? this.words.diagram.open, {
      ...detail,
      anchor: "middle",
      colour: "ink",
    });
  }

  private wayLine(node: TreeNode, x: number, y: number): Shape[] {
    const way = this.ways.get(node.name);
    const short = node.name.slice(node.name.indexOf(" / ") + 3);
    const switched = way?.switch !== undefined && way.switch !== "none";
    const fuse = way?.protection === "none" ? undefined : way?.protection;
    // as in the network: the fuse next to the bus, so that the switch is protected too
    const fuseAt = x + 3;
    const switchAt = fuseAt + deviceMm;
    return [
      line(x, y, fuseAt, y),
      ...(fuse !== undefined
        ? [protectionSymbol(fuse.device)(fuseAt, y), this.rating(`${node.name} / fuse`, fuseAt, y)]
        : [line(fuseAt, y, switchAt, y)]),
      switched ? switchSymbol(switchAt, y) : line(switchAt, y, switchAt + deviceMm, y),
      line(switchAt + deviceMm, y, x + wayMm, y),
      text(x + 3, y + 3.7, trimmed(short, wayMm - 4, name), name),
    ];
  }
}

/** A name with quieter words beside it. */
export function titled(title: string, beside: string, x: number, y: number, nameRoomMm: number): Shape[] {
  const words = trimmed(title, nameRoomMm, name);
  const after = x + textWidthMm(words, name.sizeMm, name.weight) + 2;
  return [text(x, y, words, name), text(after, y, trimmed(beside, 60, detail), detail)];
}

function arrow(x: number, y: number): Shape[] {
  return [
    {
      kind: "polyline",
      closed: true,
      points: [
        { x, y: y + 1.1 },
        { x: x + 2, y },
        { x, y: y - 1.1 },
      ],
      fill: "ink",
    },
  ];
}

/** A bus or frame that gathers several rows. */
export function bus(x: number, top: number, bottom: number): Shape {
  return line(x, top, x, bottom, strokes.bold);
}

export function frame(x: number, top: number, widthMm: number, bottom: number): Shape {
  return box(x, bottom, widthMm, top - bottom, { stroke: strokes.softDash });
}
