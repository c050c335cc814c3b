import type { PiecePlace } from "../completed.js";
import type { Gear } from "../model/gear.js";
import type { FaceHole } from "../model/hull.js";
import type { Side } from "../model/placing.js";
import { holeNames } from "../references/hull.js";
import { piecesOf } from "./pieces.js";

/**
 * Where each piece of one entry stands; as many as there are pieces. Numbers run along the row. Of a pair the first half stands on the
 * side the entry names, in the row's order, and the numbers come back along the other side, as one cable round the boat would: of six, 1 and 6 are twins.
 */
export function piecePlaces(gear: Gear): readonly PiecePlace[] {
  const { placing } = gear;
  if (placing === undefined) return [];
  const names = piecesOf(gear);
  const each = placing.pair ? names.length / 2 : names.length;
  return names.map((name, index): PiecePlace => {
    const second = index >= each;
    const at = second ? names.length - 1 - index : index;
    const twin = placing.pair ? names[names.length - 1 - index] : undefined;
    const { row, places, on, side } = placing;
    const place = row === undefined ? places[at] : undefined;
    return {
      name,
      on,
      side: second ? other(side) : side,
      ...(twin === undefined ? {} : { twin }),
      where:
        row !== undefined
          ? { kind: "row", row, index: at, count: each }
          : { kind: "one", place: place ?? { alongM: 0, offM: 0 } },
    };
  });
}

/** The same for a hole of a face that takes no gear. */
export function holePlaces(on: string, hole: FaceHole): readonly PiecePlace[] {
  const [first = hole.name, second] = holeNames(hole);
  const where = { kind: "one", place: hole.at } as const;
  const own = { name: first, on, side: hole.side, where };
  if (second === undefined) return [own];
  return [
    { ...own, twin: second },
    { name: second, on, side: other(hole.side), where, twin: first },
  ];
}

function other(side: Side): Side {
  return side === "port" ? "starboard" : "port";
}
