import { spotNear } from "../../core/hull/faces/near.js";
import type { Spot } from "../../core/hull/faces/patch.js";
import type { SideFigures } from "../../core/hull/figures.js";
import { type Bounds, boundsOf } from "../bounds.js";
import { clipSegment, clipShapes, type Frame, isInside } from "../clip.js";
import { polygon, polyline, strokes } from "../make.js";
import type { Point, Shape, Stroke } from "../shapes.js";
import { keyOf, keyStripMm } from "./cut-out.js";
import { flatView } from "./flat-view.js";
import { type BeyondLabel, marksLabels, referenceLetters } from "./marks-labels.js";
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

const zoneStroke: Stroke = { colour: "hair", widthMm: 0.2, dashMm: [1, 0.8] };

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
  const named = marksLabels(side, place, letters, beyond, frame);
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

interface Beyond extends BeyondLabel {
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
