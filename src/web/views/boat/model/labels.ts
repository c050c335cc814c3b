/** A name to write beside a mark, in screen px. */
export interface WantedLabel {
  readonly key: string;
  /** How long it is. */
  readonly letters: number;
  readonly x: number;
  readonly y: number;
  /** Half the size of the mark [px]. */
  readonly clearPx: number;
  /** Higher ones get their room first. */
  readonly weight: number;
}

export interface SetLabel {
  readonly key: string;
  readonly dx: number;
  readonly dy: number;
  readonly anchor: "start" | "end" | "middle";
}

/** A rectangle of the screen [px]. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const heightPx = 15;
const letterPx = 6.6;

/**
 * Labels set within their part of the sheet, where they cover neither each other nor another mark. What finds no room is left out; it stands in the list below the drawing.
 * @param kept Places that stay free: titles.
 */
export function setLabels(
  wanted: readonly WantedLabel[],
  within: Box,
  kept: readonly Box[] = [],
  most = Number.POSITIVE_INFINITY,
): SetLabel[] {
  const taken: Box[] = [
    ...kept,
    ...wanted.map(({ x, y, clearPx }) => ({
      left: x - clearPx,
      right: x + clearPx,
      top: y - clearPx,
      bottom: y + clearPx,
    })),
  ];
  const set: SetLabel[] = [];
  for (const one of wanted.toSorted((a, b) => b.weight - a.weight)) {
    if (set.length >= most) break;
    const place = placesFor(one).find(
      ({ box }) => holds(within, box) && !taken.some((other) => meets(box, other)),
    );
    if (!place) continue;
    taken.push(place.box);
    set.push({ key: one.key, dx: place.dx, dy: place.dy, anchor: place.anchor });
  }
  return set;
}

function placesFor({ x, y, clearPx, letters }: WantedLabel) {
  const wide = letters * letterPx;
  const off = clearPx + 3;
  const at = (dx: number, dy: number, anchor: SetLabel["anchor"]) => {
    const left = x + dx - (anchor === "end" ? wide : anchor === "middle" ? wide / 2 : 0);
    return {
      dx,
      dy,
      anchor,
      box: { left, right: left + wide, top: y + dy - heightPx + 3, bottom: y + dy + 3 },
    };
  };
  return [
    at(off, 4, "start"),
    at(-off, 4, "end"),
    at(0, -off - 2, "middle"),
    at(0, off + heightPx - 4, "middle"),
    at(off, -off, "start"),
    at(off, off + 8, "start"),
  ];
}

const holds = (a: Box, b: Box) =>
  a.left <= b.left && b.right <= a.right && a.top <= b.top && b.bottom <= a.bottom;
const meets = (a: Box, b: Box) =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
