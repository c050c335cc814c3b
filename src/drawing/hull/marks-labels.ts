import { spotNear } from "../../core/hull/faces/near.js";
import type { Spot } from "../../core/hull/faces/patch.js";
import type { SideFigures } from "../../core/hull/figures.js";
import { around, type Bounds, boundsOf } from "../bounds.js";
import { type Frame, isInside } from "../clip.js";
import { placeLabels } from "../label-places.js";
import { points } from "../make.js";
import type { Point, Shape } from "../shapes.js";

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

/** A point beyond the frame whose tape comes in at its edge. */
export interface BeyondLabel {
  readonly at: Point;
  readonly letter: string;
}

/** Words on the drawing that keep off one another and off points and holes: marks and letters first, then what else stands there, zones and openings. */
export function marksLabels(
  side: SideFigures,
  place: (spot: Spot) => Point,
  letters: ReadonlyMap<string, string>,
  beyond: readonly BeyondLabel[],
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
