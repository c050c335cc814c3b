import { spotNear } from "../../core/hull/faces/near.js";
import type { Spot } from "../../core/hull/faces/patch.js";
import type { SideFigures } from "../../core/hull/figures.js";
import { around, type Bounds, boundsOf } from "../bounds.js";
import { clipSegment, clipShapes, type Frame, isInside } from "../clip.js";
import { placeLabels } from "../label-places.js";
import { line, points, polygon, polyline, strokes, text } from "../make.js";
import type { Point, Shape, Stroke } from "../shapes.js";
import { cutOutOf, keyOf, keyStripMm } from "./cut-out.js";
import { flatView } from "./flat-view.js";
import { placeFigures } from "./tape-figure.js";
import { tapes } from "./tapes.js";

/** Room for a drawing on its sheet [mm]. */
export interface Room {
  readonly left: number;
  readonly bottom: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface MarksView {
  readonly shapes: readonly Shape[];
  readonly bowRight?: boolean;
  readonly letters: ReadonlyMap<string, string>;
}

/** Scales a drawing is made at: those that a scale rule has. */
const scales = {
  millimetres: [1, 2, 2.5, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 200],
  inches: [1, 2, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96, 192],
} as const;
/** Room kept round a face for what stands beside it [mm]. */
const beside = { xMm: 8, yMm: 7 } as const;

/** The largest scale at which a side fits a sheet, and how high it then is, room for its labels included [mm]. */
export function marksScale(
  side: SideFigures,
  widthMm: number,
  mostMm: number,
  lengths: keyof typeof scales,
): { scale: number; heightMm: number } {
  return scaleFor(flatView(side.face, true), widthMm, mostMm, lengths);
}

/** A cut-out is drawn where its scale is so many times the whole face's. */
const worthCutting = 1.6;

/** The part of a side that holds its marks, and its scale, where that is worth it; undefined: the whole side is drawn as large. */
export function marksPart(
  side: SideFigures,
  widthMm: number,
  mostMm: number,
  lengths: keyof typeof scales,
  fromInside: boolean,
): { part: Bounds; scale: number; heightMm: number } | undefined {
  const part = cutOutOf(side, flatView(side.face, fromInside));
  const { scale, heightMm } = scaleFor(part, widthMm, mostMm, lengths);
  const whole = marksScale(side, widthMm, mostMm, lengths);
  return whole.scale < worthCutting * scale ? undefined : { part, scale, heightMm: heightMm + keyStripMm };
}

function scaleFor(
  { minX, maxX, minY, maxY }: Bounds,
  widthMm: number,
  mostMm: number,
  lengths: keyof typeof scales,
): { scale: number; heightMm: number } {
  const wanted = Math.max(
    ((maxX - minX) * 1000) / (widthMm - 2 * beside.xMm),
    ((maxY - minY) * 1000) / (mostMm - 2 * beside.yMm),
  );
  const scale = scales[lengths].find((one) => one >= wanted) ?? Math.ceil(wanted / 100) * 100;
  return { scale, heightMm: ((maxY - minY) * 1000) / scale + 2 * beside.yMm };
}
const zoneStroke: Stroke = { colour: "hair", widthMm: 0.2, dashMm: [1, 0.8] };

/** Letters of the points that some mark is set out or checked from, A, B, C … in the order they lie along the face. */
export function referenceLetters(side: SideFigures): Map<string, string> {
  const used = new Set(
    side.marks.flatMap(({ mark }) =>
      [...mark.readings, ...(mark.check ? [mark.check] : [])].map(({ from }) => from),
    ),
  );
  const names = side.references.filter(({ name }) => used.has(name)).map(({ name }) => name);
  return new Map(names.map((name, index) => [name, letterOf(index)]));
}

/**
 * What each mark is called on the drawing, by its name: the number the gear itself has, so that `6` is coaming lamp 6 whatever
 * the order of setting out; where two would be called alike, or one has no number, all by their names.
 */
function markLabels({ marks }: SideFigures): Map<string, string> {
  const names = marks.map(({ mark }) => mark.name);
  const own = names.map((name) => / (\d{1,3})$/.exec(name)?.[1] ?? "");
  const clear = own.every((number) => number !== "") && new Set(own).size === own.length;
  const longest = 26;
  const short = (name: string) => (name.length > longest ? `${name.slice(0, longest - 1)}…` : name);
  return new Map(names.map((name, index) => [name, clear ? (own[index] ?? name) : short(name)]));
}

function letterOf(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : `${letterOf(Math.floor(index / 26) - 1)}${letter}`;
}

/**
 * One side of a face to scale, as one sees it from the working side: outline, zones, openings, points, holes, and the tapes to each mark.
 * @param said Writes a reading [m] on its tape; left out: tapes without figures.
 * @param part Draws this part of the flat view alone, with the whole face small above it; what a tape comes from beyond it is told at its edge.
 */
export function marksView(
  side: SideFigures,
  room: Room,
  scale: number,
  fromInside: boolean,
  said?: (readingM: number) => string,
  part?: Bounds,
): MarksView {
  const view = flatView(side.face, fromInside);
  const mm = 1000 / scale;
  const middle = part ?? view;
  const strip = part === undefined ? 0 : keyStripMm;
  const frame: Frame = {
    x0: room.left,
    x1: room.left + room.widthMm,
    y0: room.bottom,
    y1: room.bottom + room.heightMm - strip,
  };
  const shiftX = (frame.x0 + frame.x1) / 2 - ((middle.minX + middle.maxX) / 2) * mm;
  const shiftY = (frame.y0 + frame.y1) / 2 - ((middle.minY + middle.maxY) / 2) * mm;
  const place = (spot: Spot): Point => {
    const { x, y } = view.place(spot);
    return { x: shiftX + x * mm, y: shiftY + y * mm };
  };
  const cut = (shapes: readonly Shape[]) => (part === undefined ? [...shapes] : clipShapes(shapes, frame));
  const letters = referenceLetters(side);
  const { lines, figures, starts } = tapes(side, place, said);
  const beyond = part === undefined ? [] : beyondOf(starts, letters, frame);
  const signs = [
    ...side.references.flatMap(({ spot, name }) =>
      spot !== undefined && letters.has(name) && isInside(place(spot), frame) ? pointMark(place(spot)) : [],
    ),
    ...cut(
      side.placed.flatMap((one) =>
        holeMark(place(one.spot), ((one.hole.sizeM ?? 0.01) * mm) / 2, one.toMark),
      ),
    ),
    ...beyond.map(({ arrow }) => arrow),
  ];
  const named = labels(side, place, letters, beyond, frame);
  const shapes: Shape[] = [
    ...side.zones.map((zone) =>
      polygon(
        zone.outline.flatMap((corner, i) =>
          between(corner, zone.outline[(i + 1) % zone.outline.length] ?? corner).map(place),
        ),
        {
          fill: "wash",
          stroke: zoneStroke,
        },
      ),
    ),
    polygon(view.outline.map(place), { stroke: strokes.bold }),
    ...side.openings.map(({ at, clearM }): Shape => {
      const { x, y } = place(spotNear(side.face, at).spot);
      return { kind: "circle", cx: x, cy: y, r: (clearM * mm) / 2, stroke: zoneStroke };
    }),
    ...lines,
  ];
  const key =
    part === undefined ? [] : keyOf(view, part, { x: frame.x0, y: room.bottom + room.heightMm - 1 });
  const onTapes = figures.flatMap((figure) => {
    const seen = clipSegment(figure.from, figure.to, frame);
    return seen ? [{ ...figure, from: seen[0], to: seen[1] }] : [];
  });
  const taken = [...signs, ...named].map(boundsOf);
  return {
    shapes: [...key, ...cut(shapes), ...signs, ...named, ...placeFigures(onTapes, taken)],
    letters,
    ...(view.bowRight === undefined ? {} : { bowRight: view.bowRight }),
  };
}

interface Beyond {
  readonly at: Point;
  readonly letter: string;
  readonly arrow: Shape;
}

/** Where tapes from points beyond the frame come in: an arrow outward, for the letter of the point. */
function beyondOf(
  starts: ReturnType<typeof tapes>["starts"],
  letters: ReadonlyMap<string, string>,
  frame: Frame,
): Beyond[] {
  const told = new Map<string, Beyond>();
  for (const { name, from, to } of starts) {
    const letter = letters.get(name);
    const seen = clipSegment(from, to, frame);
    if (letter === undefined || told.has(name) || isInside(from, frame) || !seen) continue;
    const [at] = seen;
    const turn = Math.atan2(from.y - to.y, from.x - to.x);
    const corner = (back: number, aside: number): Point => ({
      x: at.x - back * Math.cos(turn) - aside * Math.sin(turn),
      y: at.y - back * Math.sin(turn) + aside * Math.cos(turn),
    });
    told.set(name, {
      at: corner(1.5, 0),
      letter,
      arrow: polygon([at, corner(3, 1.2), corner(3, -1.2)], { fill: "accent" }),
    });
  }
  return [...told.values()];
}

/** Points along a side of a zone, so that it follows the strip. */
function between(a: Spot, b: Spot): [number, number][] {
  return Array.from({ length: 8 }, (_, k) => [
    a[0] + ((b[0] - a[0]) * k) / 8,
    a[1] + ((b[1] - a[1]) * k) / 8,
  ]);
}

/** A solid triangle standing on the point. */
function pointMark({ x, y }: Point): Shape[] {
  return [
    polygon(
      [
        { x, y },
        { x: x - 1.5, y: y + 2.6 },
        { x: x + 1.5, y: y + 2.6 },
      ],
      { fill: "ink" },
    ),
  ];
}

function holeMark({ x, y }: Point, r: number, toMark: boolean): Shape[] {
  const arm = Math.max(r, 1) + 1.2;
  return [
    {
      kind: "circle",
      cx: x,
      cy: y,
      r: Math.max(r, 0.7),
      fill: "paper",
      stroke: toMark ? strokes.line : strokes.hair,
    },
    ...(toMark
      ? [
          polyline(
            [
              { x: x - arm, y },
              { x: x + arm, y },
            ],
            strokes.fine,
          ),
          polyline(
            [
              { x, y: y - arm },
              { x, y: y + arm },
            ],
            strokes.fine,
          ),
        ]
      : []),
  ];
}

function labels(
  side: SideFigures,
  place: (spot: Spot) => Point,
  letters: ReadonlyMap<string, string>,
  beyond: readonly Beyond[],
  shown: Frame,
): Shape[] {
  const frame: Bounds = { minX: shown.x0, minY: shown.y0, maxX: shown.x1, maxY: shown.y1 };
  const isSeen = ({ at }: { readonly at: Point }) => isInside(at, shown);
  const called = markLabels(side);
  const short = [...called.values()].every((words) => words.length <= 3);
  const markStyle = { sizeMm: points(short ? 13 : 10), weight: "semibold" } as const;
  const big = { sizeMm: points(13), weight: "semibold" } as const;
  const marks = side.placed.flatMap(({ piece, spot }) => {
    const words = called.get(piece.name);
    return words === undefined ? [] : [{ at: place(spot), words, style: markStyle, clearMm: 2.4 }];
  });
  const letterStyle = { ...big, colour: "accent" as const };
  const references = [
    ...side.references.flatMap(({ name, spot }) => {
      const letter = letters.get(name);
      return letter === undefined || spot === undefined
        ? []
        : [{ at: place(spot), words: letter, style: letterStyle, clearMm: 3.2 }];
    }),
    ...beyond.map(({ at, letter }) => ({ at, words: letter, style: letterStyle, clearMm: 1.8 })),
  ];
  // labels keep off the points and holes themselves
  const taken = [...side.placed, ...side.references].flatMap(({ spot }): Bounds[] => {
    if (spot === undefined) return [];
    const { x, y } = place(spot);
    return [{ minX: x - 1.2, maxX: x + 1.2, minY: y - 1.2, maxY: y + 1.2 }];
  });
  const put = placeLabels([...marks, ...references].filter(isSeen), frame, taken);
  const soft = { sizeMm: points(8.5), colour: "soft" as const };
  const there = side.placed
    .filter(({ toMark }) => !toMark)
    .map(({ piece, spot }) => ({ at: place(spot), words: piece.name, style: soft, clearMm: 2.2 }));
  const zones = side.zones.map((zone) => {
    const middle = around(zone.outline.map(place));
    return {
      at: { x: (middle.minX + middle.maxX) / 2, y: middle.minY + 1 },
      words: zone.name,
      style: soft,
      clearMm: 1,
    };
  });
  const openings = side.openings.map(({ name, at }) => ({
    at: place(spotNear(side.face, at).spot),
    words: name.replace(/ (port|starboard)$/, ""),
    style: soft,
    clearMm: 0.5,
  }));
  const rest = placeLabels([...there, ...zones, ...openings].filter(isSeen), frame, [
    ...taken,
    ...put.shapes.map(boundsOf),
  ]);
  return [...put.shapes, ...rest.shapes];
}

/** A bar that shows the drawing's scale, with its length in words. */
export function scaleBar(x: number, y: number, lengthMm: number, words: string): Shape[] {
  return [
    line(x, y, x + lengthMm, y, strokes.line),
    line(x, y - 1, x, y + 1, strokes.line),
    line(x + lengthMm, y - 1, x + lengthMm, y + 1, strokes.line),
    text(x + lengthMm + 2, y - 1.1, words, { sizeMm: points(9), colour: "soft" }),
  ];
}
