import { deviceMm } from "../one-line/symbols.js";
import type { Point } from "../shapes.js";
import type { CircuitMap, Spot } from "./lay-out.js";

/** The two legs that lead from a thing to what hangs on it; `down` counts from the top of the map [mm]. */
export interface Legs {
  readonly out: readonly Point[];
  readonly back: readonly Point[];
}

/** The return lies this far under the line that goes out, and its rail as far left of the other [mm]. */
export const legApartMm = 2.2;
/** Where the devices of a battery begin, and where a panel and a box have their rails, from the left edge [mm]. */
export const startMm = { battery: 13, panel: 30, box: 22 } as const;
/** Middle of the symbol of gear, on which a chain and a narrow map hang the next. */
const symbolMiddleMm = 3.5;
const symbolHalfMm = 3.6;

/** The legs that reach a spot from what it hangs on; undefined for a root. `y` counts downwards. */
export function legsTo(map: CircuitMap, spot: Spot): Legs | undefined {
  const parent = map.spots[spot.parent];
  if (!parent) return undefined;
  const y = spot.down;
  if (map.shape === "narrow" || parent.node.kind === "gear") {
    const rail = parent.x + symbolMiddleMm;
    const from = parent.down + symbolHalfMm;
    // Gear in a chain stands right under the piece before it.
    if (spot.x <= rail) {
      const to = y - symbolHalfMm;
      return {
        out: [at(rail + 0.9, from), at(rail + 0.9, to)],
        back: [at(rail - 0.9, from), at(rail - 0.9, to)],
      };
    }
    return {
      out: [at(rail + 0.9, from), at(rail + 0.9, y - 0.9), at(spot.x, y - 0.9)],
      back: [at(rail - 0.9, from), at(rail - 0.9, y + 0.9), at(spot.x, y + 0.9)],
    };
  }
  const rail = railOf(parent, spot);
  const right = spot.x + (spot.node.kind === "gear" ? 1 : 0);
  const low = y + legApartMm;
  if (Math.abs(parent.down - y) < 0.01)
    return { out: [at(rail, y), at(right, y)], back: [at(rail - legApartMm, low), at(right, low)] };
  const back = rail - legApartMm;
  return {
    out: [at(rail, parent.down), at(rail, y), at(right, y)],
    back: [at(back, parent.down + legApartMm), at(back, low), at(right, low)],
  };
}

const at = (x: number, y: number): Point => ({ x, y });

/** Where what hangs on a thing leaves it: before or after its main device and its master switch. */
function railOf({ node, x, widthMm }: Spot, child: Spot): number {
  const { run } = child.node;
  switch (node.kind) {
    case "panel":
      return x + startMm.panel;
    case "box":
      return x + startMm.box;
    case "battery":
      if (run?.beforeMain === true) return x + startMm.battery - 0.5;
      if (run?.beforeMaster === true) return x + startMm.battery + deviceMm;
      return x + widthMm - 3;
    default:
      return x + widthMm - 3;
  }
}
