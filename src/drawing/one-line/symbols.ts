import type { Protection } from "../../core/plan/model/common.js";
import type { GearRole } from "../../core/plan/model/gear.js";
import { box, group, line, points, polyline, strokes, text } from "../make.js";
import type { Group, Shape } from "../shapes.js";

/**
 * Symbols of the kind IEC 60617 gives, from memory. Those in a line enter at (0, 0) and leave at (`length`, 0);
 * those at its end enter at (0, 0) and are `gearMm` wide.
 */

const fine = strokes.line;
const filled = { stroke: fine, fill: "paper" } as const;
export const deviceMm = 9;
export const gearMm = 7;

const dot = (x: number, y: number): Shape => ({ kind: "circle", cx: x, cy: y, r: 0.7, fill: "ink" });
export const junction = dot;

export function fuseSymbol(x: number, y: number): Group {
  const body = box(1.5, -1.3, 6, 2.6, filled);
  return group(x, y, [body, line(0, 0, deviceMm, 0, fine)], "fuse");
}

export function breakerSymbol(x: number, y: number): Group {
  const cross = [line(6.1, -0.8, 7.7, 0.8, fine), line(6.1, 0.8, 7.7, -0.8, fine)];
  return group(
    x,
    y,
    [line(0, 0, 2, 0, fine), line(2, 0, 6.8, 2.3, fine), line(6.9, 0, deviceMm, 0, fine), ...cross],
    "breaker",
  );
}

export const protectionSymbol = (device: Protection["device"]) =>
  device === "breaker" ? breakerSymbol : fuseSymbol;

export function switchSymbol(x: number, y: number): Group {
  const contacts: Shape[] = [2, 7].map((cx) => ({ kind: "circle", cx, cy: 0, r: 0.5, ...filled }));
  return group(
    x,
    y,
    [line(0, 0, 1.5, 0, fine), line(2.3, 0.4, 7, 2.6, fine), line(7.5, 0, deviceMm, 0, fine), ...contacts],
    "switch",
  );
}

/** Two cells, the longer plate positive, facing the line that leaves at (`batteryMm`, 0). */
export const batteryMm = 11;
export function batterySymbol(x: number, y: number): Group {
  const plates = [1, 3, 5, 7].map((at, index) => {
    const half = index % 2 === 0 ? 1.7 : 3.4;
    return line(at, -half, at, half, index % 2 === 0 ? strokes.bold : fine);
  });
  return group(
    x,
    y,
    [...plates, line(7, 0, batteryMm, 0, fine), text(8, 1.2, "+", { sizeMm: points(9) })],
    "battery",
  );
}

/** A square halved by a diagonal: what goes in above, what comes out below. */
export const converterMm = 8.4;
export function converterSymbol(x: number, y: number, into: string, out: string): Group {
  const half = converterMm / 2;
  const sign = (at: number, up: number, words: string) =>
    text(at, up, words, { sizeMm: points(9), anchor: "middle" });
  const square = box(0, -half, converterMm, converterMm, filled);
  return group(
    x,
    y,
    [square, line(0, -half, converterMm, half, fine), sign(2.6, 1.2, into), sign(5.9, -3, out)],
    "converter",
  );
}

export function gearSymbol(x: number, y: number, role: GearRole): Group {
  return group(x, y, gearShapes(role), role);
}

function gearShapes(role: GearRole): Shape[] {
  const r = gearMm / 2;
  const ring: Shape = { kind: "circle", cx: r, cy: 0, r, ...filled };
  const letter = (words: string) => text(r, -1.4, words, { sizeMm: points(11), anchor: "middle" });
  const s = r * Math.SQRT1_2;
  const cross = [line(r - s, -s, r + s, s, fine), line(r - s, s, r + s, -s, fine)];
  switch (role) {
    case "lighting":
      return [ring, ...cross];
    case "navigation light":
      return [ring, ...cross, { kind: "circle", cx: r, cy: 0, r: 1, fill: "ink" }];
    case "bilge pump":
    case "pump":
    case "blower":
    case "propulsion":
      return [ring, letter("M")];
    case "gauge":
      return [ring, letter("V")];
    case "socket":
      return [
        line(0, 0, 1.5, 0, fine),
        { kind: "arc", cx: 5, cy: 0, r: 3, startDeg: 90, endDeg: 270, stroke: fine },
        line(2, -3, 2, 3, fine),
      ];
    case "sound signal":
      return [
        box(0, -1.5, 3, 3, filled),
        polyline(
          [
            { x: 3, y: 1 },
            { x: gearMm, y: 3.2 },
            { x: gearMm, y: -3.2 },
            { x: 3, y: -1 },
          ],
          fine,
        ),
      ];
    case "heating":
      return [
        box(0, -1.6, gearMm, 3.2, filled),
        ...[1.75, 3.5, 5.25].map((at) => line(at, -1.6, at, 1.6, fine)),
      ];
    case "electronics":
      return [box(0, -2.8, gearMm, 5.6, filled), line(1.5, 1, 5.5, 1, fine), line(1.5, -0.8, 4, -0.8, fine)];
    case "other":
      return [box(0, -2.8, gearMm, 5.6, filled)];
    default:
      return role satisfies never;
  }
}
