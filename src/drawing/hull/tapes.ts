import { edgesOf, nearestShare, spotOnEdge } from "../../core/hull/faces/edge.js";
import { placeOn } from "../../core/hull/faces/face.js";
import type { Spot } from "../../core/hull/faces/patch.js";
import type { SideFigures } from "../../core/hull/figures.js";
import type { Mark, SetReading } from "../../core/hull/marks/mark.js";
import { line, polyline } from "../make.js";
import type { Point, Shape, Stroke } from "../shapes.js";
import type { TapeFigure } from "./tape-figure.js";

const tapeStroke: Stroke = { colour: "accent", widthMm: 0.35 };
const checkStroke: Stroke = { colour: "soft", widthMm: 0.25, dashMm: [1.6, 1.1] };

/** Lines of tape, and the readings that are to stand on them. */
interface Tapes {
  readonly lines: readonly Shape[];
  readonly figures: readonly TapeFigure[];
  /** Where each tape begins, and which way it goes. */
  readonly starts: readonly { readonly name: string; readonly from: Point; readonly to: Point }[];
}

/**
 * The tapes to each mark of a side, and the one it is checked by.
 * @param said Writes a reading [m]; left out: no readings.
 */
export function tapes(
  side: SideFigures,
  place: (spot: Spot) => Point,
  said: ((readingM: number) => string) | undefined,
): Tapes {
  const spots = new Map<string, Spot>([
    ...side.references.flatMap(({ name, spot }) => (spot === undefined ? [] : [[name, spot] as const])),
    ...side.placed.map(({ piece, spot }) => [piece.name, spot] as const),
  ]);
  const lines: Shape[] = [];
  const figures: TapeFigure[] = [];
  const starts: { name: string; from: Point; to: Point }[] = [];
  const say = (from: Point, to: Point, reading: SetReading | undefined) => {
    if (said !== undefined && reading !== undefined)
      figures.push({ from, to, words: said(reading.roundedM) });
  };
  for (const { mark } of side.marks) {
    const to = place(mark.spot);
    const tape = (reading: SetReading, stroke: Stroke) => {
      const spot = spots.get(reading.from);
      if (spot === undefined) return;
      const from = place(spot);
      lines.push(line(from.x, from.y, to.x, to.y, stroke));
      starts.push({ name: reading.from, from, to });
      say(from, to, reading);
    };
    if (mark.method === "two tapes") for (const reading of mark.readings) tape(reading, tapeStroke);
    if (mark.method === "along then square") {
      const way = squareWay(side, mark, spots, place);
      const [start, foot] = [way.at(0), way.at(-1)];
      if (start !== undefined && foot !== undefined) {
        lines.push(polyline(way, tapeStroke), polyline([foot, to], tapeStroke));
        starts.push({ name: mark.readings[0]?.from ?? "", from: start, to: foot });
        say(start, foot, mark.readings[0]);
        say(foot, to, mark.readings[1]);
      }
    }
    if (mark.check) tape(mark.check, checkStroke);
  }
  return { lines, figures, starts };
}

/** Along the edge to the foot of the square; empty where it can't be drawn. */
function squareWay(
  { face }: SideFigures,
  { edge: name = "", at, readings }: Mark,
  spots: ReadonlyMap<string, Spot>,
  place: (spot: Spot) => Point,
): Point[] {
  const edge = edgesOf(face).find((one) => one.name === name);
  const start = spots.get(readings[0]?.from ?? "");
  if (edge === undefined || start === undefined) return [];
  const [from, to] = [
    nearestShare(face, edge, placeOn(face, start)).share,
    nearestShare(face, edge, at).share,
  ];
  return Array.from({ length: 13 }, (_, k) => place(spotOnEdge(edge, from + ((to - from) * k) / 12)));
}
