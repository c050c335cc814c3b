import type { Placed } from "../core/box/entry-rules.js";
import type { BoxBody, FaceName } from "../core/box/face.js";
import type { BoxLayout } from "../core/box/layout.js";
import { type DrawnWords, drawnInEnglish } from "../words/drawn/english.js";
import { mmWords } from "../words/layout-words.js";
import { textWidthMm } from "./fonts/measure.js";
import { box, points, strokes, text } from "./make.js";
import type { Point, Shape } from "./shapes.js";

/** Scales a drawing of a box is made at. */
const scales = [1, 1.5, 2, 2.5, 3, 4, 5, 8, 10, 20];
const small = { sizeMm: points(8.5), weight: "regular" } as const;
/** Kept free around the box for glands and words [mm of paper]. */
const aroundMm = 15;

export interface BoxInside {
  readonly shapes: readonly Shape[];
  /** One on paper stands for so many. */
  readonly scale: number;
  /** What is too small on paper for its name stands there by a letter: letters by name. */
  readonly letters: ReadonlyMap<string, string>;
}

/**
 * A box with its lid off, to scale, in a room by its lower left corner: contents on the base, corner posts, and where each
 * entry comes in, by its number.
 * @param numbers Of the entries, by id.
 */
export function boxInside(
  body: BoxBody,
  layout: BoxLayout,
  numbers: ReadonlyMap<string, number>,
  room: {
    readonly left: number;
    readonly bottom: number;
    readonly widthMm: number;
    readonly heightMm: number;
  },
  { inside: measuredWords }: DrawnWords = drawnInEnglish,
): BoxInside {
  const { widthMm: w, heightMm: h, wallMm, bossMm = 0 } = body;
  const wanted = Math.max(
    (w + 2 * wallMm) / (room.widthMm - 2 * aroundMm),
    (h + 2 * wallMm) / (room.heightMm - 2 * aroundMm),
  );
  const scale = scales.find((one) => one >= wanted) ?? Math.ceil(wanted);
  const x0 = room.left + (room.widthMm - w / scale) / 2;
  const y0 = room.bottom + (room.heightMm - h / scale) / 2;
  const rect = (x: number, y: number, across: number, up: number, paint: Parameters<typeof box>[4]) =>
    box(x0 + x / scale, y0 + y / scale, across / scale, up / scale, paint);
  const corners = [
    [0, 0],
    [w - bossMm, 0],
    [0, h - bossMm],
    [w - bossMm, h - bossMm],
  ] as const;
  const letters = new Map<string, string>();
  const wordsIn = (id: string, roomMm: number): string => {
    if (textWidthMm(id, small.sizeMm, small.weight) <= roomMm) return id;
    // Several alike are one: `bus bar 1`, `bus bar 2`.
    const name = layout.contents.filter((other) => alike(other.id) === alike(id)).length > 1 ? alike(id) : id;
    const letter = letters.get(name) ?? String.fromCharCode(97 + (letters.size % 26));
    letters.set(name, letter);
    return letter;
  };
  return {
    scale,
    letters,
    shapes: [
      rect(-wallMm, -wallMm, w + 2 * wallMm, h + 2 * wallMm, { stroke: strokes.line, fill: "wash" }),
      rect(0, 0, w, h, { stroke: strokes.fine, fill: "paper" }),
      ...(bossMm > 0
        ? corners.map(([x, y]) => rect(x, y, bossMm, bossMm, { stroke: strokes.hair, fill: "wash" }))
        : []),
      ...layout.contents.flatMap(({ id, x, y, widthMm, heightMm, turned }) => {
        const [across, up] = turned ? [heightMm, widthMm] : [widthMm, heightMm];
        const words = wordsIn(id, across / scale - 2);
        return [
          rect(x, y, across, up, { stroke: strokes.line }),
          text(x0 + (x + across / 2) / scale, y0 + (y + up / 2) / scale - 1, words, {
            ...small,
            anchor: "middle",
          }),
        ];
      }),
      ...inRows(layout.entries).flatMap(({ row, entry: { id, on, x, acrossMm } }) =>
        entryShapes(on, x, acrossMm, String(numbers.get(id) ?? ""), row, { body, scale, x0, y0 }),
      ),
      text(x0 + w / 2 / scale, room.bottom + 0.6, measures(body, measuredWords), {
        ...small,
        anchor: "middle",
        colour: "soft",
      }),
    ],
  };
}

/** The name of one of several alike, without its number. */
const alike = (id: string): string => id.replace(/ \d+$/, "");

const measures = ({ widthMm, heightMm, depthMm }: BoxBody, inside: DrawnWords["inside"]): string =>
  inside(`${mmWords(widthMm)} × ${mmWords(heightMm)}`, mmWords(depthMm));

interface Frame {
  readonly body: BoxBody;
  readonly scale: number;
  readonly x0: number;
  readonly y0: number;
}

/** Entries one over the other on a face lie over each other on paper: each further one sticks out further, drawn first. */
function inRows(entries: BoxLayout["entries"]): { readonly row: number; readonly entry: Placed }[] {
  const done: { row: number; entry: Placed }[] = [];
  for (const entry of entries.toSorted((a, b) => a.y - b.y || a.x - b.x)) {
    const under = done.filter(
      (one) =>
        one.entry.on === entry.on &&
        Math.abs(one.entry.x - entry.x) < (one.entry.acrossMm + entry.acrossMm) / 2,
    );
    done.push({ row: under.length === 0 ? 0 : 1 + Math.max(...under.map(({ row }) => row)), entry });
  }
  return done.toSorted((a, b) => b.row - a.row);
}

/** A gland as a stub through its wall, its number at its outer end. */
function entryShapes(
  on: FaceName,
  along: number,
  acrossMm: number,
  number: string,
  row: number,
  frame: Frame,
): Shape[] {
  const { body, scale, x0, y0 } = frame;
  const { widthMm: w, heightMm: h, wallMm } = body;
  const [stub, half] = [5 + 4.6 * Math.min(row, 2), acrossMm / 2 / scale];
  const at = onPlan(on, along, w, h);
  const x = x0 + at.x / scale;
  const y = y0 + at.y / scale;
  const wall = wallMm / scale;
  const number_ = (tx: number, ty: number): Shape =>
    text(tx, ty, number, { ...small, weight: "semibold", anchor: "middle" });
  const paint = { stroke: strokes.fine, fill: "paper" } as const;
  switch (on) {
    case "down":
    case "near":
      return [box(x - half, y - wall - stub, 2 * half, stub, paint), number_(x, y - wall - stub + 1.2)];
    case "up":
    case "far":
      return [box(x - half, y + wall, 2 * half, stub, paint), number_(x, y + wall + stub - 3.8)];
    case "left":
      return [box(x - wall - stub, y - half, stub, 2 * half, paint), number_(x - wall - stub + 2.5, y - 1)];
    case "right":
      return [box(x + wall, y - half, stub, 2 * half, paint), number_(x + wall + stub - 2.5, y - 1)];
    default:
      return on satisfies never;
  }
}

/** A place on a face, seen from outside with the lid up, as one looks into the open box. */
function onPlan(on: FaceName, along: number, w: number, h: number): Point {
  switch (on) {
    case "down":
    case "near":
      return { x: along, y: 0 };
    case "up":
    case "far":
      return { x: w - along, y: h };
    case "left":
      return { x: 0, y: h - along };
    case "right":
      return { x: w, y: along };
    default:
      return on satisfies never;
  }
}
