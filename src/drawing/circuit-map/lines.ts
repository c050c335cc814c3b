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

/** The return as it passes a thing on a wide map, between the line that comes in and the rail that leads on; empty where nothing hangs on it. */
export function passing(map: CircuitMap, index: number): readonly Point[] {
  const spot = map.spots[index];
  if (!spot || map.shape === "narrow" || map.spots[index + 1]?.parent !== index) return [];
  const { node, x, down, widthMm } = spot;
  const low = down + legApartMm;
  switch (node.kind) {
    case "battery": {
      const under = down + 4.4;
      return [
        at(x + 1, down),
        at(x - 0.4, down),
        at(x - 0.4, under),
        at(x + 9, under),
        at(x + 9, low),
        at(x + widthMm - 3 - legApartMm, low),
      ];
    }
    case "panel":
      return [at(x, low), at(x + startMm.panel - legApartMm, low)];
    case "box":
      return [at(x, low), at(x + startMm.box - legApartMm, low)];
    case "way":
    case "converter":
      return [at(x, low), at(x + widthMm - 3 - legApartMm, low)];
    default:
      return [];
  }
}

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
      if (run?.beforeMaster === true) return x + startMm.battery + (node.hasMain === true ? deviceMm : -0.5);
      return x + widthMm - 3;
    default:
      return x + widthMm - 3;
  }
}
